import { MAX_COLUMNS, type Area } from "../address";
import type { Formats, Scalar } from "./values";

/** The workbook's arithmetic. Nobody outside this folder knows which library does it. */
export interface Engine {
  calculate(book: Book): Outcome;
  /** Works a book out that is changed cell by cell. */
  follow(book: Book): Followed;
}

/** A book whose cells change while it is followed; its names, tables and sheets stay. */
export interface Followed {
  /** Works all of it out. */
  calculate(): Outcome;
  /** Works out what hangs on these cells, which hold something else now; the same comes of it as if all were worked out. */
  update(changed: Iterable<Place>): Outcome;
}

interface Place {
  sheet: number;
  row: number;
  column: number;
}

/** A workbook as the engine needs it; sheets, rows and columns count from 0. */
export interface Book {
  sheets: Sheet[];
  names: DefinedName[];
  tables: Table[];
  /** Dates count from 1904 instead of 1900. */
  date1904: boolean;
}

export interface Sheet {
  name: string;
  /** By `cellKey`. */
  cells: Map<number, Cell>;
  merged: Area[];
  hiddenRows: Set<number>;
  /** The ranges that filters work on: a row hidden inside one was filtered out. */
  filters: Area[];
  /** A sheet of another kind (chart, macro), which has a name and no cells. */
  opaque?: boolean;
}

export interface Cell {
  row: number;
  column: number;
  /** The value that the file holds. */
  value: Scalar;
  /** The number format that a typed number brings, whatever its cell's own. */
  format?: string;
  formula?: Formula;
}

export interface Formula {
  text: string;
  /** How far the cell is from where a shared formula was written. */
  rowShift: number;
  columnShift: number;
  /** `dynamic` spills as far as it likes, `fixed` fills its area, `plain` gives one value. */
  kind: "plain" | "dynamic" | "fixed";
  /** What the formula fills as the file has it; a plain one its own cell. */
  area: Area;
  /** Why it cannot be recalculated, where the file already says so. */
  obstacle?: string;
}

interface DefinedName {
  name: string;
  text: string;
  /** The sheet that alone sees it. */
  sheet?: number;
}

export interface Table {
  name: string;
  sheet: number;
  area: Area;
  headerRows: number;
  totalRows: number;
  columns: string[];
}

/** What came of it: a result for every formula, and the formulas that kept their stored value. */
export interface Outcome {
  results: Result[];
  kept: Kept[];
  rounds: number;
  /** The value of a formula that stands in no cell, such as a rule about looks has, over what came of the cells. */
  ask(question: Question): Scalar;
}

/** A formula as it would stand in a cell, so far from where it was written. */
export interface Question {
  formula: string;
  sheet: number;
  row: number;
  column: number;
  rowShift: number;
  columnShift: number;
}

export interface Result {
  sheet: number;
  row: number;
  column: number;
  /** As large as `area`. A plain formula has one value. */
  values: Scalar[][];
  /** The number formats that the values bring, likewise; a cell's own format comes first. */
  formats?: Formats;
  area: Area;
  /** Calls one of the functions that were handed in. */
  custom: boolean;
}

interface Kept {
  sheet: number;
  row: number;
  column: number;
  reason: string;
  functions: readonly string[];
}

/** A cell's place as one number, to look it up by. */
export function cellKey(row: number, column: number): number {
  return row * MAX_COLUMNS + column;
}
