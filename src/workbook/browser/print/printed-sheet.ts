import { contains, type Area } from "../../address";
import { isFormula } from "../../edit/content";
import type { EditedWorkbook } from "../../edit/index";
import type { Scalar } from "../../engine/index";
import { readPageSetup, type CellStyle, type Look, type Looked, type PageSetup } from "../../look/index";
import { valueAt, type Results } from "../worker/results";

/** A sheet as it is to be printed: its page set-up, and of what is printed every size, value and look. */
export interface PrintedSheet {
  name: string;
  page: PageSetup;
  /** In pixels. */
  columns: number[];
  rows: PrintedRow[];
  /** Counted from the first row and column that is printed. */
  merged: Area[];
  /** How many rows stand at the head of every page, and the first of them. */
  head: { first: number; count: number };
}

export interface PrintedRow {
  height: number | undefined;
  /** Whether a page begins with it, for somebody said so. */
  isFirst: boolean;
  cells: PrintedCell[];
}

export interface PrintedCell {
  value: Scalar;
  style: CellStyle;
}

/** No page holds more; whoever prints a longer sheet chooses an area of it. */
const MOST_CELLS = 200_000;

/**
 * A sheet as it is to be printed: the area that was chosen, else everything up to the last row and column that show
 * something. What is hidden is left out.
 */
export function printedSheet(
  workbook: EditedWorkbook,
  look: Look,
  results: Results,
  id: string,
  looked: Looked,
): PrintedSheet | undefined {
  const at = workbook.sheets.findIndex((sheet) => sheet.id === id);
  const page = readPageSetup(workbook.opened, at);
  const own = look.sheets[at];
  if (!page || !own) return undefined;
  const { merged } = workbook.opened.book.sheets[at]!;
  const area = page.area ?? usedArea(workbook, results, id, merged);
  if (!area) return { name: workbook.sheets[at]!.name, page, columns: [], rows: [], merged: [], head: NO_HEAD };
  const columns = shown(area.left, area.right, (column) => own.columns.get(column)?.hidden);
  const rows = shown(area.top, area.bottom, (row) => own.rows.get(row)?.hidden).slice(
    0,
    Math.max(1, Math.floor(MOST_CELLS / Math.max(1, columns.length))),
  );
  const plain: CellStyle = look.styles[0] ?? { font: {}, borders: {}, wrap: false, indent: 0 };
  const styleAt = (row: number, column: number): CellStyle => {
    const number = own.cells.get(`${row} ${column}`) ?? own.rows.get(row)?.style ?? own.columns.get(column)?.style ?? 0;
    return look.styles[number] ?? plain;
  };
  return {
    name: workbook.sheets[at]!.name,
    page,
    columns: columns.map((column) => own.columns.get(column)?.width ?? own.defaultWidth),
    rows: rows.map((row) => ({
      height: own.rows.get(row)?.height ?? own.defaultHeight,
      isFirst: page.breaks.includes(row),
      cells: columns.map((column) => {
        const content = workbook.content(id, row, column);
        const value = isFormula(content) || content === null ? valueAt(results, id, row, column) : content;
        const brought = results.formats.get(`${id} ${row} ${column}`) ?? workbook.format(id, row, column);
        return { value, style: together(styleAt(row, column), looked(row, column), brought) };
      }),
    })),
    merged: merged.flatMap((one) => placed(one, rows, columns)),
    head: headOf(page, own.frozen.rows, rows),
  };
}

const NO_HEAD = { first: 0, count: 0 };

function shown(from: number, to: number, isHidden: (place: number) => boolean | undefined): number[] {
  const places: number[] = [];
  for (let place = from; place <= to; place++) if (!isHidden(place)) places.push(place);
  return places;
}

/** A rule's look before the cell's own, whose number format comes before the one that a value brings. */
function together(style: CellStyle, change: ReturnType<Looked>, brought: string | undefined): CellStyle {
  const format = change?.format ?? style.format ?? brought;
  return {
    ...style,
    font: { ...style.font, ...change?.font },
    borders: { ...style.borders, ...change?.borders },
    ...((change?.fill ?? style.fill) ? { fill: change?.fill ?? style.fill! } : {}),
    ...(format === undefined ? {} : { format }),
  };
}

/** From the first cell to the last that shows something; what is joined is shown whole. */
function usedArea(workbook: EditedWorkbook, results: Results, id: string, merged: readonly Area[]): Area | undefined {
  let [bottom, right] = [-1, -1];
  const take = (row: number, column: number, value: Scalar): void => {
    if (value === null || value === "") return;
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  };
  for (const { row, column } of workbook.cells(id)) {
    const content = workbook.content(id, row, column);
    take(row, column, isFormula(content) ? valueAt(results, id, row, column) : content);
  }
  for (const { row, column, value } of workbook.keptCells(id)) take(row, column, value);
  for (const spill of results.spills.values())
    if (spill.sheet === id)
      spill.values.forEach((line, y) =>
        line.forEach((value, x) => take(spill.area.top + y, spill.area.left + x, value)),
      );
  if (bottom < 0) return undefined;
  for (const area of merged)
    if (area.top <= bottom && area.left <= right) {
      bottom = Math.max(bottom, area.bottom);
      right = Math.max(right, area.right);
    }
  return { top: 0, left: 0, bottom, right };
}

/** Joined cells as far as they are printed. */
function placed(area: Area, rows: readonly number[], columns: readonly number[]): Area[] {
  const [down, across] = [
    rows.flatMap((row, i) => (contains(area, row, area.left) ? [i] : [])),
    columns.flatMap((column, i) => (contains(area, area.top, column) ? [i] : [])),
  ];
  if (down.length * across.length < 2) return [];
  return [{ top: down[0]!, left: across[0]!, bottom: down.at(-1)!, right: across.at(-1)! }];
}

/** The rows that were chosen for it; else those that stay in sight. */
function headOf({ repeated }: PageSetup, frozen: number, rows: readonly number[]): PrintedSheet["head"] {
  const { top, bottom } = repeated ?? { top: 0, bottom: frozen - 1 };
  const places = rows.flatMap((row, i) => (row >= top && row <= bottom ? [i] : []));
  return { first: places[0] ?? 0, count: places.length };
}
