import type { Choices } from "./choices";
import { jobPlaces } from "./job-places";

/** The tables of the result sheets, as formulas of other sheets name them. */
export const PLAN = "Plan!$A$5#";
export const CHECKS = "Checks!$A$5#";
export const CUT_LIST = "'Cut list'!$A$5#";
export const HARDWARE = "Hardware!$A$5#";
export const QUOTE = "Quote!$A$5#";

/** The widths of a plan's boxes: a false front has none, and an opening that cannot be planned has one row, of errors. */
export const BOX_WIDTHS = `INDEX(${PLAN},0,6)`;

/** The table of openings: as typed, or derived from the cabinets. */
export const openingsOf = (choices: Choices): string =>
  choices.from === "cabinets" ? "Openings!$A$5#" : jobPlaces(choices).typed;

/** What every function of a whole plan takes first. */
export const jobOf = (choices: Choices): string => `${openingsOf(choices)},${jobPlaces(choices).standards}`;

/**
 * How often the drawer in each row of the plan is made: as often as its opening is built, once where nothing is
 * told. Written without LET, which not every program knows that a client's quote is opened in.
 */
export function timesOf(choices: Choices): string {
  const openings = openingsOf(choices);
  const of = (heading: string): string => `INDEX(${openings},0,MATCH("${heading}",INDEX(${openings},1,0),0))`;
  const told = `IFERROR(SUMIF(${of("Opening")},INDEX(${PLAN},0,2),${of("Quantity")}),0)`;
  return `(${told}+(${told}=0))`;
}

/** How many drawers are planned. */
export const plannedOf = (choices: Choices): string => `SUMPRODUCT(ISNUMBER(${BOX_WIDTHS})*${timesOf(choices)})`;
