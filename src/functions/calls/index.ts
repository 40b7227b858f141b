export type * from "./faults";
export { alternateRows, alternates, ratesIfGiven } from "./alternates";
export { cabinets, cabinetStandards } from "./cabinets";
export { begun, cellFunction, orFault, readAll } from "./cell-function";
export { openings, standards, type JobTables } from "./job";
export { plannedOrFault, rowsOfOpenings } from "./planned";
export { drawersForAll, QUOTE_ARGUMENTS, quoteFor } from "./quote-job";
export { usesOf } from "./solved";
export { laidOut, SHEET_ARGUMENTS, stock, stockCells, stockIfGiven, type LaidOutGroup } from "./sheet-job";
