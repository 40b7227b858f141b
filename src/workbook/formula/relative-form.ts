import { columnNumber, MAX_COLUMNS, MAX_ROWS } from "../address";

/**
 * A formula's text with its cells counted from the one that it was written in: formulas that are filled down have one
 * form, and so one tree, moved. It is told without reading the formula, which would take ten times as long. None is told
 * where whole columns or rows, tables, or letters of other alphabets stand in it.
 * @example relativeForm("A1*$B$1", 0, 2) === relativeForm("A2*$B$1", 1, 2) // true
 */
export function relativeForm(text: string, row: number, column: number): string | undefined {
  let form = "";
  let copied = 0;
  for (let at = 0; at < text.length;) {
    const kind = KINDS[text.charCodeAt(at)] ?? ODD;
    const start = at++;
    if (kind === ODD) return undefined;
    if (kind === QUOTE && (at = text.indexOf(text[start]!, at) + 1) === 0) return undefined;
    if (kind !== WORD) continue;
    while (KINDS[text.charCodeAt(at)] === WORD) at++;
    const word = text.slice(start, at);
    const next = text[at];
    const cell = next === "(" || next === "!" ? null : CELL.exec(word);
    if (cell) {
      const place = counted(cell, row, column);
      if (place === undefined) return undefined;
      form += text.slice(copied, start) + place;
      copied = at;
      // Rows, columns, sheets from one to another, and cells that nothing parts.
    } else if (word.includes("$") || next === ":" || text[start - 1] === ":") return undefined;
  }
  return form + text.slice(copied);
}

const CELL = /^(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})$/;

/** Undefined beyond the grid, where it is a name. */
function counted(cell: RegExpExecArray, row: number, column: number): string | undefined {
  const [across, down] = [columnNumber(cell[2]!), Number(cell[4]) - 1];
  if (across >= MAX_COLUMNS || down >= MAX_ROWS) return undefined;
  return `\u0001${cell[1] ? `$${across}` : across - column},${cell[3] ? `$${down}` : down - row}\u0001`;
}

const [ODD, WORD, QUOTE, SIGN] = [0, 1, 2, 3];

/** What a character is, by its code. What begins neither a word nor a sign is odd. */
const KINDS = Uint8Array.from({ length: 127 }, (_, code) => {
  const character = String.fromCharCode(code);
  if (/[$A-Za-z0-9_.]/.test(character)) return WORD;
  if (/["']/.test(character)) return QUOTE;
  return /[ \t\r\n!#%&()*+,\-/:;<=>@^{}]/.test(character) ? SIGN : ODD;
});
