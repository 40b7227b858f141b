export { readAlternates, type Alternate } from "./alternates-table";
export * from "./openings";
export * from "./rates";
export {
  isSolid,
  readParts,
  readStock,
  type AnyStockRow,
  type PartRow,
  type SolidRow,
  type StockRow,
} from "./sheet-tables";
