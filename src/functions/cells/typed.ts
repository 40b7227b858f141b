import {
  abs,
  Fault,
  fromDouble,
  isNegative,
  isPositive,
  less,
  multiply,
  parseLength,
  ratio,
  unitsIn,
  type Mark,
  type Rational,
  type Sign,
  type Unit,
} from "../../core/length";
import { sameWord } from "./find-word";

/** What a person typed: a number, a text, or nothing; its number format, and the mark of its heading, where known. */
export interface Typed {
  value: unknown;
  format?: string;
  /** The unit that the heading above names, for numbers without a mark. */
  mark?: Mark;
}

/**
 * The largest length that a drawer has use for, in either unit. It lies below the serial numbers that dates have
 * had since 1982, so that a 7/16 that a spreadsheet turned into a date is caught.
 */
const LARGEST = 30_000;

/** Nothing typed: an empty cell, "", null or an omitted argument. */
export const isBlank = (value: unknown): boolean => value === undefined || value === null || value === "";

/** Nothing typed, or the number 0, which some hosts hand over for an empty cell: nothing tells it from a typed 0. */
export const isEmpty = (value: unknown): boolean => isBlank(value) || value === 0;

/**
 * A number 0 says nothing certain where a blank does not mean zero.
 * @param usual what a blank means there, in words; undefined where that is zero, or nothing
 * @param mark what a zero is written with, where it is no length
 * @throws Fault `zero.doubtful`
 */
export function refuseDoubtfulZero(argument: string, usual: string | undefined, mark?: string): void {
  if (usual !== undefined) throw new Fault("zero.doubtful", { argument, usual, mark });
}

/** How a count's zero is written: it has no unit, and a text is no empty cell. */
export const COUNTED = "as text";

/**
 * What was typed as an exact length in `unit`.
 * @throws Fault where it is no length, a date, larger than `largest`, or on the wrong side of 0
 * @example readLength({ value: "595 mm" }, "in") // 23 54/127
 */
export function readLength(typed: Typed, unit: Unit, sign: Sign = "any", largest = LARGEST): Rational {
  const read = parse(typed, unit);
  if (less(ratio(largest), abs(read))) throw new Fault("length.tooLarge", { received: typed.value, largest });
  if (sign === "positive" && !isPositive(read)) throw new Fault("length.notPositive", { received: read });
  if (sign === "not negative" && isNegative(read)) throw new Fault("length.negative", { received: read });
  return read;
}

/** The same; `none` is zero. */
export const readLengthOrNone = (typed: Typed, unit: Unit, sign?: Sign, largest?: number): Rational =>
  readLength(sameWord(typed.value, "none") ? { value: "0" } : typed, unit, sign, largest);

function parse({ value, format, mark }: Typed, unit: Unit): Rational {
  if (typeof value === "string") return parseLength(value, unit, mark);
  if (typeof value !== "number") throw new Fault("length.wrongType", { received: value });
  if (!Number.isFinite(value)) throw new Fault("length.notFinite", { received: value });
  if (format && isDateFormat(format)) throw new Fault("argument.date", {});
  // Beyond the largest length the fraction does not matter, and an enormous one only costs time.
  const read = Math.abs(value) > 1e12 ? ratio(BigInt(Math.trunc(value))) : fromDouble(value);
  return mark ? multiply(read, unitsIn(mark, unit)) : read;
}

/**
 * Whether a plain number is what a spreadsheet makes of a typed 7/16: the serial number of a day of this century.
 * @example mayBeDate(46219) // true, 16 July 2026
 */
export const mayBeDate = (value: unknown): boolean =>
  typeof value === "number" && Number.isInteger(value) && value >= FIRST_DAY && value <= LAST_DAY;

/** 1 January 2000, counted from 1904, and 31 December 2099, counted from 1900. */
const FIRST_DAY = 35_064;
const LAST_DAY = 73_050;

/** A format shows a date or time where it has a day, a year or an hour outside of literals (m alone is no proof). */
export const isDateFormat = (format: string): boolean =>
  /\[[hms]+\]/i.test(format) ||
  /[dyh]/i.test(format.replace(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "").replace(/General|Standard/gi, ""));
