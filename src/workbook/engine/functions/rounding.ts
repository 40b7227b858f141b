import { finite } from "../operators";
import type { Ordinary } from "../kinds";
import { fail, type Scalar } from "../values";
import { unproven } from "../proven";
import { shift, tidy } from "./digits";
import { ofNumbers, ofStrictNumbers } from "./reading";

/** Rounding to places, to multiples and to whole numbers. */
export const rounding: Record<string, Ordinary> = {
  ROUND: ofNumbers((value, places = 0) => finite(rounded(value, places))),
  ROUNDUP: ofNumbers((value, places = 0) => finite(roundTo(value, places, Math.ceil))),
  ROUNDDOWN: ofNumbers((value, places = 0) => finite(roundTo(value, places, Math.floor))),
  TRUNC: ofNumbers((value, places = 0) => finite(roundTo(value, places, Math.floor))),
  INT: ofNumbers((value) => finite(Math.floor(value))),
  EVEN: ofNumbers((value) => finite(Math.sign(value) * Math.ceil(tidy(Math.abs(value)) / 2) * 2)),
  ODD: ofNumbers((value) => finite((value < 0 ? -1 : 1) * odd(tidy(Math.abs(value))))),

  MROUND: ofStrictNumbers((value, multiple) => {
    if (multiple === 0) return 0;
    if (value * multiple < 0) return fail("#NUM!");
    return finite(tidy(multiple * Math.round(value / multiple!)));
  }),
  QUOTIENT: ofStrictNumbers((value, divisor) => {
    if (divisor === 0) return fail("#DIV/0!");
    const whole = Math.trunc(value! / divisor!);
    if (whole !== Math.trunc(tidy(value! / divisor!)))
      throw unproven("QUOTIENT", "a result that close to a whole number");
    return finite(whole);
  }),

  FLOOR: ofNumbers((value, step = 0) => {
    if (value === 0) return 0;
    if (step === 0) return fail("#DIV/0!");
    return value > 0 && step < 0 ? fail("#NUM!") : multiple(value, step, Math.floor);
  }),
  CEILING: ofNumbers((value, step = 0) => (value > 0 && step < 0 ? fail("#NUM!") : multiple(value, step, Math.ceil))),
  "FLOOR.MATH": ofNumbers((value, step = 1, mode = 0) => toward(value, step, value < 0 && mode !== 0, Math.floor)),
  "CEILING.MATH": ofNumbers((value, step = 1, mode = 0) => toward(value, step, value < 0 && mode !== 0, Math.ceil)),
  "FLOOR.PRECISE": ofNumbers((value, step = 1) => toward(value, step, false, Math.floor)),
  "CEILING.PRECISE": ofNumbers((value, step = 1) => toward(value, step, false, Math.ceil)),
  "ISO.CEILING": ofNumbers((value, step = 1) => toward(value, step, false, Math.ceil)),
};

/** Steps of any sign count alike; `mirrored` rounds a number below zero as it would the one above. */
function toward(value: number, step: number, mirrored: boolean, round: (steps: number) => number): Scalar {
  const size = Math.abs(step);
  return mirrored ? multiple(value, -size, round) : multiple(value, size, round);
}

function multiple(value: number, step: number, round: (steps: number) => number): Scalar {
  return step === 0 || value === 0 ? 0 : finite(tidy(step * round(tidy(value / step))));
}

/** As ROUND has it. */
export function rounded(value: number, places: number): number {
  return roundTo(value, places, (size) => Math.floor(size + 0.5));
}

function odd(size: number): number {
  return Math.ceil((size - 1) / 2) * 2 + 1;
}

/** Rounds the size as it reads with fifteen digits: 2.675 to two places is 2.68, although the double is a little less. */
function roundTo(value: number, places: number, round: (size: number) => number): number {
  const digits = Math.trunc(places);
  const size = Math.abs(value);
  // No double has a digit so far behind the point, or so far before it.
  if (value === 0 || digits > 300 || (digits > 0 && size >= 1e15)) return value;
  const found = roundNear(size, digits, round);
  if (found !== undefined) return Math.sign(value) * found + 0;
  return Math.sign(value) * shift(round(tidy(shift(tidy(size), digits))), -digits) + 0;
}

/**
 * The same in a tenth of the time, where the fifteenth digit does not decide: whatever the digits say is as near to the
 * product as `NEAR`, or it is the half or whole that the product itself is. Of two numbers that are exact, the quotient
 * or product is the double nearest to the decimal.
 */
function roundNear(size: number, digits: number, round: (size: number) => number): number | undefined {
  const power = POWERS[Math.abs(digits)];
  if (power === undefined) return undefined;
  const moved = digits < 0 ? size / power : size * power;
  if (moved >= MOST_MOVED) return undefined;
  const half = Math.round(moved * 2) / 2;
  const isHalf = Math.abs(moved - half) <= moved * Number.EPSILON;
  const steps = round(isHalf ? half : moved * (1 - NEAR));
  if (!isHalf && steps !== round(moved * (1 + NEAR))) return undefined;
  return digits < 0 ? steps * power : steps / power;
}

/** Powers of ten that a double holds exactly. */
const POWERS = Array.from({ length: 23 }, (_, exponent) => Number(`1e${exponent}`));
/** A half of a larger number would have more than fifteen digits. */
const MOST_MOVED = 1e14;
/** Fifteen digits are off by half a unit of the last one at most, twice here. */
const NEAR = 2e-14;
