/** The text of a cell function's file whose doc comment is complete; tests leave out or change single lines of it. */
export const completeSource = (name = "DOUBLE"): string => `
/** @customenum {string} */
enum Unit {
  /** Inches */
  inches = "in",
}

/**
 * Gives twice the width, as 1.5 in.
 * @customfunction
 * @group Boxes
 * @param {any} width The width
 * @param {Unit} [unit] in (default)
 * @returns {any} Twice the width
 * @throws #VALUE! where the width is none
 * @example =DRAWER.${name}(2) // => 4
 * @source arithmetic
 */
export function ${name}(width: any, unit?: Unit): any {
  return [2 * width, unit];
}
`;

/** The same with the line that contains \`part\` changed, or left out. */
export const changed = (part: string, line?: string): string =>
  completeSource()
    .split("\n")
    .flatMap((candidate) => (candidate.includes(part) ? (line === undefined ? [] : [line]) : [candidate]))
    .join("\n");
