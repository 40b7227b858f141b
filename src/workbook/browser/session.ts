import { IUniverInstanceService } from "@univerjs/core";
import { Book } from "./book";
import type { Busy } from "./busy";
import { keepCalculated, type Calculation, type Watcher } from "./calculation";
import type { BegunWork } from "./first-work";
import { beginOpening } from "./worker/opening";
import { snapshot } from "./snapshot";
import type { Grid } from "./univer";
import type { OpenedBook } from "./worker/messages";

/** A workbook that stands in the grid. */
export interface OpenInGrid {
  readonly unitId: string;
  readonly book: Book;
  readonly calculation: Calculation;
}

let count = 0;

/**
 * Puts a workbook into the grid, in place of what stood there.
 * @throws FileFault where the bytes are no usable workbook; grid and workbook are then left as they were
 */
export async function openInGrid(
  grid: Grid,
  { work: { bytes, name, edits }, opening, opened: found }: BegunWork,
  busy: Busy,
  before: () => OpenInGrid | undefined,
  watcher: Watcher,
): Promise<OpenInGrid> {
  const { book, opened } = found
    ? Book.show(bytes, found, busy)
    : await Book.open(bytes, opening ?? beginOpening(bytes, edits), `Opening ${name}`, busy);
  const unitId = `workbook-${++count}`;
  const last = before();
  try {
    show(grid, opened, unitId, name);
  } catch (error) {
    book.end();
    grid.api.disposeUnit(unitId);
    if (last) grid.univer.__getInjector().get(IUniverInstanceService).setCurrentUnitForType(last.unitId);
    throw error;
  }
  last?.calculation.dispose();
  if (last) grid.api.disposeUnit(last.unitId);
  return { unitId, book, calculation: keepCalculated(grid, unitId, book, watcher) };
}

function show(grid: Grid, opened: OpenedBook, unitId: string, name: string): void {
  const sheets = grid.api.createWorkbook(snapshot(opened, unitId, name)).getSheets();
  for (const sheet of [...sheets].reverse()) {
    const { isHidden, look } = opened.sheets.find(({ id }) => id === sheet.getSheetId())!;
    if (isHidden) continue;
    const { row, column } = look!.selected;
    sheet.getRange(Math.min(row, sheet.getMaxRows() - 1), Math.min(column, sheet.getMaxColumns() - 1)).activate();
  }
}
