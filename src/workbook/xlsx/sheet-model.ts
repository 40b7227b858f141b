import { cellKey, type Formula, type Sheet } from "../engine/engine";
import { readValue } from "./cell-value";
import type { CellText, FormulaText, SheetText } from "./sheet-text";

/** A sheet as the engine sees it: values, and formulas with their shared texts found. */
export function sheetModel(name: string, text: SheetText | undefined, sharedStrings: readonly string[]): Sheet {
  const sheet: Sheet = {
    name,
    cells: new Map(),
    merged: text?.merged ?? [],
    hiddenRows: text?.hiddenRows ?? new Set(),
    filters: [],
    opaque: text === undefined,
  };
  const shared = new Map<string, CellText>();
  for (const row of text?.rows ?? []) {
    for (const cell of row.cells) {
      const value = readValue(cell, sharedStrings);
      const formula = cell.formula && formulaOf(cell, cell.formula, shared);
      if (value === null && !formula) continue;
      sheet.cells.set(cellKey(cell.row, cell.column), { row: cell.row, column: cell.column, value, formula });
    }
  }
  return sheet;
}

/** An array formula that says it fills more than that is not believed. */
const MOST_FILLED = 2_000_000;

function formulaOf(cell: CellText, written: FormulaText, shared: Map<string, CellText>): Formula | undefined {
  const own = { top: cell.row, left: cell.column, bottom: cell.row, right: cell.column };
  const plain: Formula = { text: written.text, rowShift: 0, columnShift: 0, kind: "plain", area: own };
  if (written.kind === "dataTable") return { ...plain, obstacle: "is a what-if data table" };
  if (written.kind === "shared") return sharedFormula(cell, written, plain, shared);
  if (written.text.trim() === "") return undefined;
  if (written.kind !== "array") return plain;
  const { top, left, bottom, right } = written.area ?? own;
  if ((bottom - top + 1) * (right - left + 1) > MOST_FILLED) return { ...plain, obstacle: "fills too many cells" };
  return { ...plain, kind: cell.isDynamic ? "dynamic" : "fixed", area: written.area ?? own };
}

/** The first cell of a shared formula holds its text; the others say how far they are from it. */
function sharedFormula(cell: CellText, written: FormulaText, plain: Formula, shared: Map<string, CellText>): Formula {
  const index = written.sharedIndex ?? "";
  const known = shared.get(index);
  if (written.text !== "" && (written.area || !known)) {
    shared.set(index, cell);
    return plain;
  }
  if (!known) return { ...plain, obstacle: "shares a formula that the file does not hold" };
  return {
    ...plain,
    text: known.formula!.text,
    rowShift: cell.row - known.row,
    columnShift: cell.column - known.column,
  };
}
