/** A workbook that is edited cell by cell, worked out, and written back with everything else as it was. */
export { isFormula, type Content } from "./content";
export { EditedWorkbook, type CellEdit } from "./editedWorkbook";
export { FRACTION_FORMAT } from "./fractionStyles";
export { toStored, toTyped } from "./formulaText";
