import type { Ranges } from "./host";
import { formulasIn } from "./office-formulas";
import type { Run } from "./run";

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
      const sheets = worksheets.items.map((sheet) => ({ sheet, used: sheet.getUsedRangeOrNullObject(true) }));
      for (const { used } of sheets) used.load("rowIndex, columnIndex, rowCount, columnCount");
      await context.sync();
      const formulas: { sheet: string; formula: string }[] = [];
      for (const { sheet, used } of sheets)
        for (const { formula } of used.isNullObject ? [] : await formulasIn(context, sheet, used))
          if (OURS.test(formula)) formulas.push({ sheet: sheet.name, formula });
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

const OURS = /DRAWER\./i;
