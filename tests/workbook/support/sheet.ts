import { cellKey, CellError, createEngine, type EngineOptions, type Scalar } from "../../../src/workbook/engine";
import type { Book, Cell, Formula } from "../../../src/workbook/engine/engine";
import { parseCell } from "../../../src/workbook/address";

/** What a cell is given: a value, or a formula that begins with `=` (plain) or `{=` (dynamic array). */
export type Given = Record<string, Scalar>;

/** A book of one sheet, Bench, made of addresses and what stands there. */
export function bookOf(given: Given, more: Partial<Book> = {}): Book {
  return { sheets: [sheetOf("Bench", given)], names: [], tables: [], date1904: false, ...more };
}

export function sheetOf(name: string, given: Given): Book["sheets"][number] {
  const cells = new Map<number, Cell>();
  for (const [address, content] of Object.entries(given)) {
    const { row, column } = parseCell(address)!;
    const formula = typeof content === "string" ? formulaOf(content, row, column) : undefined;
    cells.set(cellKey(row, column), { row, column, value: formula ? null : content, formula });
  }
  return { name, cells, merged: [], hiddenRows: new Set(), filters: [] };
}

function formulaOf(text: string, row: number, column: number): Formula | undefined {
  const match = /^(\{?)=(.*)$/s.exec(text);
  if (!match) return undefined;
  const area = { top: row, left: column, bottom: row, right: column };
  return { text: match[2]!, rowShift: 0, columnShift: 0, kind: match[1] ? "dynamic" : "plain", area };
}

/** Works a book out and gives each asked-for cell's value: an error as its code, an array as rows, `kept: …` where it kept. */
export function results(book: Book, options: Partial<EngineOptions> = {}): Record<string, unknown> {
  const outcome = createEngine({ functions: {}, ...options }).calculate(book);
  const shown: Record<string, unknown> = {};
  for (const { sheet, row, column, values } of outcome.results) {
    const plain = values.map((line) => line.map(plainValue));
    shown[name(book, sheet, row, column)] = plain.length === 1 && plain[0]!.length === 1 ? plain[0]![0] : plain;
  }
  for (const { sheet, row, column, reason } of outcome.kept) shown[name(book, sheet, row, column)] = `kept: ${reason}`;
  return shown;
}

/** One formula's result beside these cells. */
export function value(formula: string, given: Given = {}, options: Partial<EngineOptions> = {}): unknown {
  const book = bookOf({ ...given, Z100: formula.startsWith("{") ? formula : `=${formula}` });
  return results(book, options).Z100;
}

function plainValue(item: Scalar): unknown {
  return item instanceof CellError ? item.code : item;
}

function name(book: Book, sheet: number, row: number, column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return `${sheet === 0 ? "" : `${book.sheets[sheet]!.name}!`}${letters}${row + 1}`;
}
