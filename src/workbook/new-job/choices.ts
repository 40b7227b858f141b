import type { Unit } from "../../core/length/index";
import { STANDARDS_HELP } from "../../guide/index";

/** What a person chooses before a new job is laid out. */
export interface Choices {
  unit: Unit;
  /** What is typed: clear openings as measured, or cabinets by their outside sizes. */
  from: "openings" | "cabinets";
  construction: "frameless" | "face frame";
  slide: "side-mount" | "center-mount" | "wood runner" | "undermount";
  /** As it is typed, such as 1/2. */
  sideThickness: string;
  /** As it is typed, of undermount slides, which need their deduction. */
  dataSheet: DataSheet;
  /** A table that the shop already has, whose cells the job follows; left out, the job has rows to be typed. */
  shop?: ShopTable;
  /** What stands there from the start, in place of one row to type over; only where openings are typed, and no table is followed. */
  filled?: Filled;
}

/** A job that is typed already. */
export interface Filled {
  /** What the sheet Job is headed with, and what is said under it. */
  title: string;
  words: string;
  /** By our headings; standards of single openings among them. */
  openings: readonly Readonly<Record<string, string>>[];
  /** What is not the usual, besides what is chosen. */
  standards: DataSheet;
  stock: readonly (readonly [thickness: string, length: string, width: string, price: number])[];
  rates: Readonly<Record<string, number | string>>;
  /** Rates that are not in every job's list. */
  moreRates: readonly (readonly [name: string, value: number, note: string])[];
  /** What the client's quote tells of shop, client and job. */
  quote: Readonly<Record<"from" | "client" | "job" | "place" | "number" | "date" | "until", string>> & {
    /** What is built besides. */
    extra: readonly string[];
    terms: readonly string[];
  };
}

/** A range with headings, and which of its columns are which of ours. */
export interface ShopTable {
  sheet: string;
  /** The first row under the headings, from 1, and how many there are. */
  first: number;
  count: number;
  /** Our headings, each with the letters of the shop's column. */
  columns: Readonly<Record<string, string>>;
}

type StandardName = keyof typeof STANDARDS_HELP;

/** Standards as they are typed; of undermount slides, what their data sheet says. */
type DataSheet = { readonly [N in StandardName]?: string };

export const DATA_SHEET = (Object.keys(STANDARDS_HELP) as StandardName[]).filter(
  (name) => STANDARDS_HELP[name].group === "Undermount slides",
);

export const DEFAULT_CHOICES: Record<Unit, Choices> = {
  in: {
    unit: "in",
    from: "openings",
    construction: "frameless",
    slide: "side-mount",
    sideThickness: "1/2",
    dataSheet: {},
  },
  mm: {
    unit: "mm",
    from: "openings",
    construction: "frameless",
    slide: "side-mount",
    sideThickness: "12",
    dataSheet: {},
  },
};
