import type { WorkbookDefinition } from "../author/definition";
import type { Style } from "../example/styles";
import type { Choices } from "./choices";
import { jobPlaces } from "./job-places";
import { jobSheet } from "./job-sheet";
import { openingsOf } from "./openings-of";
import { pricesSheet, RATES, STOCK } from "./prices-sheet";
import { resultSheets } from "./results";
import { NEW_JOB_STYLES } from "./styles";

export { BENCH } from "./bench";
export { beside } from "./beside";
export { DATA_SHEET, DEFAULT_CHOICES, type Choices, type ShopTable } from "./choices";
export { headingsOf } from "./job-table";

/** A job of one's own: two sheets to type into, and every result fed from them. */
export const newJob = (choices: Choices): WorkbookDefinition<Style> => ({
  styles: NEW_JOB_STYLES,
  sheets: [jobSheet(choices), pricesSheet(choices), ...resultSheets(choices)],
  names: { openings: openingsOf(choices), standards: jobPlaces(choices).standards, stock: STOCK, rates: RATES },
});
