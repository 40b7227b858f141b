import { isErrorCode } from "../formula/errorCodes";
import { CellError, type Scalar } from "../engine/values";
import type { CellText } from "./sheetText";
import { decodeEscapes, encodeEscapes, escapeText } from "./xml";

/** The value that a cell of the file holds. */
export function readValue(cell: CellText, sharedStrings: readonly string[]): Scalar {
  const { content, type } = cell;
  if (content === undefined) return null;
  switch (type) {
    case "s":
      return sharedStrings[Number(content)] ?? "";
    case "str":
      return decodeEscapes(content);
    case "inlineStr":
      return content;
    case "b":
      return content.trim() === "1" || content.trim() === "true";
    case "e":
      return new CellError(isErrorCode(content.trim()) ? (content.trim() as CellError["code"]) : "#VALUE!");
    case "d":
      return (Date.parse(/Z|[+-]\d\d:\d\d$/.test(content) ? content : `${content}Z`) || 0) / 86_400_000 + 25_569;
    default:
      return content.trim() === "" ? null : Number(content);
  }
}

/** How a value is written: its type mark (none for a number) and its text, ready for the file. */
export function writtenValue(value: Exclude<Scalar, null>): { type: string | null; text: string } {
  if (typeof value === "number") return { type: null, text: String(value).replace("e+", "E+").replace("e", "E") };
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
