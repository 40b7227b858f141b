import { equal, fromDouble, isTapeSize, toDouble, writeLength, type Rational, type Unit } from "../../core/length";
import { carried } from "./carried";
import type { CellResult, FormattedNumber } from "./cell-result";
import { formattedType, hostShowsFormats } from "./host";

/** Reduces 8/16 to 1/2, and shows every denominator of a tape exactly. */
const FRACTION_FORMAT = "# ??/??";
/** What no tape has: a fraction would show 5 2/51. */
const DECIMAL_FORMAT = "0.000";

/**
 * A length as it leaves a function: the nearest double. In inches, where the host can show it, with a format: a
 * fraction where a tape has it, else a decimal.
 */
export function lengthResult(length: Rational, unit: Unit): number | FormattedNumber {
  const value = toDouble(length);
  return unit === "in" ? formatted(value, isTapeSize(length) ? FRACTION_FORMAT : DECIMAL_FORMAT) : value;
}

/** A number with a format of its own, where the host can show it. */
export const formatted = (basicValue: number, numberFormat: string): number | FormattedNumber =>
  hostShowsFormats() ? { type: formattedType(), basicValue, numberFormat } : basicValue;

/**
 * A length that another function of ours is to read exactly: the number where it is read back as it was, else a text.
 */
export const exactResult = (length: Rational, unit: Unit): CellResult =>
  equal(fromDouble(toDouble(length)), length) ? lengthResult(length, unit) : writeLength(length, unit);

/**
 * An estimate as it leaves a function: to twelve digits, since engines differ in the last of their exponentials, and
 * equal input gives the equal answer everywhere.
 */
export const estimate = (value: number): number => Number(value.toPrecision(12));

/** A column of results, top to bottom. */
export const column = (results: readonly CellResult[]): CellResult[][] => carried(results.map((result) => [result]));

/**
 * A table, its header row first.
 * @throws Fault where the spreadsheet would lose it
 */
export const table = (header: readonly string[], rows: readonly CellResult[][]): CellResult[][] =>
  carried([[...header], ...rows]);
