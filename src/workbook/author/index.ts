/** Workbooks written out of data. */
export type {
  CellDefinition,
  PageDefinition,
  RowDefinition,
  RuleDefinition,
  RuleLook,
  SheetDefinition,
  StyleDefinition,
  WorkbookDefinition,
} from "./definition";
export { writeWorkbook } from "./write-workbook";
