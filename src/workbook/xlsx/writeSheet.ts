import { areaName, cellName, sameArea, type Area } from "../address";
import type { Scalar } from "../engine/values";
import { writtenValue } from "./cellValue";
import { applyEdits, type Edit } from "./edits";
import type { CellText, RowText, SheetText } from "./sheetText";
import { withAttributes } from "./tagText";

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
  const rows = new Map(sheet.rows.map((row) => [row.row, row]));
  const edits: Edit[] = [];
  const fresh = changes.filter((change) => change.value !== null && !hasCell(rows.get(change.row), change.column));
  for (const [row, inRow] of byRow(changes)) {
    const existing = rows.get(row);
    if (existing) edits.push(...rowEdits(sheet, existing, inRow));
    else edits.push(newRow(sheet, row, inRow));
  }
  const dimension = dimensionEdit(sheet, fresh);
  if (dimension) edits.push(dimension);
  return applyEdits(
    sheet.text,
    edits.filter((edit) => edit.text !== "" || edit.end > edit.start),
  );
}

function byRow(changes: readonly CellChange[]): [number, CellChange[]][] {
  const rows = new Map<number, CellChange[]>();
  for (const change of changes) {
    const row = rows.get(change.row);
    if (row) row.push(change);
    else rows.set(change.row, [change]);
  }
  for (const row of rows.values()) row.sort((a, b) => a.column - b.column);
  return [...rows].sort(([a], [b]) => a - b);
}

function rowEdits(sheet: SheetText, row: RowText, changes: CellChange[]): Edit[] {
  const cells = new Map(row.cells.map((cell) => [cell.column, cell]));
  const fresh = changes.filter((change) => !cells.has(change.column) && change.value !== null);
  const edits = changes.flatMap((change) => {
    const cell = cells.get(change.column);
    return cell ? cellEdits(sheet, cell, change) : [];
  });
  if (row.selfClosing) {
    if (fresh.length === 0) return edits;
    const tag = sheet.text.slice(row.start, row.end).replace(/\s*\/>$/, ">");
    const cellsText = fresh.map((change) => newCell(sheet, change)).join("");
    return [{ start: row.start, end: row.end, text: `${tag}${cellsText}</${sheet.prefix}row>` }];
  }
  for (const change of fresh) {
    const next = row.cells.find((cell) => cell.column > change.column);
    const at = next?.start ?? row.cells.at(-1)?.end ?? row.tagEnd;
    edits.push({ start: at, end: at, text: newCell(sheet, change) });
  }
  return edits;
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

function newCell(sheet: SheetText, change: CellChange): string {
  const { type, text } = writtenValue(change.value as Exclude<Scalar, null>);
  const mark = type ? ` t="${type}"` : "";
  const { prefix } = sheet;
  return `<${prefix}c r="${cellName(change.row, change.column)}"${mark}><${prefix}v>${text}</${prefix}v></${prefix}c>`;
}

function newRow(sheet: SheetText, row: number, changes: CellChange[]): Edit {
  const cells = changes.filter((change) => change.value !== null).map((change) => newCell(sheet, change));
  const next = firstAfter(sheet.rows, row);
  const at = next?.start ?? sheet.rows.at(-1)?.end ?? sheet.dataEnd;
  const { prefix } = sheet;
  const text = cells.length === 0 ? "" : `<${prefix}row r="${row + 1}">${cells.join("")}</${prefix}row>`;
  return { start: at, end: at, text };
}

function firstAfter(rows: readonly RowText[], row: number): RowText | undefined {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.row > row) high = middle;
    else low = middle + 1;
  }
  return rows[low];
}

function hasCell(row: RowText | undefined, column: number): boolean {
  return row?.cells.some((cell) => cell.column === column) ?? false;
}

/** The range in use grows where a spill makes cells beyond it; it never shrinks, for emptied cells are still there. */
function dimensionEdit(sheet: SheetText, fresh: readonly CellChange[]): Edit | undefined {
  if (!sheet.dimension) return undefined;
  const { start, end } = sheet.dimension;
  const area = { ...sheet.dimension.area };
  for (const { row, column } of fresh) {
    area.top = Math.min(area.top, row);
    area.left = Math.min(area.left, column);
    area.bottom = Math.max(area.bottom, row);
    area.right = Math.max(area.right, column);
  }
  if (sameArea(area, sheet.dimension.area)) return undefined;
  return { start, end, text: withAttributes(sheet.text.slice(start, end), { ref: areaName(area) }) };
}
