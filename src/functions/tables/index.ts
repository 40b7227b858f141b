export { readAlternates, type Alternate } from "./alternates-table";
export { readJob } from "./job";
export { notedIn } from "./noted";
export type { OpeningHeading } from "./opening";
export { readOpenings } from "./openings";
export { ratesIfAny, readRatesTable } from "./rates";
export type { Table } from "./row";
export { readParts, readStock } from "./sheet-tables";
export { readStandardValues, readUnit } from "./standards";
