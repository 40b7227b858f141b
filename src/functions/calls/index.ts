export { alternateTable } from "./alternates";
export * from "./evaluate";
export * from "./job";
export { plannedOrFault, rowsOfOpenings } from "./planned";
export { withQuote } from "./quote-job";
export type { SolidRows } from "./sheet-groups";
export * from "./sheet-job";
