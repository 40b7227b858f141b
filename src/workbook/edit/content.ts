/** What stands in a cell as a person put it there: a formula with its equals sign, a value, or null. */
export type Content = { formula: string } | string | number | boolean | null;

export function sameContent(a: Content, b: Content): boolean {
  if (isFormula(a) && isFormula(b)) return a.formula === b.formula;
  return a === b;
}

export function isFormula(content: Content): content is { formula: string } {
  return typeof content === "object" && content !== null;
}
