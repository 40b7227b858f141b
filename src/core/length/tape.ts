import { abs, multiply, negate, ratio, terms, wholePart, type Rational } from "./rational";
import type { Unit } from "./unit";
import { mixed } from "./write";

export type Rounding = "nearest" | "down" | "up";

/** Denominators that tapes and rules are divided by. */
export const TAPE_DENOMINATORS = [2, 4, 8, 16, 32, 64] as const;
/** Decimals of a millimeter that a rule, a caliper or a saw's readout shows. */
export const TAPE_DECIMALS = [0, 1, 2] as const;

/**
 * A length as a tape reads it: `23 7/16"`, `3/4"`, `-1 1/2"`, `0"`; `595 mm`, `12.7 mm`.
 * Rounds the size without its sign: `nearest` takes halves away from zero, `down` goes toward zero, `up` away from it.
 * @param precision in inches a denominator of `TAPE_DENOMINATORS`; in mm the decimals, one of `TAPE_DECIMALS`
 * @example tape(ratio(375, 16), 16, "nearest", "in") // `23 7/16"`
 */
export function tape(length: Rational, precision: number, rounding: Rounding, unit: Unit): string {
  const divisions = unit === "in" ? precision : 10 ** precision;
  const marks = rounded(multiply(abs(length), ratio(divisions)), rounding);
  const sign = marks > 0n && terms(length).numerator < 0n ? "-" : "";
  if (unit === "mm") return `${sign}${decimals(marks, precision)} mm`;
  const { numerator, denominator } = terms(ratio(marks, divisions));
  return `${sign}${mixed(numerator, denominator)}"`;
}

function rounded(size: Rational, rounding: Rounding): bigint {
  if (rounding === "down") return wholePart(size);
  if (rounding === "up") return -wholePart(negate(size));
  const { numerator, denominator } = terms(size);
  return (2n * numerator + denominator) / (2n * denominator);
}

/** Trailing zeros stay: they say to which place the length was rounded. */
function decimals(marks: bigint, places: number): string {
  const digits = marks.toString().padStart(places + 1, "0");
  return places === 0 ? digits : `${digits.slice(0, -places)}.${digits.slice(-places)}`;
}
