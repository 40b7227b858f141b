import { HostFault, type HostFaultCode, type StuckSheet } from "./host/host";

/** What the pane says, in plain words. */
export const MESSAGES = {
  looking: "Looking for the spreadsheet…",
  noHost:
    "This page is not open in a spreadsheet. You can read the list and copy examples. To insert them, open this pane from the Home tab in Excel.",
  lacking:
    "The functions have not loaded, so cells that use them are waiting. Trying again: check that this computer is online.",
  tooOld:
    "This version of the spreadsheet does not let the pane write cells. Copy an example, and paste it into a cell.",
  unknownCell: "Select an empty cell, then insert an example.",
  selected: (address: string) => `Selected cell: ${address}`,
  inserted: (what: string, address: string) => `${what} now stands in ${address}.`,
  occupied: (address: string) =>
    `${address} is not empty and was left as it is. Select an empty cell, then insert again.`,
  copied: (formula: string) => `${formula} is copied.`,
  notCopied: "The browser did not allow copying. Select the formula and copy it by hand.",
  /** How many cells are stuck, where, and why they may stay so. */
  stuck: (sheets: readonly StuckSheet[]) =>
    [
      `${cells(countOf(sheets))} of this workbook ${countOf(sheets) === 1 ? "shows" : "show"} #NAME?, for the spreadsheet knew no drawer functions yet when it came to them: ${places(sheets)}.`,
      ...sheets.filter(({ isProtected }) => isProtected).map(({ name }) => `${name} is protected: unprotect it first.`),
      ...sheets.filter(({ isCutShort }) => isCutShort).map(({ name }) => `${name} is large: there may be more.`),
    ].join(" "),
  wake: "Work them out",
  woken: (woken: number, left: number) =>
    `${cells(woken)} ${woken === 1 ? "is" : "are"} being worked out.${left > 0 ? ` ${cells(left)} still ${left === 1 ? "shows" : "show"} #NAME?: look for another name in the formula, or for an array that the cell is part of.` : ""}`,
  drawingHint:
    "Select a cell of a table that PLAN, MOUNTING or FIT gives to see its opening here, to scale; a cell of SHEETS, LAYOUT or CUTS shows its sheet.",
  noRanges: "This version of the spreadsheet does not let the pane read tables, so that nothing can be drawn.",
  /** A table of a call that is no plain range. */
  notRead: (argument: string) =>
    `Nothing is drawn: the pane reads ranges such as Job!A5:F9 and A5#, and this call takes ${argument}.`,
  noRange: (range: string) => `Nothing is drawn: ${range} holds nothing that could be read.`,
  nothingDrawn: "Nothing is drawn: the table has no such row.",
  /** What is found in a job, counted. */
  findings: (levels: readonly ("wrong" | "doubtful")[]) => {
    const count = (level: string): string => `${levels.filter((one) => one === level).length} ${level}`;
    return levels.length === 0 ? "Findings: all clear" : `Findings: ${count("wrong")}, ${count("doubtful")}`;
  },
  chosen: (cell: string) => `${cell} is selected.`,
  noCell: (where: string) => `There is no cell for this: it is about what the table ${where} does not hold.`,
  sheetUnseen: (sheet: string) => `The sheet ${sheet} is not seen, so that no cell of it can be selected.`,
  betterSheets: "Better sheets",
  searchOn: "Search for fewer sheets",
  searching: "Searching…",
  stop: "Stop",
  writeLayout: "Write as a layout",
  searchFailed: "The search ended with a fault of its own.",
  sheets: (count: number) => sheetsOf(count),
  soFar: ({ sheets, cost, least, proven }: SoFar, isGoing: boolean) =>
    [
      `${sheetsOf(sheets)}${cost === undefined ? "" : `, ${cost.toFixed(2)}`}.`,
      proven
        ? "Nothing less is possible."
        : `The least possible is ${least}; the search ${isGoing ? "goes on" : "was stopped"}.`,
    ].join(" "),
  elapsed: (seconds: number) => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")} min`,
  layoutWritten: (sheet: string) => `The layout stands on the sheet ${sheet}.`,
  errorInTables: "A cell of the job's tables holds an error.",
  errorInside: "Nothing is drawn: a cell of its tables holds an error.",
  laidOut: (names: readonly string[]) =>
    `The job stands on ${names.length} new sheets, ${names[0]} first. To take it back, delete them.`,
  layingOut: "Laying out the sheets…",
  copying: "Copying…",
  copiesMade: (names: readonly string[]) =>
    `${names.length === 1 ? `The copy stands on the new sheet ${names[0]!}.` : `The copies stand on ${names.length} new sheets, ${names[0]!} first.`} To take ${names.length === 1 ? "it" : "them"} back, delete ${names.length === 1 ? "it" : "them"}.`,
  noCalls: (which: "open" | "all") =>
    which === "open"
      ? "This sheet calls none of the functions: copy it as it is."
      : "No sheet of this workbook calls the functions.",
  noTable: "Nothing stands in the selected cells. Select the headings of your table with its rows, then try again.",
  oneCell: "Select the whole table, headings and rows, then try again.",
  noSheets:
    "This version of the spreadsheet has no formulas that fill several cells, so that a job cannot be laid out.",
  table: (name: string, rows: number) => `${name}: ${rows === 1 ? "1 row" : `${rows} rows`}. Which column is which?`,
  unmapped: (names: readonly string[]) =>
    `${names.join(", ")}: say which column it is, or leave it open and type it on the sheet Job.`,
  saveSvg: "Save as SVG",
  savePng: "Save as PNG",
  putPicture: "Put beside the cells",
  pictureStands: ({ sheet, isRenewed }: { sheet: string; isRenewed: boolean }) =>
    isRenewed
      ? `The picture on the sheet ${sheet} is renewed.`
      : `The picture stands on the sheet ${sheet}, to the right of its cells.`,
  shopPages: "Shop pages",
  whatShopPagesAre:
    "The workbook’s job as pages to print or to hold at the saw: cuts by set-up, sheets, story sticks, labels, hardware, drawings.",
  makeShopPages: "Make the shop pages",
  makingPages: "Making the shop pages…",
  pagesOpened: "The shop pages are open in a tab of their own.",
  pagesSaved: "The shop pages are saved as shop pages.html: open the file in a browser.",
  notSaved: "The picture could not be made.",
  found: (count: number) => (count === 0 ? "Nothing found" : `${count} found`),
  more: (count: number) => `And ${count} more. Another word finds fewer.`,
  nothing: (query: string) => `Nothing here is called “${query}”. Try another word, or the guide’s page Words.`,
} as const;

const sheetsOf = (count: number): string => (count === 1 ? "1 sheet" : `${count} sheets`);
const cells = (count: number): string => (count === 1 ? "1 cell" : `${count} cells`);
const countOf = (sheets: readonly StuckSheet[]): number => sheets.reduce((sum, sheet) => sum + sheet.cells.length, 0);
const places = (sheets: readonly StuckSheet[]): string =>
  sheets.map((sheet) => `${sheet.cells.length} on ${sheet.name}`).join(", ");

/** What went wrong between pane and spreadsheet. */
export function faultMessage(thrown: unknown): string {
  if (thrown instanceof HostFault) return FAULTS[thrown.code](thrown.detail);
  return `The pane made a mistake (${String(thrown)}). Please report it.`;
}

const FAULTS: Record<HostFaultCode, (detail: string) => string> = {
  editing: () => "A cell is being edited. Finish it with Enter or Esc, then try again.",
  protected: () => "The cell may not be changed: its sheet is protected, or the workbook is read-only.",
  structure: () =>
    "No sheet can be added, for the structure of the workbook is protected: unprotect it first, under Review, Protect Workbook.",
  tooLarge: () => "So large a range is no table of openings: select its headings and the rows below them alone.",
  sheetTooLarge: (sheet) => `The sheet ${sheet} is too large to be copied from here: it has more than 1,000,000 cells.`,
  working: () => "Some results are still being worked out. Wait until they stand in their cells, then try again.",
  refused: (detail) => `The spreadsheet did not take it: ${detail}`,
};

interface SoFar {
  sheets: number;
  cost: number | undefined;
  least: string;
  proven: boolean;
}
