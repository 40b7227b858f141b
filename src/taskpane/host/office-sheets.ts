import type { WorkbookDefinition } from "../../workbook/author/definition";
import { HostFault, type NewSheets } from "./host";
import { layOut } from "./office-layout";
import type { Run } from "./run";

/** More cells than these no table has that a function of ours reads. */
const MOST = 20_000;

/** Sheets beside those that are there, in the spreadsheet program. */
export const officeSheets = (run: Run): NewSheets => ({
  taken: () =>
    run(async (context) => {
      const { worksheets, names, protection } = context.workbook;
      worksheets.load("items/name");
      names.load("items/name");
      protection.load("protected");
      await context.sync();
      if (protection.protected) throw new HostFault("structure");
      return { sheets: worksheets.items.map(({ name }) => name), names: names.items.map(({ name }) => name) };
    }),

  async add(workbook) {
    try {
      await run(async (context) => {
        layOut(context, workbook);
        await context.sync();
      });
    } catch (thrown) {
      await run((context) => takeAway(context, workbook)).catch(() => undefined);
      throw thrown;
    }
  },

  selected: () =>
    run(async (context) => {
      const range = context.workbook.getSelectedRange().getUsedRangeOrNullObject(true);
      range.load("rowIndex, columnIndex, rowCount, columnCount");
      range.worksheet.load("name");
      await context.sync();
      if (range.isNullObject) return undefined;
      const { rowIndex: row, columnIndex: column, rowCount, columnCount } = range;
      if (rowCount * columnCount > MOST) throw new HostFault("tooLarge");
      range.load("values");
      await context.sync();
      return { sheet: range.worksheet.name, row, column, values: range.values };
    }),
});

/** What was laid out until one of the sheets was refused. */
async function takeAway(context: Excel.RequestContext, { sheets, names = {} }: WorkbookDefinition): Promise<void> {
  const { workbook } = context;
  const made = [
    ...Object.keys(names).map((name) => workbook.names.getItemOrNullObject(name)),
    ...sheets.map(({ name }) => workbook.worksheets.getItemOrNullObject(name)),
  ];
  await context.sync();
  for (const one of made) if (!one.isNullObject) one.delete();
  await context.sync();
}
