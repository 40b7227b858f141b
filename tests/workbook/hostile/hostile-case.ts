import { cellName, parseCell } from "../../../src/workbook/address";
import { handmade, oneSheet, sheetXml, type Handmade } from "../support/handmade";

/** A file that asks for too much, or is made to mislead. */
export interface HostileCase {
  title: string;
  make(): Uint8Array;
  /** What must come of it: values by their cells, `kept:` before a reason, or of the whole file that it is refused. */
  expect: Record<string, number | string | boolean | RegExp> | { refused: RegExp };
}

/** What every formula is stored with, to tell whether it was worked out. */
export const STORED = 77;

/** A cell is given a value, a formula with `=`, or with `{=` one that spills. */
export type Given = Record<string, number | string>;

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** Rows of cells by their addresses. */
function rowsXml(given: Given): string {
  const rows = new Map<number, [number, string][]>();
  for (const [address, content] of Object.entries(given)) {
    const { row, column } = parseCell(address)!;
    const cells = rows.get(row) ?? [];
    cells.push([column, cellXml(cellName(row, column), content)]);
    rows.set(row, cells);
  }
  return [...rows]
    .sort(([a], [b]) => a - b)
    .map(([row, cells]) => {
      const inside = cells.sort(([a], [b]) => a - b).map(([, xml]) => xml);
      return `<row r="${row + 1}">${inside.join("")}</row>`;
    })
    .join("");
}

function cellXml(name: string, content: number | string): string {
  if (typeof content === "number") return `<c r="${name}"><v>${content}</v></c>`;
  const [, spills, formula] = /^(\{?)=(.*)$/s.exec(content) ?? [];
  if (formula === undefined) return `<c r="${name}" t="inlineStr"><is><t>${escaped(content)}</t></is></c>`;
  return spills
    ? `<c r="${name}" cm="1"><f t="array" ref="${name}">${escaped(formula)}</f><v>${STORED}</v></c>`
    : `<c r="${name}"><f>${escaped(formula)}</f><v>${STORED}</v></c>`;
}

/** A workbook of one sheet, Bench. */
export const book = (given: Given, more: Parameters<typeof oneSheet>[1] = {}): Uint8Array =>
  oneSheet(rowsXml(given), more);

/** One formula in A1, beside other cells. */
const formula = (text: string, given: Given = {}, more: Parameters<typeof oneSheet>[1] = {}): Uint8Array =>
  book({ ...given, A1: text.startsWith("{") ? text : `=${text}` }, more);

/** A title, a formula, what comes of it, and the cells beside it. */
export type Tried = [title: string, text: string, found: string | number | boolean | RegExp, given?: Given];

/** A formula that is alone in its workbook. */
export const alone = ([title, text, found, given]: Tried): HostileCase => ({
  title,
  make: () => formula(text, given),
  expect: { A1: found },
});

/** A workbook with defined names. */
export function named(names: readonly (readonly [name: string, text: string])[], given: Given): Uint8Array {
  const list = names.map(([name, text]) => `<definedName name="${name}">${escaped(text)}</definedName>`).join("");
  return book(given, { workbook: `<definedNames>${list}</definedNames>` });
}

/** A workbook of one sheet with something behind its rows, and links of its own. */
export function sheetWith(rows: string, after: string, more: Partial<Handmade> & { rels?: string } = {}): Uint8Array {
  const { rels, ...rest } = more;
  return handmade({ sheets: [{ name: "Bench", xml: sheetXml(rows, { after }), ...(rels ? { rels } : {}) }], ...rest });
}

/** Something many times over. */
export const times = (count: number, one: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => one(i)).join("");
