import type { Named } from "../../workbook/freeze/needs";
import { frozenPlan, type FormulaCell, type SheetPlan } from "./frozen-plan";
import { HostFault } from "./host";
import { formulasIn } from "./office-formulas";
import { readValues, type FrozenValues } from "./office-values";
import type { Area } from "./style-areas";

/** What is to be copied, read before anything is written. */
export interface Copied {
  workbook: Named & { ids: readonly string[] };
  sheets: CopiedSheet[];
}

export interface CopiedSheet extends SheetPlan, FrozenValues {
  name: string;
  isVisible: boolean;
  /** By row and column, what a formula that becomes a value has filled. */
  spilled: ReadonlyMap<string, Area>;
  /** Nothing stands at the left of the printed foot, and there is room. */
  hasFootRoom: boolean;
}

/** Cells of a sheet that are looked at. */
const MOST = 1_000_000;
/** Cells that are asked of their spills at a time. */
const AT_A_TIME = 500;

/** Reads the sheets that are to be copied: the open one, or all that call functions of ours. */
export async function readCopied(
  context: Excel.RequestContext,
  which: "open" | "all",
  tellsFormats: boolean,
): Promise<Copied> {
  const { worksheets, names, tables, protection } = context.workbook;
  const open = worksheets.getActiveWorksheet();
  open.load("id");
  worksheets.load("items/name, items/id, items/visibility");
  names.load("items/name, items/formula");
  tables.load("items/name, items/worksheet/name");
  protection.load("protected");
  await context.sync();
  if (protection.protected) throw new HostFault("structure");
  const all = worksheets.items.map((sheet, place) => {
    const used = which === "all" || sheet.id === open.id ? sheet.getUsedRangeOrNullObject(true) : undefined;
    used?.load("rowIndex, columnIndex, rowCount, columnCount");
    sheet.names.load("items/name, items/formula");
    const foot = sheet.pageLayout.headersFooters.defaultForAllPages;
    foot.load("leftFooter, centerFooter, rightFooter");
    return { sheet, place, used, foot };
  });
  await context.sync();
  const workbook = {
    ids: worksheets.items.map(({ id }) => id),
    sheets: worksheets.items.map(({ name }) => ({ name })),
    names: [
      ...names.items.map(({ name, formula }) => ({ name, text: String(formula) })),
      ...all.flatMap(({ sheet, place }) =>
        sheet.names.items.map(({ name, formula }) => ({ name, text: String(formula), sheet: place })),
      ),
    ],
    tables: tables.items.map(({ name, worksheet }) => ({
      name,
      sheet: worksheets.items.findIndex((sheet) => sheet.name === worksheet.name),
    })),
  };
  const formulas = new Map<number, FormulaCell[]>();
  for (const { sheet, place, used } of all)
    if (used && !used.isNullObject) {
      if (used.rowCount * used.columnCount > MOST) throw new HostFault("sheetTooLarge", sheet.name);
      formulas.set(place, await formulasIn(context, sheet, used));
    }
  const sheets: CopiedSheet[] = [];
  for (const plan of frozenPlan(formulas, workbook)) {
    const { sheet, foot } = all[plan.sheet]!;
    const { spilled, kept } = await spillsOf(context, sheet, plan);
    sheets.push({
      ...plan,
      kept,
      spilled,
      ...(await readValues(context, sheet, [...spilled.values()], tellsFormats)),
      name: sheet.name,
      isVisible: sheet.visibility === "Visible",
      hasFootRoom: foot.leftFooter === "" && `${foot.centerFooter}${foot.rightFooter}`.length < FOOT - STAMP,
    });
  }
  return { workbook, sheets };
}

/** Characters that a foot takes in all (ECMA-376, 18.3.1.58), and what a line of ours may take of them. */
const FOOT = 255;
const STAMP = 80;

/** What the formulas that go have filled, and those that stay without cells that another one has filled. */
async function spillsOf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { gone, kept }: SheetPlan,
): Promise<{ spilled: Map<string, Area>; kept: FormulaCell[] }> {
  const spilled = new Map<string, Area>();
  for (const some of inReach(gone)) {
    const asked = some.map(({ row, column }) => {
      const range = sheet.getCell(row, column).getSpillingToRangeOrNullObject();
      range.load("rowCount, columnCount");
      return { row, column, range };
    });
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    for (const { row, column, range } of asked) {
      const { rowCount, columnCount } = range.isNullObject ? { rowCount: 1, columnCount: 1 } : range;
      const [bottom, right] = [row + rowCount - 1, column + columnCount - 1];
      spilled.set(`${row} ${column}`, { top: row, left: column, bottom, right });
    }
  }
  const own: FormulaCell[] = [];
  // The others stay as they are, wherever they came from.
  for (const some of inReach(kept.filter(({ formula }) => /[#!]/.test(formula)))) {
    const asked = some.map((cell) => {
      const parent = sheet.getCell(cell.row, cell.column).getSpillParentOrNullObject();
      parent.load("rowIndex, columnIndex");
      return { cell, parent };
    });
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    for (const { cell, parent } of asked)
      if (parent.isNullObject || (parent.rowIndex === cell.row && parent.columnIndex === cell.column)) own.push(cell);
  }
  return { spilled, kept: own };
}

const inReach = <T>(list: readonly T[]): T[][] =>
  Array.from({ length: Math.ceil(list.length / AT_A_TIME) }, (_, i) => list.slice(i * AT_A_TIME, (i + 1) * AT_A_TIME));
