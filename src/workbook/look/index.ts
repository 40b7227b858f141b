/** How a workbook's file looks, for a grid to show. */
export type { CellStyle, Side, StyleChange } from "./cellStyles";
export { conditionalLook, type Asked, type Looked } from "./conditionalLook";
export { readLook, type Look } from "./look";
export type { SheetLook } from "./sheetLook";
