import { CellError, type Cell, type Scalar } from "../engine/index";
import type { ErrorCode } from "../formula/error-codes";
import { shifted, toTyped } from "../formula/typed-text";
import type { Content } from "./content";

/** What a cell of a file holds; a cell that some other cell's formula fills holds nothing of its own. */
export function contentOf(cell: Cell | undefined): Content {
  if (!cell) return null;
  const { formula, value } = cell;
  if (formula && formula.text !== "") {
    return { formula: toTyped(shifted(formula.text, formula.rowShift, formula.columnShift)) };
  }
  return value instanceof CellError ? value.code : value;
}

/** What a value is in a cell: a text that reads as one of the old error values is that error, as it is where it is typed. */
export function valueOf(content: Exclude<Content, { formula: string }>): Scalar {
  return typeof content === "string" && TYPED_ERRORS.has(content) ? new CellError(content as ErrorCode) : content;
}

/** The error values that a file holds as such, and that a person may type. */
const TYPED_ERRORS = new Set(["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"]);
