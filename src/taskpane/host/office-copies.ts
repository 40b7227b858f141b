import { copyName } from "./copy-name";
import { keptFormula } from "./frozen-plan";
import type { FrozenCopies } from "./host";
import { layCopy } from "./office-copy";
import { readCopied, type Copied } from "./office-copied";
import type { Run } from "./run";

/**
 * Copies of sheets with values, in the spreadsheet program.
 * @param tellsFormats whether it tells the number formats that results bring
 */
export const officeCopies = (run: Run, tellsFormats: boolean): FrozenCopies => ({
  async add(which, stamp) {
    const copied = await run((context) => readCopied(context, which, tellsFormats));
    const { sheets, workbook } = copied;
    if (sheets.length === 0) return [];
    const taken = workbook.sheets.map(({ name }) => name);
    const copies = sheets.map(({ name }): [string, string] => {
      const copy = copyName(name, stamp.date, taken);
      taken.push(copy);
      return [name, copy];
    });
    try {
      for (const [i, sheet] of sheets.entries()) await run((context) => layCopy(context, sheet, copies[i]![1], stamp));
      await run((context) => finish(context, copied, copies));
    } catch (thrown) {
      await run((context) => takeAway(context, copied, copies)).catch(() => undefined);
      throw thrown;
    }
    return copies.map(([, copy]) => copy);
  },
});

/** Formulas that name copied sheets name their copies, once all of them stand. */
async function finish(
  context: Excel.RequestContext,
  { sheets, workbook }: Copied,
  copies: readonly [original: string, copy: string][],
): Promise<void> {
  const { worksheets } = context.workbook;
  const spilled = (place: number, row: number, column: number) =>
    sheets.find(({ sheet }) => sheet === place)?.spilled.get(`${row} ${column}`);
  sheets.forEach(({ sheet, kept }, i) => {
    const copy = worksheets.getItem(copies[i]![1]);
    for (const { row, column, formula } of kept) {
      const now = keptFormula(formula, sheet, workbook, spilled, copies);
      if (now !== formula) copy.getCell(row, column).formulas = [[now]];
    }
  });
  const first = sheets.findIndex(({ isVisible }) => isVisible);
  if (first >= 0) worksheets.getItem(copies[first]![1]).activate();
  await context.sync();
}

/** The copies that were made until one of them was refused; also one that still goes by the name that the program gave it. */
async function takeAway(
  context: Excel.RequestContext,
  { workbook }: Copied,
  copies: readonly [original: string, copy: string][],
): Promise<void> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name, items/id");
  await context.sync();
  const isCopy = (name: string): boolean =>
    copies.some(([original, copy]) => name === copy || name.startsWith(original.slice(0, BY_ITSELF)));
  for (const sheet of worksheets.items) if (!workbook.ids.includes(sheet.id) && isCopy(sheet.name)) sheet.delete();
  await context.sync();
}

/** Of a name, what stays for sure where the program makes one of its own out of it, as in `Plan (2)`. */
const BY_ITSELF = 24;
