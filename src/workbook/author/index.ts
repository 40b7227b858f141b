/** Workbooks written out of data. */
export type { CellDefinition, RowDefinition, SheetDefinition, StyleDefinition, WorkbookDefinition } from "./definition";
export { writeWorkbook } from "./writeWorkbook";
