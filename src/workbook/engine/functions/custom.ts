import type { Evaluator, Ordinary } from "../kinds";
import { isErrorCode } from "../../formula/error-codes";
import { CellError, isMatrix, Lambda, Reference } from "../values";
import type { Formats, Matrix, Scalar, Shown, Value } from "../values";

/** A custom function as the host calls it: positional arguments, and a value, a table or an error of the host's class. */
export type CustomFunction = (...args: never[]) => unknown;

/** Which arguments of a function are tables; without it a lone cell arrives as its value, a range as a table. */
export type Dimensions = Record<string, readonly ("scalar" | "matrix")[]>;

/** Makes a custom function callable from a formula: cells in, cells out, and nothing that it throws gets further. */
export function customFunction(call: CustomFunction, dimensions?: readonly ("scalar" | "matrix")[]): Ordinary {
  const signature = dimensions?.map((kind) => (kind === "scalar" ? "V" : "R")).join("");
  const shown = (args: Value[], evaluator: Evaluator, withFormats: boolean): Shown => {
    // What stands behind such an error is known here alone: it was typed into the formula itself.
    const unknown = args.find((arg) => arg instanceof CellError && arg.code === "#NAME?" && arg.message);
    if (unknown) return { value: unknown };
    const given = args.map((arg, i) => argument(arg, evaluator, dimensions?.[i] === "matrix"));
    try {
      const raw = (call as (...given: unknown[]) => unknown)(...given);
      return { value: explained(result(raw), args, evaluator), ...(withFormats && formatsOf(raw)) };
    } catch (error) {
      return { value: explained(toCellError(error), args, evaluator) };
    }
  };
  return {
    signature: signature || "R",
    call: (args, evaluator) => shown(args, evaluator, false).value,
    shown: (args, evaluator) => shown(args, evaluator, true),
  };
}

/** An error that a function only hands on keeps its message, which the function, given the error's text, never saw. */
function explained(value: Scalar | Matrix, args: Value[], evaluator: Evaluator): Scalar | Matrix {
  if (!(value instanceof CellError) || value.message !== undefined) return value;
  for (const arg of args) {
    const contents = evaluator.contents(arg);
    for (const item of isMatrix(contents) ? contents.flat() : [contents]) {
      if (item instanceof CellError && item.code === value.code) return item;
    }
  }
  return value;
}

/** Blanks and omitted arguments arrive as null, error values as their text. */
function argument(value: Value, evaluator: Evaluator, asTable: boolean): unknown {
  if (value === undefined) return null;
  if (value instanceof Lambda) return "#CALC!";
  const contents = value instanceof Reference || isMatrix(value) ? evaluator.contents(value) : value;
  if (isMatrix(contents)) return placed(plainTable(contents), value);
  return asTable ? [[plain(contents)]] : plain(contents);
}

/** As it is handed over: nobody changes it. */
type Table = readonly (readonly unknown[])[];

/** A range that many formulas read is the same table for all of them, and so is handed over as one. */
function plainTable(matrix: Matrix): Table {
  const known = tables.get(matrix);
  if (known) return known;
  const table = Object.freeze(matrix.map((row) => Object.freeze(row.map(plain))));
  tables.set(matrix, table);
  return table;
}

const tables = new WeakMap<Matrix, Table>();

/** A range's table is its own, and so knows where it stands. */
function placed(table: Table, value: Value): Table {
  if (value instanceof Reference) firstRows.set(table, value.areas[0]!.top + 1);
  return table;
}

const firstRows = new WeakMap<Table, number>();

/** The sheet's row that a table's first row stands in, where a range was given. */
export const firstRowOf = (table: unknown): number | undefined =>
  Array.isArray(table) ? firstRows.get(table as Table) : undefined;

function plain(value: Scalar): unknown {
  return value instanceof CellError ? value.code : value;
}

function result(value: unknown): Scalar | Matrix {
  if (!Array.isArray(value)) return cell(value);
  const rows = value.map((row: unknown) => (Array.isArray(row) ? row.map(cell) : [cell(row)]));
  const width = Math.max(0, ...rows.map((row) => row.length));
  if (width === 0) return new CellError("#CALC!", "The function gave an empty table.");
  return rows.map((row) =>
    row.length === width ? row : [...row, ...Array.from({ length: width - row.length }, () => new CellError("#N/A"))],
  );
}

/** Nothing in a result is an empty text in the cell, as in the host. */
function cell(value: unknown): Scalar {
  if (value === null || value === undefined) return "";
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") return Number.isFinite(value) ? value + 0 : new CellError("#NUM!");
  if (typeof value === "object" && "basicValue" in value) return cell(value.basicValue);
  if (typeof value === "object" && "then" in value) {
    return new CellError("#VALUE!", "The function gave a promise; only synchronous functions are recalculated.");
  }
  return toCellError(value);
}

/** The number formats that a result brings, in the shape of its cells. */
function formatsOf(value: unknown): { formats: Formats } | undefined {
  const rows = Array.isArray(value) ? value.map((row: unknown) => (Array.isArray(row) ? row : [row])) : [[value]];
  let any = false;
  const formats = rows.map((row) =>
    row.map((item: unknown) => {
      if (typeof item !== "object" || item === null || !("numberFormat" in item)) return undefined;
      any = true;
      return String(item.numberFormat);
    }),
  );
  return any ? { formats } : undefined;
}

function toCellError(error: unknown): CellError {
  if (typeof error !== "object" || error === null) return new CellError("#VALUE!", String(error));
  const code = "code" in error ? String(error.code) : "";
  const message = "message" in error && error.message ? String(error.message) : undefined;
  return new CellError(isErrorCode(code) ? code : "#VALUE!", message);
}
