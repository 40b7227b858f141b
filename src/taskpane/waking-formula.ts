/**
 * The formula that wakes a cell which shows #NAME? though it calls functions that are there; undefined where it calls
 * none of them. It is the cell's own formula. A program that knew no such function when it opened the file may show
 * the name as the file holds it, `_xldudf_DRAWER_PLAN`: then it is the name that was typed.
 */
export function wakingFormula(formula: unknown, names: ReadonlySet<string>): string | undefined {
  if (typeof formula !== "string" || !formula.startsWith("=")) return undefined;
  let isOurs = false;
  const woken = formula.replace(TEXT_OR_CALL, (found, prefix?: string, name?: string) => {
    if (name === undefined || !names.has(name.toUpperCase())) return found;
    isOurs = true;
    return prefix?.startsWith("_") ? `DRAWER.${name}` : found;
  });
  return isOurs ? woken : undefined;
}

/** A text or a sheet's name, in which nothing is a call; or the name of a call of ours. */
const TEXT_OR_CALL = /"[^"]*"|'[^']*'|(?<![\w.])(DRAWER\.|_xldudf_DRAWER_)([A-Z0-9]+)(?=\s*\()/gi;
