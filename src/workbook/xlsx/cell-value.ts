import { isErrorCode } from "../formula/error-codes";
import { LONGEST_TEXT } from "../engine/budget";
import { CellError, type Scalar } from "../engine/values";
import type { CellText } from "./sheet-text";
import { decodeEscapes, encodeEscapes, escapeText } from "./xml";

/**
 * The value that a cell of the file holds. What is no value of its kind (`abc` or `1e999` for a number, 7 for a truth
 * value, a text that no cell holds) is an error value, so that it gets into no sum; the file keeps what it says.
 */
export function readValue(cell: CellText, sharedStrings: readonly string[]): Scalar {
  const { content, type } = cell;
  if (content === undefined) return null;
  switch (type) {
    case "s":
      return textValue(sharedStrings[Number(content)]);
    case "str":
      return textValue(decodeEscapes(content));
    case "inlineStr":
      return textValue(content);
    case "b":
      return TRUTHS[content.trim()] ?? new CellError("#VALUE!");
    case "e":
      return new CellError(isErrorCode(content.trim()) ? (content.trim() as CellError["code"]) : "#VALUE!");
    case "d":
      return numberValue(Date.parse(/Z|[+-]\d\d:\d\d$/.test(content) ? content : `${content}Z`) / 86_400_000 + 25_569);
    default:
      return content.trim() === "" ? null : numberValue(NUMBER.test(content) ? Number(content) : NaN);
  }
}

const TRUTHS: Record<string, boolean | undefined> = { 1: true, true: true, 0: false, false: false };

/** Decimal digits alone: the language would read `0x10` and `Infinity` too. */
const NUMBER = /^\s*[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?\s*$/;

function numberValue(number: number): Scalar {
  return Number.isFinite(number) ? number + 0 : new CellError("#NUM!");
}

function textValue(text: string | undefined): Scalar {
  return text === undefined || text.length > LONGEST_TEXT ? new CellError("#VALUE!") : text;
}

/** How a value is written: its type mark (none for a number) and its text, ready for the file. */
export function writtenValue(value: Exclude<Scalar, null>): { type: string | null; text: string } {
  if (typeof value === "number") {
    const text = String(value);
    return { type: null, text: text.includes("e") ? text.replace("e+", "E+").replace("e", "E") : text };
  }
  if (typeof value === "boolean") return { type: "b", text: value ? "1" : "0" };
  if (typeof value === "string") return { type: "str", text: escapeText(encodeEscapes(value)) };
  return { type: "e", text: value.code };
}

/** Errors that the spreadsheet program stores as #VALUE! and tells apart in a part of its own. */
const RICH_ERRORS = new Set(["#SPILL!", "#CALC!", "#FIELD!", "#BLOCKED!", "#CONNECT!", "#UNKNOWN!", "#BUSY!"]);

/** Whether the file already says what was worked out. */
export function sameValue(cell: CellText, stored: Scalar, value: Scalar): boolean {
  if (stored instanceof CellError && value instanceof CellError) {
    return (
      stored.code === value.code || (cell.hasRichValue && stored.code === "#VALUE!" && RICH_ERRORS.has(value.code))
    );
  }
  return stored === value;
}
