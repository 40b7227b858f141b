export { readAlternates, type Alternate } from "./alternates-table";
export * from "./openings";
export * from "./rates";
export { readParts, readStock } from "./sheet-tables";
