import { format as formatted, parseDate, parseTime } from "numfmt";
import { isFormula, type Content } from "../edit/content";
import { fraction, fractionText } from "./fraction-text";

/** What a text is that comes into a cell, whichever way it came: typed, pasted, or put there by a button. */
export interface Entry {
  content: Content;
  /** The number format that the way of writing brings with it, for a cell that has none of its own. */
  format?: string;
}

/** The format of what is typed as a fraction, and of lengths in inches. */
export const FRACTION = "# ??/??";

/** How the cell wants it that a text goes into. */
export interface EntryCell {
  /** Dates count from 1904 in this workbook. */
  date1904?: boolean;
  /** The cell's format takes everything for text. */
  isText?: boolean;
}

/**
 * Reads a text as a spreadsheet reads what is typed, with one difference: what may be a fraction, a range or a count is
 * a length here and never a date, and a date names its year. What reads as nothing else is a text, as it stands.
 * @example readEntry("24 1/16") // { content: 24.0625, format: "# ??/??" }
 */
export function readEntry(text: string, { date1904 = false, isText = false }: EntryCell = {}): Entry {
  if (text === "") return { content: null };
  if (isText) return { content: text };
  if (text.startsWith("'")) return { content: text.slice(1) || null };
  const bare = text.trim();
  if (/^=./s.test(bare)) return { content: { formula: bare } };
  const size = fraction(bare);
  if (size !== undefined) return { content: size, format: FRACTION };
  if (/^(true|false)$/i.test(bare)) return { content: bare.toLowerCase() === "true" };
  return number(bare) ?? date(bare, date1904) ?? { content: text };
}

/**
 * What is shown of a content for it to be changed. Read as it stands, it gives the same content.
 * @param format the number format that the cell is shown with
 */
export function entryText(content: Content, format: string | undefined, cell: EntryCell = {}): string {
  if (content === null) return "";
  if (isFormula(content)) return content.formula;
  if (typeof content === "boolean") return content ? "TRUE" : "FALSE";
  const same = (text: string | undefined): text is string =>
    text !== undefined && readEntry(text, cell).content === content;
  if (typeof content === "string") return same(content) ? content : `'${content}`;
  if (format !== undefined) {
    const written = /\?\//.test(format) ? fractionText(content) : shown(content, format, cell);
    if (same(written)) return written;
  }
  return String(content);
}

/** As the format writes it; a percentage with all its digits. */
function shown(value: number, format: string, { date1904 }: EntryCell): string | undefined {
  if (format.includes("%")) return `${Number(`${value}e2`)}%`;
  try {
    return formatted(format, value + (date1904 ? DAYS_TO_1904 : 0)).trim();
  } catch {
    return undefined;
  }
}

/** Numbers as they are written with a point, commas between thousands, a percent sign or a sign of money. */
function number(text: string): Entry | undefined {
  const [, sign = "", money, digits, exponent, percent] = NUMBER.exec(text) ?? [];
  if (digits === undefined || (money && (exponent || percent))) return undefined;
  const plain = digits.replaceAll(",", "");
  const content = Number(`${sign}${plain}${percent ? "e-2" : (exponent ?? "")}`);
  if (!Number.isFinite(content) || (!exponent && !percent && losesDigits(plain, content))) return undefined;
  const format = formatOf(digits, money, exponent, percent);
  return format === undefined ? { content } : { content, format };
}

const NUMBER = /^([-+]?)\s*([$£€¥])?\s*((?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d*)?|\.\d+)(?:(e[-+]?\d+)|(\s*%))?$/i;

/** A long number, as of an order or a part, stays as it was written where a double cannot hold it. */
function losesDigits(plain: string, content: number): boolean {
  if (Number.isSafeInteger(content) || plain.includes(".")) return false;
  const size = Math.abs(content);
  return String(size) !== plain && BigInt(size) !== BigInt(plain);
}

function formatOf(digits: string, money?: string, exponent?: string, percent?: string): string | undefined {
  const hasDecimals = /\.\d/.test(digits);
  if (exponent) return "0.00E+00";
  if (percent) return hasDecimals ? "0.00%" : "0%";
  if (money || digits.includes(",")) return `${money ? `"${money}"` : ""}#,##0${hasDecimals ? ".00" : ""}`;
  return undefined;
}

function date(text: string, date1904: boolean): Entry | undefined {
  if (TIME.test(text)) {
    const time = parseTime(text);
    return time ? { content: Number(time.v), format: time.z ?? "h:mm" } : undefined;
  }
  const found = DATE.test(text) ? parseDate(text) : null;
  const days = Number(found?.v) - (date1904 ? DAYS_TO_1904 : 0);
  return found && days >= 0 ? { content: days, format: found.z ?? "yyyy-mm-dd" } : undefined;
}

/** Days between the beginnings of the two ways of counting them (ECMA-376, 18.17.4.1). */
export const DAYS_TO_1904 = 1462;
const CLOCK = String.raw`\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]m)?`;
const TIME = new RegExp(`^${CLOCK}$`, "i");
const DAY = String.raw`\d{4}-\d{1,2}-\d{1,2}|\d{1,2}/\d{1,2}/(?:\d{4}|\d{2})|\d{1,2}[ -][a-z]{3,9}[ -]\d{4}|[a-z]{3,9} \d{1,2}, ?\d{4}`;
const DATE = new RegExp(String.raw`^(?:${DAY})(?:\s+${CLOCK})?$`, "i");
