import { wakingFormula } from "../waking-formula";
import type { StuckCell, StuckSheet } from "./host";
import { blocksOf } from "./office-blocks";

/** Cells of a sheet that are looked at. */
const MOST = 1_000_000;

/** Looks through the open workbook, hidden sheets too, for cells that call functions of ours and show #NAME?. */
export async function findStuck(context: Excel.RequestContext, names: ReadonlySet<string>): Promise<StuckSheet[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const used = worksheets.items.map((sheet) => {
    sheet.protection.load("protected");
    const range = sheet.getUsedRangeOrNullObject(true);
    range.load("rowIndex, columnIndex, rowCount, columnCount");
    return { sheet, range };
  });
  await context.sync();
  const found: StuckSheet[] = [];
  for (const { sheet, range } of used) {
    if (range.isNullObject) continue;
    const cells = await stuckIn(context, sheet, range, names);
    const isCutShort = range.rowCount * range.columnCount > MOST;
    if (cells.length > 0) found.push({ name: sheet.name, isProtected: sheet.protection.protected, cells, isCutShort });
  }
  return found;
}

async function stuckIn(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
  names: ReadonlySet<string>,
): Promise<StuckCell[]> {
  const cells: StuckCell[] = [];
  for (const block of blocksOf(sheet, used, MOST)) {
    block.load("values, rowIndex, columnIndex");
    // One block after the other, for together they may be too large.
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    if (!block.values.some((row) => row.includes("#NAME?"))) continue;
    block.load("formulas");
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    const { formulas, rowIndex, columnIndex } = block;
    block.values.forEach((row, r) =>
      row.forEach((value, c) => {
        const formula = value === "#NAME?" ? wakingFormula(formulas[r]![c], names) : undefined;
        if (formula !== undefined) cells.push({ row: rowIndex + r, column: columnIndex + c, formula });
      }),
    );
  }
  return cells;
}

/** Writes formulas anew, all in one batch. */
export async function writeFormulas(
  context: Excel.RequestContext,
  sheetName: string,
  cells: readonly StuckCell[],
): Promise<void> {
  const sheet = context.workbook.worksheets.getItem(sheetName);
  for (const { row, column, formula } of cells) sheet.getCell(row, column).formulas = [[formula]];
  await context.sync();
}
