/** Workbooks written out of data. */
export type { SheetDefinition, WorkbookDefinition } from "./definition";
export { writeWorkbook } from "./write-workbook";
export { addSheets } from "./add-sheets";
