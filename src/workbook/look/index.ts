/** How a workbook's file looks, for a grid to show. */
export type { CellStyle, Side, StyleChange } from "./cell-styles";
export { conditionalLook, type Looked } from "./conditional-look";
export { readLook, type Look } from "./look";
export { readPageSetup, type PageSetup } from "./page-setup";
export type { SheetLook } from "./sheet-look";
