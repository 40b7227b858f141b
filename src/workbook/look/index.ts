/** How a workbook's file looks, for a grid to show. */
export type { CellStyle, Side } from "./cellStyles";
export { readLook, type Look } from "./look";
export type { SheetLook } from "./sheetLook";
