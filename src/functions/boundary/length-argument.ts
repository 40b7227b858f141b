import {
  Fault,
  fromDouble,
  isNegative,
  isPositive,
  parseLength,
  ratio,
  less,
  abs,
  type Rational,
  type Unit,
} from "../../core/length";
import { named, scalar, type Argument } from "./argument";
import { isBlank, type Cell } from "./cell";

/** Bounds of a length: `positive` more than 0, `not negative` 0 or more, `any` either side of 0. */
export type Sign = "positive" | "not negative" | "any";

/**
 * The largest length that a drawer has use for, in either unit. It lies below the serial numbers that dates have
 * had since 1982, so that a 7/16 that the host turned into a date is caught.
 */
export const LARGEST = 30_000;

/** A length that must be given. */
export const length = (name: string, sign: Sign = "positive"): Argument<Rational> =>
  scalar(name, (cell, unit) => {
    if (isBlank(cell.value)) throw new Fault("argument.blank", { wanted: "length" });
    return checked(readLength(cell, unit), sign);
  });

/** A length with a default, given for each unit. */
export const optionalLength = (
  name: string,
  fallback: (unit: Unit) => Rational,
  sign: Sign = "not negative",
): Argument<Rational> =>
  scalar(name, (cell, unit) => (isBlank(cell.value) ? fallback(unit) : checked(readLength(cell, unit), sign)));

/** A length that only some words of another argument ask for. */
export const lengthIfGiven = (name: string, sign: Sign = "positive"): Argument<Rational | undefined> =>
  scalar(name, (cell, unit) => (isBlank(cell.value) ? undefined : checked(readLength(cell, unit), sign)));

/** A length of any size and sign, for reading and writing alone. */
export const anyLength = (name: string): Argument<Rational> =>
  scalar(name, (cell, unit) => {
    if (isBlank(cell.value)) throw new Fault("argument.blank", { wanted: "length" });
    return readLength(cell, unit, 1e9);
  });

/**
 * A cell as an exact length in `unit`.
 * @throws Fault where it is no length, a date, or larger than any drawer has use for
 */
export function readLength(cell: Cell, unit: Unit, largest = LARGEST): Rational {
  const read = parse(cell, unit);
  if (less(ratio(largest), abs(read))) throw new Fault("length.tooLarge", { received: cell.value, largest });
  return read;
}

/** @throws Fault where the length is on the wrong side of 0 */
export function checked(read: Rational, sign: Sign): Rational {
  if (sign === "positive" && !isPositive(read)) throw new Fault("length.notPositive", { received: read });
  if (sign === "not negative" && isNegative(read)) throw new Fault("length.negative", { received: read });
  return read;
}

function parse({ value, format }: Cell, unit: Unit): Rational {
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new Fault("length.notFinite", { received: value });
    if (format && isDateFormat(format)) throw new Fault("argument.date");
    // Beyond the largest length the fraction does not matter, and an enormous one only costs time.
    return Math.abs(value) > 1e12 ? ratio(BigInt(Math.trunc(value))) : fromDouble(value);
  }
  if (typeof value === "string") return parseLength(value, unit);
  throw new Fault("length.wrongType", { received: value });
}

/** A format shows a date or time where it has a day, a year or an hour outside of literals (m alone is no proof). */
export const isDateFormat = (format: string): boolean =>
  /\[[hms]+\]/i.test(format) ||
  /[dyh]/i.test(format.replace(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "").replace(/General|Standard/gi, ""));

/** For lists: one item, its place named. */
export const readItem = (argument: string, place: number, cell: Cell, unit: Unit): Rational =>
  named(`${argument}, item ${place}`, () => checked(readLength(cell, unit), "positive"));
