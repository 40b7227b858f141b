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
export function numberText(value: number): string {
  if (value === 0) return "0";
  const [digits, exponentText] = value.toExponential(14).split("e") as [string, string];
  const exponent = Number(exponentText);
  const mantissa = digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
  const places = Math.max(0, mantissa.replace(/^-?\d\.?/, "").length - exponent);
  if (exponent < 21 && exponent >= -5 && places <= 20) return Number(value.toPrecision(15)).toFixed(places);
  if (exponent < 0 && places <= 10) return value.toFixed(places);
  return `${mantissa}E${exponent < 0 ? "-" : "+"}${String(Math.abs(exponent)).padStart(2, "0")}`;
}

/** Dates written with slashes or month names mean different days in different places, so they are not guessed. */
function textToNumber(text: string): number | CellError {
  const trimmed = text.trim();
  const match = /^([+-]?)\$?((?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d*)?|\.\d+)([eE][+-]?\d+)?(\s*%)?$/.exec(trimmed);
  if (match) {
    const size = Number(match[2]!.replaceAll(",", "") + (match[3] ?? ""));
    return (match[1] === "-" ? -size : size) / (match[4] ? 100 : 1);
  }
  const negative = /^\(([\d.,]+)\)$/.exec(trimmed);
  if (negative) {
    const size = textToNumber(negative[1]!);
    return typeof size === "number" ? -size : size;
  }
  const moment = momentOf(trimmed);
  if (moment !== undefined) return moment;
  if (/^\d{1,4}[/.-]\d{1,4}([/.-]\d{1,4})?\b|^\d{1,2}:\d{2}|^\d{1,2}[ -][A-Za-z]{3}|^\d+ \d+\/\d+$/.test(trimmed)) {
    throw new Unsupported(`reads the text “${trimmed}” as a number, which depends on the country`);
  }
  return fail("#VALUE!");
}

/** A date with the year first, a time of day, or both: those that mean the same everywhere. */
function momentOf(text: string): number | undefined {
  const match = /^(?:(\d{4})-(\d{1,2})-(\d{1,2}))?(?:(?:^|\s+|T)(\d{1,2}):(\d{2})(?::(\d{2}(?:\.\d+)?))?)?$/.exec(text);
  if (!match || text === "") return undefined;
  const [year, month, day, hour = 0, minute = 0, second = 0] = match
    .slice(1)
    .map((part) => (part === undefined ? undefined : Number(part)));
  if (minute > 59 || second >= 60 || hour > 23) return undefined;
  const time = (hour * 3600 + minute * 60 + second) / 86_400;
  if (year === undefined || month === undefined || day === undefined) return time;
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === day && year >= 1900;
  return exists ? date.getTime() / 86_400_000 + 25_569 + time : undefined;
}
