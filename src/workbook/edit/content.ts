import type { Cell } from "../engine/index";
import { CellError } from "../engine/index";
import { shifted, toTyped } from "./formulaText";

/** What stands in a cell as a person put it there: a formula with its equals sign, a value, or null. */
export type Content = { formula: string } | string | number | boolean | null;

export function sameContent(a: Content, b: Content): boolean {
  if (isFormula(a) && isFormula(b)) return a.formula === b.formula;
  return a === b;
}

export function isFormula(content: Content): content is { formula: string } {
  return typeof content === "object" && content !== null;
}

/** What a cell of a file holds; a cell that some other cell's formula fills holds nothing of its own. */
export function contentOf(cell: Cell | undefined): Content {
  if (!cell) return null;
  const { formula, value } = cell;
  if (formula && formula.text !== "") {
    return { formula: toTyped(shifted(formula.text, formula.rowShift, formula.columnShift)) };
  }
  return value instanceof CellError ? value.code : value;
}
