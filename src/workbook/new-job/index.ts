import type { WorkbookDefinition } from "../author/definition";
import { alternates } from "./alternates";
import type { Choices } from "./choices";
import { clientQuote } from "./client-quote";
import { jobPlaces } from "./job-places";
import { jobSheet } from "./job-sheet";
import { oneBox } from "./one-box";
import { planSheets, workingsSheet } from "./plan-sheets";
import { priceGrid } from "./price-grid";
import { pricesSheet, RATES, STOCK } from "./prices-sheet";
import { quoteSheet } from "./quote-sheet";
import { openingsOf } from "./sheet-tables";
import { shopSheets } from "./shop-sheets";
import { STYLES, type Style } from "./styles";
import { whatIf } from "./what-if";

export { BENCH, benchJob } from "./bench";
export { beside } from "./beside";
export { DATA_SHEET, DEFAULT_CHOICES, type Choices, type ShopTable } from "./choices";
export { headingsOf } from "./job-table";

/** A job of one's own: two sheets to type into, the plan beside the first, and every other result fed from them. */
export const newJob = (choices: Choices): WorkbookDefinition<Style> => ({
  styles: STYLES,
  sheets: [
    jobSheet(choices),
    ...planSheets(choices),
    pricesSheet(choices),
    ...shopSheets(choices),
    ...[quoteSheet, clientQuote, priceGrid, alternates, whatIf, oneBox, workingsSheet].map((sheet) => sheet(choices)),
  ],
  names: { openings: openingsOf(choices), standards: jobPlaces(choices).standards, stock: STOCK, rates: RATES },
});
