import { areaName, sameArea } from "../address";
import { firstFrom } from "../engine/first-from";
import { inOrder, type Edit } from "../text-edits";
import { CellTexts } from "./cell-texts";
import type { RowText, SheetText } from "./sheet-text";
import { withAttributes } from "./tag-text";

/** A cell that the sheet does not have yet, as the element that is to stand there. */
export interface NewCell {
  row: number;
  column: number;
  text: string;
}

/** The edits that put new cells into a sheet's text, each in its place; rows are made for them where they lack. */
export function placeCells(sheet: SheetText, cells: readonly NewCell[]): Edit[] {
  const edits = dimensionEdit(sheet, cells);
  if (sheet.data.selfClosing) return [...edits, ...firstRows(sheet, cells)];
  const texts = new CellTexts(sheet);
  for (const inRow of byRow(cells)) edits.push(...placeInRow(sheet, texts, inRow));
  return edits;
}

/** The cells of one row after those of another. */
export function* byRow<T extends Pick<NewCell, "row" | "column">>(cells: readonly T[]): Generator<readonly T[], void> {
  const ordered = inOrder(cells, (a, b) => a.row - b.row || a.column - b.column);
  for (let from = 0, to = 0; from < ordered.length; from = to) {
    while (to < ordered.length && ordered[to]!.row === ordered[from]!.row) to++;
    yield ordered.slice(from, to);
  }
}

/** The rows of a sheet that has had none. */
export function firstRows(sheet: SheetText, cells: readonly NewCell[]): Edit[] {
  if (cells.length === 0) return [];
  const { start, end, tagEnd } = sheet.data;
  const inside = Array.from(byRow(cells), (inRow) => newRow(sheet, inRow)).join("");
  const tag = sheet.text.slice(start, tagEnd).replace(/\s*\/>$/, ">");
  const text = tag === "" ? element(sheet, "sheetData", "", inside) : `${tag}${inside}</${nameIn(tag)}>`;
  return [{ start, end, text }];
}

/** The same for cells of one row, in a sheet that has rows, or has had some. */
export function placeInRow(sheet: SheetText, texts: CellTexts, cells: readonly NewCell[]): Edit[] {
  if (cells.length === 0) return [];
  const { row } = cells[0]!;
  const existing = texts.row(row);
  if (existing) return rowEdits(sheet, existing, cells);
  const next = firstAfter(sheet.rows, (other) => other.row > row);
  const at = next?.start ?? sheet.rows.at(-1)?.end ?? sheet.data.inner;
  return [{ start: at, end: at, text: newRow(sheet, cells) }];
}

function rowEdits(sheet: SheetText, row: RowText, fresh: readonly NewCell[]): Edit[] {
  const { start, tagEnd, end, cells } = row;
  const tag = spanning(sheet.text.slice(start, tagEnd), fresh);
  if (row.selfClosing) {
    const opened = tag.replace(/\s*\/>$/, ">");
    return [{ start, end, text: `${opened}${textsOf(fresh)}</${nameIn(tag)}>` }];
  }
  const edits: Edit[] = fresh.map(({ column, text }) => {
    const next = firstAfter(cells, (cell) => cell.column > column);
    const at = next?.start ?? cells.at(-1)?.end ?? tagEnd;
    return { start: at, end: at, text };
  });
  return tag === sheet.text.slice(start, tagEnd) ? edits : [{ start, end: tagEnd, text: tag }, ...edits];
}

/** A row may say from which column to which it has cells; where it does, it goes on telling the truth. */
function spanning(tag: string, fresh: readonly NewCell[]): string {
  if (!tag.includes("spans")) return tag;
  const spans = /\sspans\s*=\s*["'](\d+):(\d+)["']/.exec(tag);
  if (!spans) return tag;
  const [first, last] = [Number(spans[1]), Number(spans[2])];
  const from = Math.min(first, ...fresh.map(({ column }) => column + 1));
  const to = Math.max(last, ...fresh.map(({ column }) => column + 1));
  return from === first && to === last ? tag : withAttributes(tag, { spans: `${from}:${to}` });
}

/** The range in use grows where cells are made beyond it; it never shrinks, for emptied cells are still there. */
export function dimensionEdit(sheet: SheetText, fresh: readonly Pick<NewCell, "row" | "column">[]): Edit[] {
  if (!sheet.dimension) return [];
  const { start, end } = sheet.dimension;
  let { top, left, bottom, right } = sheet.dimension.area;
  for (const { row, column } of fresh) {
    if (row < top) top = row;
    if (row > bottom) bottom = row;
    if (column < left) left = column;
    if (column > right) right = column;
  }
  const area = { top, left, bottom, right };
  if (sameArea(area, sheet.dimension.area)) return [];
  return [{ start, end, text: withAttributes(sheet.text.slice(start, end), { ref: areaName(area) }) }];
}

/** The first of things in order that comes after a place. */
const firstAfter = <T>(ordered: readonly T[], isAfter: (one: T) => boolean): T | undefined =>
  ordered[firstFrom(ordered.length, (at) => isAfter(ordered[at]!))];

const newRow = (sheet: SheetText, cells: readonly NewCell[]): string =>
  element(sheet, "row", ` r="${cells[0]!.row + 1}"`, textsOf(cells));

const textsOf = (cells: readonly NewCell[]): string => cells.map(({ text }) => text).join("");

const element = ({ prefix }: SheetText, name: string, attributes: string, inside: string): string =>
  `<${prefix}${name}${attributes}>${inside}</${prefix}${name}>`;

/** The name in a start tag, its prefix included. */
const nameIn = (tag: string): string => /^<([^\s/>]+)/.exec(tag)![1]!;
