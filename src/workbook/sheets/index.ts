/** Sheets added, renamed, moved and deleted in a workbook's file. */
export { applySheetEdit } from "./apply-sheet-edit";
export { SheetFault, type SheetEdit } from "./sheet-edit";
