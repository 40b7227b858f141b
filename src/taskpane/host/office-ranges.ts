import type { Ranges } from "./host";

type Run = <T>(batch: (context: Excel.RequestContext) => Promise<T>) => Promise<T>;

/** What stands in the workbook's cells, as far as the spreadsheet program tells it. */
export const officeRanges = (run: Run): Ranges => ({
  shownBy: () =>
    run(async (context) => {
      const cell = context.workbook.getActiveCell();
      const parent = cell.getSpillParentOrNullObject();
      cell.load("formulas, rowIndex, columnIndex");
      const { worksheet } = cell;
      worksheet.load("name");
      parent.load("formulas, rowIndex, columnIndex");
      await context.sync();
      const from = parent.isNullObject ? cell : parent;
      const formula = String(from.formulas[0]![0]);
      if (!formula.startsWith("=")) return undefined;
      return {
        formula,
        sheet: worksheet.name,
        row: cell.rowIndex - from.rowIndex,
        column: cell.columnIndex - from.columnIndex,
      };
    }),

  values: ({ sheet, address, isSpilled }) =>
    run(async (context) => {
      const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
      await context.sync();
      if (worksheet.isNullObject) return undefined;
      const named = worksheet.getRange(address);
      const range = isSpilled ? named.getSpillingToRangeOrNullObject() : named;
      range.load("values");
      await context.sync();
      return range.isNullObject ? undefined : range.values;
    }),

  book: () =>
    run(async (context) => {
      const { workbook } = context;
      const { worksheets } = workbook;
      workbook.load("name");
      worksheets.load("items/name");
      await context.sync();
      const formulas: { sheet: string; formula: string }[] = [];
      for (const worksheet of worksheets.items)
        for (const formula of await formulasOf(context, worksheet)) formulas.push({ sheet: worksheet.name, formula });
      return { name: workbook.name, formulas };
    }),

  select: (sheet, address) =>
    run(async (context) => {
      const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
      worksheet.load("visibility");
      await context.sync();
      if (worksheet.isNullObject || worksheet.visibility !== "Visible") return false;
      worksheet.activate();
      worksheet.getRange(address).select();
      await context.sync();
      return true;
    }),
});

/** The formulas of a sheet that call a function of ours. */
async function formulasOf(context: Excel.RequestContext, worksheet: Excel.Worksheet): Promise<string[]> {
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowCount, columnCount");
  await context.sync();
  if (used.isNullObject) return [];
  const { rowCount, columnCount } = used;
  const rows = Math.max(1, Math.floor(AT_A_TIME / columnCount));
  const found: string[] = [];
  for (let first = 0; first < rowCount; first += rows) {
    const block = used.getCell(first, 0).getResizedRange(Math.min(rows, rowCount - first) - 1, columnCount - 1);
    block.load("formulas");
    // Block by block, for the whole may be too large for one answer.
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    for (const formula of block.formulas.flat())
      if (typeof formula === "string" && OURS.test(formula)) found.push(formula);
  }
  return found;
}

const AT_A_TIME = 50_000;
const OURS = /^=.*DRAWER\./i;
