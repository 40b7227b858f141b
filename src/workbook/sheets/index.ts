/** Sheets added, renamed, moved and deleted in a workbook's file. */
export { applySheetEdit, type Resheeted } from "./apply-sheet-edit";
export { SheetFault, sheetNameFault, type SheetEdit } from "./sheet-edit";
