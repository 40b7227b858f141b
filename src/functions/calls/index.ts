export type * from "./faults";
export { alternateRows, alternates, ratesIfGiven } from "./alternates";
export { cabinets, cabinetStandards } from "./cabinets";
export { begun, cellFunction, readAll } from "./cell-function";
export { CHECKS_ARGUMENTS, everythingFound } from "./found";
export { openings, standards } from "./job";
export { plannedOrFault, rowsOfOpenings } from "./planned";
export { drawersForAll, QUOTE_ARGUMENTS, quoteFor } from "./quote-job";
export { laidOut, SHEET_ARGUMENTS, stock, stockCells, type LaidOutGroup } from "./sheet-job";
