import { isFormula, type Content } from "./content";

/** One cell that a person changed. */
export interface CellEdit {
  /** The sheet's id. */
  sheet: string;
  row: number;
  column: number;
  content: Content;
  /** The number format that a number was typed with (a percentage, a date …), for a cell that has none of its own. */
  format?: string;
}

/** The edit with its formula, if it is one, changed. */
export function withFormula(edit: CellEdit, change: (typed: string) => string): CellEdit {
  const { content } = edit;
  if (!isFormula(content)) return edit;
  const formula = change(content.formula);
  return formula === content.formula ? edit : { ...edit, content: { formula } };
}
