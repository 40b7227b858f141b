import { writeWorkbook, type WorkbookDefinition } from "../author/index";
import type { Style } from "../example/styles";
import type { Choices } from "./choices";
import { jobSheet, STANDARDS } from "./job-sheet";
import { openingsOf } from "./openings-of";
import { pricesSheet, RATES, STOCK } from "./prices-sheet";
import { resultSheets } from "./results";
import { NEW_JOB_STYLES } from "./styles";

export { DATA_SHEET, DEFAULT_CHOICES, type Choices } from "./choices";

/** A job of one's own: two sheets to type into, and every result fed from them. */
export const newJobDefinition = (choices: Choices): WorkbookDefinition<Style> => ({
  styles: NEW_JOB_STYLES,
  sheets: [jobSheet(choices), pricesSheet(choices), ...resultSheets(choices)],
  names: { openings: openingsOf(choices), standards: STANDARDS, stock: STOCK, rates: RATES },
});

/**
 * The same as an .xlsx file.
 * @returns a workbook that nobody has worked out yet: whoever opens it does
 */
export const newJob = (choices: Choices): Uint8Array => writeWorkbook(newJobDefinition(choices));
