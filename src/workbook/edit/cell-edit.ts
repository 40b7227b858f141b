import { isFormula, type Content } from "./content";

/** One cell that a person changed. */
export interface CellEdit {
  /** The sheet's id. */
  sheet: string;
  row: number;
  column: number;
  content: Content;
  /** Typed as a fraction, and so to be shown as one where the cell has no number format. */
  isFraction?: boolean;
}

/** The edit with its formula, if it is one, changed. */
export function withFormula(edit: CellEdit, change: (typed: string) => string): CellEdit {
  const { content } = edit;
  if (!isFormula(content)) return edit;
  const formula = change(content.formula);
  return formula === content.formula ? edit : { ...edit, content: { formula } };
}
