import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { cellName, parseArea, parseCell, sameArea } from "../../../src/workbook/address";
import { cellKey, CellError, createEngine, type Book, type Cell, type Scalar } from "../../../src/workbook/engine";
import { nodesOf } from "../../../src/workbook/formula/nodes";
import { parseFormula } from "../../../src/workbook/formula/parse";

/** A bundle, which stands elsewhere, is told where they are. */
const FOLDER = process.env.FORMULA_VALUES ?? new URL("../../workbooks/formula-values/", import.meta.url).pathname;

type Stored = number | string | boolean | null | { error: string };

interface StoredFormula {
  f: string;
  v: Stored;
  array?: string;
  dynamic?: boolean;
}

interface StoredWorkbook {
  date1904: boolean;
  names: Record<string, string>;
  sheets: { name: string; cells: Record<string, Stored | StoredFormula> }[];
}

/** A formula that the spreadsheet program worked out, and what came of it here. */
export interface Fact {
  /** `file!Sheet!A1` */
  place: string;
  formula: string;
  functions: readonly string[];
  stored: Scalar;
  found: Scalar;
  /** Why it was not worked out, where it was not. */
  kept?: string;
  /** The program's values in the range of an array formula, where another came of it here. */
  agrees: boolean;
}

export const factFiles = (): string[] => readdirSync(FOLDER).filter((name) => name.endsWith(".json"));

/** Works a workbook out and holds every formula against the value stored beside it. */
export function factsOf(file: string): Fact[] {
  const stored = JSON.parse(readFileSync(join(FOLDER, file), "utf8")) as StoredWorkbook;
  const book = bookOf(stored);
  const outcome = createEngine({ functions: {} }).calculate(book);
  const facts: Fact[] = [];
  const fact = (sheet: number, row: number, column: number) => {
    const cell = book.sheets[sheet]!.cells.get(cellKey(row, column))!;
    return {
      place: `${file.replace(/\.json$/, "")}!${book.sheets[sheet]!.name}!${cellName(row, column)}`,
      formula: cell.formula!.text,
      functions: functionsOf(cell.formula!.text),
      stored: cell.value,
    };
  };
  for (const { sheet, row, column, reason } of outcome.kept) {
    facts.push({ ...fact(sheet, row, column), found: null, kept: reason, agrees: true });
  }
  for (const { sheet, row, column, values, area } of outcome.results) {
    const known = fact(sheet, row, column);
    const formula = book.sheets[sheet]!.cells.get(cellKey(row, column))!.formula!;
    const sameSize = formula.kind === "plain" || sameArea(area, formula.area);
    const all = values.every((line, y) =>
      line.every((value, x) => {
        const cell = book.sheets[sheet]!.cells.get(cellKey(area.top + y, area.left + x));
        return agrees(value, cell?.value ?? null);
      }),
    );
    facts.push({ ...known, found: values[0]![0]!, agrees: all && sameSize });
  }
  return facts;
}

export function shown(value: Scalar): string {
  return value instanceof CellError ? value.code : JSON.stringify(value);
}

/** Errors that files write as #VALUE!, with their own name in a part for values that are more than a cell shows. */
const NEWER: ReadonlySet<string> = new Set(["#CALC!", "#SPILL!"]);

/** A number may differ in what the program's fifteen digits do not show. A blank and an empty text look alike in a file. */
function agrees(found: Scalar, stored: Scalar): boolean {
  if (found instanceof CellError) {
    return (
      stored instanceof CellError &&
      (found.code === stored.code || (stored.code === "#VALUE!" && NEWER.has(found.code)))
    );
  }
  if (typeof found === "number" && typeof stored === "number") {
    return found === stored || Math.abs(found - stored) <= 1e-9 * Math.max(Math.abs(found), Math.abs(stored));
  }
  return found === stored || (found === "" && stored === null);
}

export function functionsOf(text: string): string[] {
  const names = new Set<string>();
  try {
    for (const node of nodesOf(parseFormula(text))) if (node.kind === "call") names.add(node.name);
  } catch {
    names.add("(unread)");
  }
  return [...names].sort();
}

function bookOf({ date1904, names, sheets }: StoredWorkbook): Book {
  return {
    date1904,
    names: Object.entries(names).map(([name, text]) => ({ name, text })),
    tables: [],
    sheets: sheets.map(({ name, cells }) => ({
      name,
      merged: [],
      hiddenRows: new Set<number>(),
      filters: [],
      cells: new Map(
        Object.entries(cells).map(([address, content]) => {
          const cell = cellOf(address, content);
          return [cellKey(cell.row, cell.column), cell];
        }),
      ),
    })),
  };
}

function cellOf(address: string, content: Stored | StoredFormula): Cell {
  const { row, column } = parseCell(address)!;
  if (typeof content !== "object" || content === null || !("f" in content))
    return { row, column, value: scalar(content) };
  const own = { top: row, bottom: row, left: column, right: column };
  const area = content.array ? parseArea(content.array)! : own;
  const kind = content.dynamic ? "dynamic" : content.array ? "fixed" : "plain";
  return {
    row,
    column,
    value: scalar(content.v),
    formula: { text: content.f, rowShift: 0, columnShift: 0, kind, area },
  };
}

function scalar(stored: Stored): Scalar {
  if (typeof stored === "string")
    return stored.replace(/_x([0-9A-F]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
  return typeof stored === "object" && stored !== null ? new CellError(stored.error as never) : stored;
}
