/** What the grid stands on: it is run while the grid itself, which is larger, is still being read. */
export { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
export { UniverRenderEnginePlugin } from "@univerjs/engine-render";
export { UniverSheetsPlugin } from "@univerjs/sheets";
