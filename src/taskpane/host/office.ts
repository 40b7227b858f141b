import { officeCopies } from "./office-copies";
import { addPicture } from "./office-picture";
import { addPlainSheet } from "./office-plain-sheet";
import { officeRanges } from "./office-ranges";
import { whenSelectionChanges } from "./office-selection";
import { officeSheets } from "./office-sheets";
import { findStuck, writeFormulas } from "./office-stuck";
import { HostFault, type Host, type HostAbilities, type HostFaultCode, type Selection, type StuckCells } from "./host";

/**
 * Waits for the spreadsheet program that the pane was opened in, and tells the cell functions what it can do.
 * @returns undefined where the page was opened elsewhere
 */
export async function connectOffice(): Promise<Host | undefined> {
  if (typeof Office === "undefined") return undefined;
  const { host } = await Office.onReady();
  if (host !== Office.HostType.Excel) return undefined;
  const showNumberFormats = supports("CustomFunctionsRuntime", "1.4");
  const formattedType = supports("ExcelApi", "1.19") ? "Double" : "FormattedNumber";
  globalThis.drawerHost = { showsNumberFormats: showNumberFormats, formattedType };
  // The active cell came with ExcelApi 1.7.
  const current = supports("ExcelApi", "1.7");
  const can = { insert: current, tellSelection: current, showNumberFormats };
  // So did ranges by their place, with which stuck cells are looked for.
  // What has spilled, and from where, is told since ExcelApi 1.12.
  // Sheets of ours are made of formulas that spill, so that these are laid out from the same release on.
  const sheets = officeSheets(run);
  const ranges = supports("ExcelApi", "1.12")
    ? {
        ranges: officeRanges(run),
        sheets,
        addSheet: addPlainSheet(sheets),
        // Values tell their own number formats since ExcelApi 1.16.
        copies: officeCopies(run, supports("ExcelApi", "1.16")),
      }
    : {};
  // Pictures came with ExcelApi 1.9.
  const pictures = supports("ExcelApi", "1.9") ? { addPicture: addPicture(run) } : {};
  return Object.assign(new OfficeHost(can), current ? { stuck } : {}, ranges, pictures);
}

const supports = (set: string, version: string): boolean => Office.context.requirements.isSetSupported(set, version);

class OfficeHost implements Host {
  readonly name = "Excel";
  // On the web the pane's frame may open pages, but need not be allowed to save files.
  readonly opensPages = Office.context.platform === Office.PlatformType?.OfficeOnline;

  constructor(readonly can: HostAbilities) {}

  selection(): Promise<Selection> {
    return run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("address, formulas, values");
      await context.sync();
      return { address: cell.address, formula: String(cell.formulas[0]![0]), value: cell.values[0]![0] };
    });
  }

  insertFormula(formula: string): Promise<void> {
    return run(async (context) => {
      context.workbook.getActiveCell().formulas = [[formula]];
      await context.sync();
    });
  }

  insertCells(texts: readonly string[]): Promise<{ address: string; wasFree: boolean }> {
    return run(async (context) => {
      const cells = context.workbook.getActiveCell().getResizedRange(0, texts.length - 1);
      cells.load("address, formulas");
      await context.sync();
      const wasFree = cells.formulas[0]!.every((formula) => formula === "");
      if (wasFree) {
        // As texts, for the program would make a date of 1/8.
        cells.numberFormat = [texts.map(() => "@")];
        cells.values = [[...texts]];
        await context.sync();
      }
      return { address: cells.address, wasFree };
    });
  }

  async onSelectionChanged(listener: (selection: Selection) => void): Promise<() => Promise<void>> {
    if (!this.can.tellSelection) return async () => {};
    const tell = (): Promise<void> => this.selection().then(listener, ignore);
    return whenSelectionChanges(run, tell, { tellsCalculated: supports("ExcelApi", "1.8") });
  }
}

const stuck: StuckCells = {
  find: (names) => run((context) => findStuck(context, names)),

  async wake({ name, cells }) {
    const write = (some: typeof cells) => run((context) => writeFormulas(context, name, some));
    let woken = 0;
    for (let first = 0; first < cells.length; first += AT_A_TIME) {
      const some = cells.slice(first, first + AT_A_TIME);
      try {
        await write(some);
        woken += some.length;
      } catch {
        // One cell that may not be written, as one of many that share an array formula, must not keep the others asleep.
        for (const cell of some) await write([cell]).then(() => woken++, ignore);
      }
    }
    return woken;
  },
};

const AT_A_TIME = 200;
const ignore = (): void => {};

async function run<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run(batch);
  } catch (thrown) {
    if (thrown instanceof HostFault) throw thrown;
    const { code = "", message = String(thrown) } = thrown as { code?: string; message?: string };
    throw new HostFault(CODES[code] ?? "refused", message);
  }
}

const CODES: Record<string, HostFaultCode> = {
  InvalidOperationInCellEditMode: "editing",
  AccessDenied: "protected",
};
