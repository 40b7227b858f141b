import { columnNumber, MAX_COLUMNS, MAX_ROWS } from "../address";
import { closingBracket } from "./brackets";
import { ERROR_CODES } from "./error-codes";

/**
 * What a piece of a formula is: `sheet` leads to a sheet, its mark included, `call` is a name before a parenthesis,
 * `brackets` what is asked of a table, `unknown` what begins nothing, or is not closed.
 */
export type TokenKind = (typeof SHAPES)[number][0] | "brackets" | "operator";

/** A piece of a formula, and its place in it. */
export interface Token {
  kind: TokenKind;
  text: string;
  start: number;
  end: number;
}

/**
 * The pieces of a formula, stored or typed, without its equals sign; together they are the whole text. What cannot be
 * read is a piece as well, so that what stands beside it can still be changed.
 * @example tokens("'What if'!A1*2").map(({ kind }) => kind) // ["sheet", "cell", "operator", "number"]
 */
export function tokens(formula: string): Token[] {
  const found: Token[] = [];
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at, found[found.length - 1]?.kind);
    found.push(token);
    at = token.end;
  }
  return found;
}

const WORD = String.raw`[\p{L}\p{N}_.?\\]`;
const COLUMN = String.raw`\$?[A-Za-z]{1,3}`;
const ROW = String.raw`\$?[1-9]\d{0,6}`;
const ALONE = String.raw`(?!${WORD}|[(!\[])`;

/** In the order in which they are tried. */
const SHAPES = [
  ["space", String.raw`[ \t\r\n]+`],
  ["text", `"(?:[^"]|"")*"`],
  ["error", ERROR_CODES.map((code) => code.replace(/[/?]/g, "\\$&")).join("|")],
  ["sheet", String.raw`'(?:[^']|'')+'!|\[\d+\][\p{L}\p{N}_.\\:]*!`],
  // Not every program puts names that read as cells between quotes: those of two sheets cannot be a cell and a sheet.
  ["sheet", String.raw`[A-Za-z]{1,3}\d{1,7}:[A-Za-z]{1,3}\d{1,7}!`],
  // To the end, for to try at each mark anew would take the square of a long text's time.
  ["unknown", String.raw`"(?:[^"]|"")*$|'(?:[^']|'')*(?:'|$)`],
  ["columns", `${COLUMN}:${COLUMN}${ALONE}`],
  ["rows", `${ROW}:${ROW}(?!${WORD})`],
  ["cell", `${COLUMN}${ROW}${ALONE}`],
  ["sheet", String.raw`(?:[\p{L}\p{N}_.\\]+(?::[\p{L}\p{N}_.\\]+)?)?!`],
  ["number", String.raw`(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`],
  ["call", String.raw`[\p{L}_\\]${WORD}*(?=\()`],
  ["name", String.raw`[\p{L}_\\]${WORD}*`],
] as const;

const ALL = new RegExp(SHAPES.map(([, shape]) => `(${shape})`).join("|"), "iuy");

/** The same without references, for a word that would lie beyond the grid. */
const WORDS = new RegExp(
  SHAPES.map(([kind, shape]) => (/^(?:columns|rows|cell)$/.test(kind) ? "((?!))" : `(${shape})`)).join("|"),
  "iuy",
);

/** Before all shapes, of which only errors begin as one of them. */
const OPERATOR = /<>|<=|>=|[-+*/^&=<>%@:,;(){}]|#(?![A-Z])/iy;
const REST_OF_WORD = new RegExp(`${WORD}+`, "uy");

function tokenAt(formula: string, start: number, before: TokenKind | undefined): Token {
  const token = (kind: TokenKind, end: number): Token => ({ kind, text: formula.slice(start, end), start, end });
  const operator = lengthOf(OPERATOR, formula, start);
  if (operator > 0) return token("operator", start + operator);
  // A number with letters at it is no number and a name.
  const rest = before === "number" ? lengthOf(REST_OF_WORD, formula, start) : 0;
  if (rest > 0) return token("unknown", start + rest);
  const shape = shapeAt(ALL, formula, start);
  if (shape) {
    const found = token(shape, ALL.lastIndex);
    if (isOnGrid(found.kind, found.text)) return found;
    const word = shapeAt(WORDS, formula, start);
    // A mark that fixes a column begins no word.
    return word ? token(word, WORDS.lastIndex) : token("unknown", start + 1);
  }
  if (formula[start] === "[") {
    const end = closingBracket(formula, start);
    return end === undefined ? token("unknown", formula.length) : token("brackets", end);
  }
  return formula[start] === "#" ? token("operator", start + 1) : token("unknown", start + 1);
}

function shapeAt(shapes: RegExp, formula: string, at: number): TokenKind | undefined {
  shapes.lastIndex = at;
  const match = shapes.exec(formula);
  if (!match) return undefined;
  let group = 1;
  while (match[group] === undefined) group++;
  return SHAPES[group - 1]![0];
}

function lengthOf(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0].length ?? 0;
}

function isOnGrid(kind: TokenKind, text: string): boolean {
  if (kind !== "cell" && kind !== "columns" && kind !== "rows") return true;
  // Short of the bounds without being read.
  if (!/[A-Za-z]{3}|\d{7}/.test(text)) return true;
  return (
    (text.match(/[A-Za-z]+/g) ?? []).every((letters) => columnNumber(letters) < MAX_COLUMNS) &&
    (text.match(/\d+/g) ?? []).every((row) => Number(row) <= MAX_ROWS)
  );
}
