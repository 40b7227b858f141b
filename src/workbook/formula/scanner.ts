import { ERROR_CODES } from "./error-codes";

/** The spreadsheet program nests functions 64 deep; parentheses and signs may go further. */
const DEEPEST = 256;

/** Walks over a formula's text; each pattern is sticky, so that it matches here or not at all. */
export class Scanner {
  position = 0;
  private depth = 0;

  constructor(readonly text: string) {}

  /** Matches the pattern at the present place and moves past it. */
  take(pattern: RegExp): RegExpExecArray | undefined {
    pattern.lastIndex = this.position;
    const match = pattern.exec(this.text);
    if (!match) return undefined;
    this.position += match[0].length;
    return match;
  }

  /** Looks at the present place without moving. */
  sees(pattern: RegExp): boolean {
    pattern.lastIndex = this.position;
    return pattern.test(this.text);
  }

  takeText(text: string): boolean {
    if (!this.text.startsWith(text, this.position)) return false;
    this.position += text.length;
    return true;
  }

  skipSpace(): boolean {
    return this.take(PATTERN.space) !== undefined;
  }

  expect(text: string): void {
    this.skipSpace();
    if (!this.takeText(text)) throw this.fault(`“${text}” is expected`);
  }

  fault(message: string): SyntaxError {
    return new SyntaxError(`${message} after “=${excerpt(this.text.slice(0, this.position))}”`);
  }

  /** Reads what stands inside something else. */
  inside<T>(read: () => T): T {
    if (++this.depth > DEEPEST) throw this.fault(`It is nested more than ${DEEPEST} deep`);
    const found = read();
    this.depth--;
    return found;
  }

  get atEnd(): boolean {
    return this.position >= this.text.length;
  }
}

/** Enough of a formula to know it by. */
export function excerpt(text: string): string {
  return text.length > 200 ? `${text.slice(0, 200)}…` : text;
}

const WORD = String.raw`[\p{L}\p{N}_.?\\]`;

/** The lexical shapes of a stored formula. */
export const PATTERN = {
  space: /[ \t\r\n]+/y,
  number: /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y,
  text: /"((?:[^"]|"")*)"/y,
  error: new RegExp(ERROR_CODES.map((code) => code.replace(/[/?]/g, "\\$&")).join("|"), "iy"),
  boolean: new RegExp(`(TRUE|FALSE)(?!${WORD}|\\()`, "iuy"),
  quotedSheet: /'((?:[^']|'')+)'!/y,
  plainSheet: /((?:\[\d+\])?[\p{L}\p{N}_.\\]*(?::[\p{L}\p{N}_.\\]+)?)!/uy,
  cell: new RegExp(String.raw`(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})(?!${WORD}|\(|!|\[)`, "uy"),
  columns: new RegExp(String.raw`(\$?)([A-Za-z]{1,3}):(\$?)([A-Za-z]{1,3})(?!${WORD}|\(|!|\[)`, "uy"),
  rows: new RegExp(String.raw`(\$?)([1-9]\d{0,6}):(\$?)([1-9]\d{0,6})(?!${WORD})`, "uy"),
  name: new RegExp(String.raw`[\p{L}_\\]${WORD}*`, "uy"),
  comparison: /<>|<=|>=|=|<|>/y,
} as const;
