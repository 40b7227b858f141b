import { areaName, cellName, sameArea, type Area } from "../address";
import type { Scalar } from "../engine/values";
import { writtenValue } from "./cell-value";
import { Rewriting, type Edit } from "../text-edits";
import { CellTexts } from "./cell-texts";
import { byRow, dimensionEdit, firstRows, placeInRow, type NewCell } from "./place-cells";
import type { CellText, SheetText } from "./sheet-text";
import { withAttributes } from "./tag-text";

/** What one cell shall hold: a value, or nothing where a spilled one has gone; and what its array formula fills. */
export interface CellChange {
  row: number;
  column: number;
  value: Scalar;
  /** Absent where the value stays as the file has it. */
  writesValue: boolean;
  area?: Area;
}

/** The sheet's text with the changes in it. Everything else keeps every character. */
export function writeSheet(sheet: SheetText, changes: readonly CellChange[]): string {
  const texts = new CellTexts(sheet);
  const rewriting = new Rewriting(sheet.text);
  const fresh = changes.filter(({ row, column, value }) => value !== null && !texts.cell(row, column));
  const size = dimensionEdit(sheet, fresh);
  const isSizeFirst = size.every(({ start }) => start < sheet.data.start);
  if (isSizeFirst) rewriting.apply(size);
  if (sheet.data.selfClosing)
    rewriting.apply(
      firstRows(
        sheet,
        Array.from(fresh, (change) => newCell(sheet, change)),
      ),
    );
  else for (const inRow of byRow(changes)) rewriting.apply(rowEdits(sheet, texts, inRow));
  if (!isSizeFirst) rewriting.apply(size);
  return rewriting.finish();
}

function rowEdits(sheet: SheetText, texts: CellTexts, changes: readonly CellChange[]): Edit[] {
  const edits: Edit[] = [];
  const fresh: NewCell[] = [];
  for (const change of changes) {
    const cell = texts.cell(change.row, change.column);
    if (cell) edits.push(...cellEdits(sheet, cell, change));
    else if (change.value !== null) fresh.push(newCell(sheet, change));
  }
  return [...edits, ...placeInRow(sheet, texts, fresh)];
}

function cellEdits(sheet: SheetText, cell: CellText, change: CellChange): Edit[] {
  const edits: Edit[] = [];
  const { formula } = cell;
  if (formula && change.area && !(formula.area && sameArea(formula.area, change.area))) {
    const tag = sheet.text.slice(formula.start, formula.tagEnd);
    edits.push({
      start: formula.start,
      end: formula.tagEnd,
      text: withAttributes(tag, { ref: areaName(change.area) }),
    });
  }
  if (!change.writesValue) return edits;
  const written = change.value === null ? undefined : writtenValue(change.value);
  const element = written ? `<${sheet.prefix}v>${written.text}</${sheet.prefix}v>` : "";
  const tag = withAttributes(sheet.text.slice(cell.start, cell.tagEnd), { t: written?.type ?? null, vm: null });
  if (cell.selfClosing) {
    const opened = written ? `${tag.replace(/\s*\/>$/, ">")}${element}</${sheet.prefix}c>` : tag;
    return [{ start: cell.start, end: cell.end, text: opened }];
  }
  edits.push({ start: cell.start, end: cell.tagEnd, text: tag });
  if (cell.inline) edits.push({ ...cell.inline, text: cell.value ? "" : element });
  if (cell.value) edits.push({ ...cell.value, text: element });
  else if (!cell.inline)
    edits.push({ start: formula?.end ?? cell.tagEnd, end: formula?.end ?? cell.tagEnd, text: element });
  return edits;
}

function newCell({ prefix }: SheetText, { row, column, value }: CellChange): NewCell {
  const { type, text } = writtenValue(value!);
  const mark = type ? ` t="${type}"` : "";
  const element = `<${prefix}c r="${cellName(row, column)}"${mark}><${prefix}v>${text}</${prefix}v></${prefix}c>`;
  return { row, column, text: element };
}
