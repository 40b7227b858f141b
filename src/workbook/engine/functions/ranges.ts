import type { Area } from "../../address";
import { columnLetters, MAX_COLUMNS, MAX_ROWS } from "../../address";
import type { Node } from "../../formula/nodes";
import { make } from "../budget";
import { toBoolean, toNumber, toText } from "../coercion";
import type { Evaluator, Special } from "../kinds";
import { unproven } from "../proven";
import { CellError, fail, isMatrix, Reference, Unsupported, type Scope, type SheetArea, type Value } from "../values";

/** Functions that ask where a range is, or give one. */
export const ranges: Record<string, Special> = {
  ROW: (evaluator, args, scope) => positions(evaluator, args, scope, "row"),
  COLUMN: (evaluator, args, scope) => positions(evaluator, args, scope, "column"),

  ROWS: (evaluator, args, scope) => size(evaluator, args[0]!, scope, (rows) => rows),
  COLUMNS: (evaluator, args, scope) => size(evaluator, args[0]!, scope, (_, columns) => columns),

  AREAS: (evaluator, args, scope) => rangeOf(evaluator, args[0]!, scope, (range) => range.areas.length),

  ISREF: (evaluator, args, scope) => evaluator.evaluate(args[0]!, scope) instanceof Reference,

  ISFORMULA: (evaluator, args, scope) =>
    rangeOf(
      evaluator,
      args[0]!,
      scope,
      ({ areas: [area] }) => evaluator.cells.formula(area!.sheet, area!.top, area!.left) !== undefined,
    ),

  FORMULATEXT: (evaluator, args, scope) =>
    rangeOf(evaluator, args[0]!, scope, ({ areas: [area] }) => {
      if (area!.top !== area!.bottom || area!.left !== area!.right)
        throw unproven("FORMULATEXT", "a range of several cells");
      const text = evaluator.cells.text(area!.sheet, area!.top, area!.left);
      return text === undefined || text.length > LONGEST_SHOWN ? fail("#N/A") : text;
    }),

  CELL(evaluator, args, scope) {
    const asked = toText(evaluator.scalar(args[0]!, scope));
    if (asked instanceof CellError) return asked;
    const of = CELL_FACTS[asked.toLowerCase()];
    if (!of) throw unproven("CELL", `"${asked}"`);
    // It would be the cell that was changed last.
    if (!args[1]) throw unproven("CELL", "no reference");
    return rangeOf(evaluator, args[1], scope, ({ areas: [area, ...others] }) =>
      others.length > 0 ? fail("#VALUE!") : of(area!, evaluator, scope),
    );
  },

  SHEET(evaluator, args, scope) {
    const value = args[0] ? evaluator.evaluate(args[0], scope) : undefined;
    if (value instanceof Reference) return value.areas[0]!.sheet + 1;
    const named = typeof value === "string" ? evaluator.cells.sheetIndex(value) : scope.sheet;
    return named === undefined ? fail("#N/A") : named + 1;
  },

  SHEETS: (evaluator, args, scope) =>
    args[0]
      ? rangeOf(evaluator, args[0], scope, (range) => new Set(range.areas.map((area) => area.sheet)).size)
      : evaluator.cells.sheetCount,

  SINGLE: (evaluator, args, scope) => evaluator.scalar(args[0]!, scope),

  ANCHORARRAY: (evaluator, args, scope) => evaluator.spilled(evaluator.evaluate(args[0]!, scope)),

  INDEX(evaluator, args, scope) {
    const source = evaluator.evaluate(args[0]!, { ...scope, arrays: true });
    if (source instanceof CellError) return source;
    const wanted = [args[1], args[2], args[3]].map((arg) => (arg ? whole(evaluator, arg, scope) : undefined));
    const error = wanted.find((value) => value instanceof CellError);
    if (error) return error;
    return indexOf(evaluator, source, wanted as (number | undefined)[], scope);
  },

  OFFSET: (evaluator, args, scope) =>
    rangeOf(evaluator, args[0]!, scope, ({ areas: [area] }) => {
      const numbers = args.slice(1).map((arg) => (arg.kind === "missing" ? undefined : whole(evaluator, arg, scope)));
      const error = numbers.find((value) => value instanceof CellError);
      if (error) return error;
      const [down = 0, across = 0] = numbers as (number | undefined)[];
      // A size that is cut to nothing is still one cell.
      const [height, width] = [2, 3].map((i) =>
        numbers[i] === 0 && !isZero(evaluator, args[i + 1]!, scope) ? 1 : numbers[i],
      ) as (number | undefined)[];
      const rows = span(area!.top + down, height ?? area!.bottom - area!.top + 1);
      const columns = span(area!.left + across, width ?? area!.right - area!.left + 1);
      if (!rows || !columns) return fail("#REF!");
      return inGrid(area!.sheet, { top: rows[0], bottom: rows[1], left: columns[0], right: columns[1] });
    }),

  INDIRECT(evaluator, args, scope) {
    const text = toText(evaluator.scalar(args[0]!, scope));
    if (text instanceof CellError) return text;
    if (args[1] && toBoolean(evaluator.scalar(args[1], scope)) === false) {
      throw new Unsupported("uses INDIRECT with R1C1 addresses");
    }
    const node = evaluator.cells.parse(withoutLeadingZeros(text));
    if (!node || !["reference", "name", "table"].includes(node.kind)) return fail("#REF!");
    const value = evaluator.evaluate(node, { ...scope, rowShift: 0, columnShift: 0, variables: undefined });
    return value instanceof Reference ? value : fail("#REF!");
  },
};

/** Of longer formulas FORMULATEXT gives nothing. */
const LONGEST_SHOWN = 8_192;

/** What CELL tells of a range's first cell. */
const CELL_FACTS: Readonly<Record<string, (area: SheetArea, evaluator: Evaluator, scope: Scope) => Value>> = {
  address({ sheet, top, left }, _evaluator, scope) {
    // Of another sheet it also gives the file's name.
    if (sheet !== scope.sheet) throw unproven("CELL", "the address of a cell of another sheet");
    return `$${columnLetters(left)}$${top + 1}`;
  },
  row: ({ top }) => top + 1,
  col: ({ left }) => left + 1,
  contents({ sheet, top, left }, { cells }) {
    const value = cells.read(sheet, top, left);
    if (value === null) throw unproven("CELL", "the contents of a blank cell");
    return value;
  },
};

/** `A01` and `05:05` are addresses in a text, though not in a formula. */
function withoutLeadingZeros(text: string): string {
  const at = text.lastIndexOf("!") + 1;
  return text.slice(0, at) + text.slice(at).replace(/(^|[$:]|(?<![\p{L}\p{N}_.])\$?[a-z]{1,3}\$?)0+(?=\d)/giu, "$1");
}

function positions(evaluator: Evaluator, args: Node[], scope: Scope, of: "row" | "column"): Value {
  const value = args[0] ? evaluator.evaluate(args[0], scope) : Reference.single(scope.sheet, here(scope));
  if (!(value instanceof Reference)) return value instanceof CellError ? value : fail("#VALUE!");
  const area = evaluator.cells.placed(value.areas[0]!);
  const [first, last] = of === "row" ? [area.top, area.bottom] : [area.left, area.right];
  if (!scope.arrays || first === last) return first + 1;
  make(last - first + 1);
  const numbers = Array.from({ length: last - first + 1 }, (_, i) => first + i + 1);
  return of === "row" ? numbers.map((number) => [number]) : [numbers];
}

function isZero(evaluator: Evaluator, node: Node, scope: Scope): boolean {
  return toNumber(evaluator.scalar(node, scope)) === 0;
}

function here(scope: Scope): Area {
  return { top: scope.row, bottom: scope.row, left: scope.column, right: scope.column };
}

function size(evaluator: Evaluator, node: Node, scope: Scope, of: (rows: number, columns: number) => number): Value {
  const value = evaluator.evaluate(node, { ...scope, arrays: true });
  if (value instanceof CellError) return value;
  if (isMatrix(value)) return of(value.length, value[0]!.length);
  const area = value instanceof Reference ? value.areas[0] : undefined;
  return area ? of(area.bottom - area.top + 1, area.right - area.left + 1) : 1;
}

function rangeOf(evaluator: Evaluator, node: Node, scope: Scope, then: (range: Reference) => Value): Value {
  const value = evaluator.evaluate(node, scope);
  if (value instanceof Reference) return then(value);
  return value instanceof CellError ? value : fail("#VALUE!");
}

function whole(evaluator: Evaluator, node: Node, scope: Scope): number | number[][] | CellError {
  const value = scope.arrays ? evaluator.operand(node, scope) : evaluator.scalar(node, scope);
  if (isMatrix(value)) {
    const numbers = value.map((row) => row.map(toNumber));
    return (numbers.flat().find((number) => number instanceof CellError) as CellError) ?? numbers;
  }
  const number = toNumber(value);
  return number instanceof CellError ? number : Math.trunc(number);
}

/** INDEX gives a cell, a whole row or a whole column; with arrays of numbers, the table that they pick out. */
function indexOf(evaluator: Evaluator, source: Value, wanted: unknown[], scope: Scope): Value {
  const area = source instanceof Reference ? source.areas[((wanted[2] as number) || 1) - 1] : undefined;
  if (source instanceof Reference && !area) return fail("#REF!");
  const matrix = area ? undefined : evaluator.matrix(source);
  const height = area ? area.bottom - area.top + 1 : matrix!.length;
  const width = area ? area.right - area.left + 1 : matrix![0]!.length;
  let [row = 0, column] = wanted as (number | number[][] | undefined)[];
  if (column === undefined)
    [row, column] = height === 1 ? [wanted[0] === undefined ? 0 : 1, row] : [row, width === 1 ? 1 : 0];
  if (Array.isArray(row) || Array.isArray(column)) return pick(evaluator, source, row, column, scope);
  if (row < 0 || column < 0) return fail("#VALUE!");
  if (row > height || column > width) return fail("#REF!");
  const [top, bottom] = row === 0 ? [0, height - 1] : [row - 1, row - 1];
  const [left, right] = column === 0 ? [0, width - 1] : [column - 1, column - 1];
  if (!area) make(bottom - top + 1, right - left + 1);
  if (!area) return matrix!.slice(top, bottom + 1).map((line) => line.slice(left, right + 1));
  return Reference.single(area.sheet, {
    top: area.top + top,
    bottom: area.top + bottom,
    left: area.left + left,
    right: area.left + right,
  });
}

function pick(
  evaluator: Evaluator,
  source: Value,
  row: number | number[][],
  column: number | number[][],
  scope: Scope,
): Value {
  const rows = Array.isArray(row) ? row : [[row]];
  const columns = Array.isArray(column) ? column : [[column]];
  const height = Math.max(rows.length, columns.length);
  const width = Math.max(rows[0]!.length, columns[0]!.length);
  make(height, width);
  return Array.from({ length: height }, (_, y) =>
    Array.from({ length: width }, (_, x) => {
      const atRow = rows[rows.length === 1 ? 0 : y]?.[rows[0]!.length === 1 ? 0 : x];
      const atColumn = columns[columns.length === 1 ? 0 : y]?.[columns[0]!.length === 1 ? 0 : x];
      if (atRow === undefined || atColumn === undefined) return fail("#N/A");
      const found = indexOf(evaluator, source, [Math.trunc(atRow), Math.trunc(atColumn)], scope);
      return evaluator.single(found, scope);
    }),
  );
}

/** A length below zero runs backward from the start. */
function span(start: number, length: number): [number, number] | undefined {
  if (length === 0) return undefined;
  return length > 0 ? [start, start + length - 1] : [start + length + 1, start];
}

function inGrid(sheet: number, area: Area): Value {
  const inside = area.top >= 0 && area.left >= 0 && area.bottom < MAX_ROWS && area.right < MAX_COLUMNS;
  return inside ? Reference.single(sheet, area) : fail("#REF!");
}
