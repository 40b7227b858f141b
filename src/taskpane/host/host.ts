import type { RangeName } from "../../shop-pages/index";
import type { WorkbookDefinition } from "../../workbook/author/definition";

export type { RangeName };

/** A spreadsheet that the pane stands beside. The pane knows it by this interface alone. */
export interface Host {
  /** The spreadsheet's name, as its users know it. */
  readonly name: string;
  readonly can: HostAbilities;
  /** A page of the pane's making may be opened beside the spreadsheet; elsewhere it can only be saved as a file. */
  readonly opensPages?: boolean;
  /** The one cell that is selected; of a selected range, the cell that typing would go into. */
  selection(): Promise<Selection>;
  /**
   * Writes a formula into the selected cell, over whatever it holds.
   * @param formula with its `=`, arguments separated by commas, whatever the user's language
   */
  insertFormula(formula: string): Promise<void>;
  /**
   * Writes texts into the selected cell and those to its right, where all of these are empty.
   * @returns the cells, and whether they were empty; where they were not, nothing is written
   */
  insertCells(texts: readonly string[]): Promise<{ address: string; wasFree: boolean }>;
  /**
   * Calls `listener` after every change of the selection, and after the workbook has been worked out anew where the
   * host tells of that, until the function that it gives back is called.
   * Where `can.tellSelection` is false, it never calls.
   */
  onSelectionChanged(listener: (selection: Selection) => void): Promise<() => Promise<void>>;
  /**
   * Adds a sheet behind the others and shows it.
   * @param name as it is called, with a number where that is taken
   * @returns its name
   */
  addSheet?(name: string, rows: readonly (readonly PlainCell[])[]): Promise<string>;
  /**
   * Puts a picture beside the cells of the sheet that is in front, or in the place of the one of that name.
   * @returns the sheet's name, and whether there was one
   */
  addPicture?(picture: HostPicture): Promise<{ sheet: string; isRenewed: boolean }>;
  /** Absent where the spreadsheet cannot tell what stands in other cells than the selected one. */
  readonly ranges?: Ranges;
  /** Absent where cells cannot get stuck, or cannot be helped. */
  readonly stuck?: StuckCells;
  /** Absent where the spreadsheet cannot be given sheets. */
  readonly sheets?: NewSheets;
  /** The spreadsheet's own way to a new job, where it has one. */
  beginJob?(): Promise<void>;
  /** Absent where the spreadsheet cannot be given copies of its sheets. */
  readonly copies?: FrozenCopies;
  /** The spreadsheet's own way to a copy with values, where it has one. */
  beginCopy?(): Promise<void>;
}

/** Copies of sheets in which the results of our functions are values, in the same workbook. */
export interface FrozenCopies {
  /**
   * Adds copies after the other sheets, and shows the first. Where one of them is refused, none stays.
   * @param which the sheet that is open, or every sheet that calls our functions
   * @param stamp when they were made, such as 2026-05-04, and by which version
   * @returns the copies' names, none where nothing calls our functions
   */
  add(which: "open" | "all", stamp: { date: string; version: string }): Promise<string[]>;
}

export interface HostPicture {
  /** In base 64. */
  png: string;
  name: string;
  /** For whom cannot see it. */
  description: string;
  /** In points; the height follows. */
  width: number;
}

/** Sheets laid out beside what stands in the workbook. */
export interface NewSheets {
  /** What the workbook already calls by name. */
  taken(): Promise<{ sheets: string[]; names: string[] }>;
  /**
   * Adds the sheets after the others, and shows the first. Where one of them is refused, none stays.
   * @param workbook whose sheets and names are not taken
   */
  add(workbook: WorkbookDefinition): Promise<void>;
  /** What stands in the selected range, as far as it is used; undefined where nothing does. */
  selected(): Promise<SelectedTable | undefined>;
}

export interface SelectedTable {
  sheet: string;
  /** Of its upper left cell, from 0. */
  row: number;
  column: number;
  /** Blanks as "". */
  values: unknown[][];
}

/** What is written into a cell; null leaves it empty. A text is a text, whatever it begins with. */
export type PlainCell = string | number | { value: number; format: string } | { formula: string } | null;

/** What stands in a workbook's cells. */
export interface Ranges {
  /** The formula whose result the selected cell shows, undefined where it shows none: its own, or one that spilled into it. */
  shownBy(): Promise<ShownBy | undefined>;
  /** What stands in a range, blanks as ""; undefined where there is no such range, or nothing has spilled. */
  values(range: RangeName & { sheet: string }): Promise<unknown[][] | undefined>;
  /**
   * What the workbook is called, and every formula of it that calls a function of ours, sheet by sheet; absent where
   * the spreadsheet makes its shop pages itself.
   */
  book?(): Promise<{ name: string; formulas: { sheet: string; formula: string }[] }>;
  /**
   * Selects a cell, its sheet in front.
   * @param address as `B7`
   * @returns false where there is no such sheet, or it is not seen
   */
  select(sheet: string, address: string): Promise<boolean>;
}

export interface ShownBy {
  formula: string;
  /** The sheet that the formula stands in. */
  sheet: string;
  /** Where in the result the selected cell lies, from 0. */
  row: number;
  column: number;
}

/** Cells that the spreadsheet worked out before it knew the functions: they show #NAME? for good. */
export interface StuckCells {
  /** @param names of the functions that are there, in capitals */
  find(names: ReadonlySet<string>): Promise<StuckSheet[]>;
  /**
   * Writes a sheet's stuck formulas anew, which wakes them.
   * @returns how many the spreadsheet took
   */
  wake(sheet: StuckSheet): Promise<number>;
}

export interface StuckSheet {
  name: string;
  isProtected: boolean;
  cells: readonly StuckCell[];
  /** The sheet is so large that a part of it was not looked at. */
  isCutShort: boolean;
}

/** Row and column from 0, and the formula that wakes the cell. */
export interface StuckCell {
  row: number;
  column: number;
  formula: string;
}

/** What a host can do; the pane offers no more than that. */
export interface HostAbilities {
  insert: boolean;
  tellSelection: boolean;
  /** Results may bring their own number format. */
  showNumberFormats: boolean;
}

/** A cell as its host tells it: address with the sheet's name; formula and value are "" where it is empty. */
export interface Selection {
  address: string;
  formula: string;
  value: unknown;
  /** The sentence behind an error in the cell, where the host has no place of its own to show it. */
  message?: string;
}

export type HostFaultCode =
  "editing" | "protected" | "structure" | "tooLarge" | "sheetTooLarge" | "working" | "refused";

/** What a host may throw; its wording stands in the pane's messages. */
export class HostFault extends Error {
  /** @param detail what the host itself said */
  constructor(
    readonly code: HostFaultCode,
    readonly detail = "",
  ) {
    super(`${code}: ${detail}`);
    this.name = "HostFault";
  }
}
