import { momentOf } from "./moments";
import { CellError, fail, Unsupported, type Scalar } from "./values";

/** A value as the number that arithmetic takes it for. */
export function toNumber(value: Scalar): number | CellError {
  if (typeof value === "number") return value;
  if (value === null) return 0;
  if (typeof value === "boolean") return value ? 1 : 0;
  if (value instanceof CellError) return value;
  return textToNumber(value);
}

export function toBoolean(value: Scalar): boolean | CellError {
  if (typeof value === "boolean" || value instanceof CellError) return value;
  if (value === null) return false;
  if (typeof value === "number") return value !== 0;
  const upper = value.toUpperCase();
  return upper === "TRUE" ? true : upper === "FALSE" ? false : fail("#VALUE!");
}

export function toText(value: Scalar): string | CellError {
  if (typeof value === "string" || value instanceof CellError) return value;
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return numberText(value);
}

/** A number as joining texts shows it: fifteen digits, an exponent only where the number is very long. */
function numberText(value: number): string {
  if (value === 0) return "0";
  const [digits, exponentText] = value.toExponential(14).split("e") as [string, string];
  const exponent = Number(exponentText);
  const mantissa = digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
  const places = Math.max(0, mantissa.replace(/^-?\d\.?/, "").length - exponent);
  if (exponent < 21 && exponent >= -5 && places <= 20) return Number(value.toPrecision(15)).toFixed(places);
  if (exponent < 0 && places <= 10) return value.toFixed(places);
  return `${mantissa}E${exponent < 0 ? "-" : "+"}${String(Math.abs(exponent)).padStart(2, "0")}`;
}

/**
 * A text that reads as a number wherever the program runs, or as none. What means another number in another country
 * (dates with slashes or names of months, currencies, a comma for the point) is not guessed.
 */
export function textToNumber(text: string): number | CellError {
  const trimmed = text.replace(/^ +| +$/g, "");
  const number = plainNumber(trimmed) ?? fractionOf(trimmed);
  if (number !== undefined) return Number.isFinite(number) ? number + 0 : fail("#VALUE!");
  const moment = momentOf(trimmed);
  if (moment !== undefined && text === trimmed) return moment;
  // Spaces may stand around a number, not before a date.
  if (moment !== undefined && text.startsWith(" ") && Number.isInteger(moment)) return fail("#VALUE!");
  if (isNoNumberAnywhere(trimmed)) return fail("#VALUE!");
  throw new Unsupported(`reads the text “${trimmed}” as a number, which depends on the country`);
}

function plainNumber(text: string): number | undefined {
  const match = /^(\()?([+-]?)((?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d*)?|\.\d+)([eE][+-]?\d+)?( *%)?(\))?$/.exec(text);
  if (!match || (match[1] ? !match[6] || match[2] : match[6])) return undefined;
  const size = Number(match[3]!.replaceAll(",", "") + (match[4] ?? ""));
  return (match[1] || match[2] === "-" ? -size : size) / (match[5] ? 100 : 1);
}

function fractionOf(text: string): number | undefined {
  const match = /^([+-]?)(\d+) (\d{1,3})\/(\d{1,3})$/.exec(text);
  if (!match || Number(match[4]) === 0) return undefined;
  const size = Number(match[2]) + Number(match[3]) / Number(match[4]);
  return match[1] === "-" ? -size : size;
}

const MONTHS =
  "jan(uary)?|feb(ruary)?|mar(ch)?|apr(il)?|may|june?|july?|aug(ust)?|sept?(ember)?|oct(ober)?|nov(ember)?|dec(ember)?";
const MONTH = new RegExp(`^(${MONTHS})$`, "i");

/** No digit, a word that stands in no number, or a mark that does not. */
function isNoNumberAnywhere(text: string): boolean {
  if (!/\p{Nd}/u.test(text)) return true;
  if (/[^\p{Nd}\p{L}\p{Sc} .,:/()%+'’-]/u.test(text) || /[+-]{2}/.test(text)) return true;
  // Half days stand behind the hour, and an exponent between digits.
  const rest = text.replace(/(\d *)[ap]m?$/i, "$1").replace(/(\d)e(?=[+-]?\d)/i, "$1");
  return (rest.match(/\p{L}+/gu) ?? []).some((word) => !MONTH.test(word));
}
