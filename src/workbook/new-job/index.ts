import { writeWorkbook } from "../author/index";
import type { Choices } from "./choices";
import { jobSheet } from "./job-sheet";
import { pricesSheet } from "./prices-sheet";
import { resultSheets } from "./results";
import { NEW_JOB_STYLES } from "./styles";

export { DATA_SHEET, DEFAULT_CHOICES, type Choices } from "./choices";

/**
 * A job of one's own as an .xlsx file: two sheets to type into, and every result fed from them.
 * @returns a workbook that nobody has worked out yet: whoever opens it does
 */
export const newJob = (choices: Choices): Uint8Array =>
  writeWorkbook({
    styles: NEW_JOB_STYLES,
    sheets: [jobSheet(choices), pricesSheet(choices.unit), ...resultSheets(choices.unit)],
  });
