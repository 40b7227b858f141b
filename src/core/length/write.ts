import { abs, multiply, ratio, terms, type Rational } from "./rational";
import type { Unit } from "./unit";

/**
 * A length as an exact text with its mark, which `parseLength` reads back to the same length: `23 7/16 in`,
 * `-3/4 in`, `386.6 mm`, `168 1/3 mm`. Millimeters are decimal where that is exact within four places.
 * @example writeLength(ratio(375, 16), "in") // "23 7/16 in"
 */
export const writeLength = (length: Rational, unit: Unit): string => `${writeNumber(length, unit)} ${unit}`;

/**
 * A length as a person reads it: no denominator that no tape has. What is no 64th is shown to the nearest with `≈`; in
 * millimeters, what has no four decimals, to the nearest hundredth.
 * @example showLength(ratio(51, 10), "in") // "≈ 5 3/32 in"
 */
export const showLength = (length: Rational, unit: Unit): string => `${showNumber(length, unit)} ${unit}`;

/** The same without the mark. */
export function showNumber(length: Rational, unit: Unit): string {
  const exact = unit === "in" ? isTapeSize(length) : 10_000n % terms(length).denominator === 0n;
  if (exact) return writeNumber(length, unit);
  const steps = unit === "in" ? 64 : 100;
  const { numerator, denominator } = terms(multiply(abs(length), ratio(steps)));
  const nearest = ratio((2n * numerator + denominator) / (2n * denominator), steps);
  return `≈ ${terms(length).numerator < 0n ? "-" : ""}${writeNumber(nearest, unit)}`;
}

/** Whether a tape has the size: whole, or a fraction down to 64ths. */
export const isTapeSize = (length: Rational): boolean => 64n % terms(length).denominator === 0n;

/** An exact text without the mark. */
function writeNumber(length: Rational, unit: Unit): string {
  const { numerator, denominator } = terms(length);
  const sign = numerator < 0n ? "-" : "";
  const size = numerator < 0n ? -numerator : numerator;
  if (unit === "mm" && 10_000n % denominator === 0n) return sign + decimal(size, denominator);
  return sign + mixed(size, denominator);
}

function decimal(size: bigint, denominator: bigint): string {
  const places = (((size % denominator) * 10_000n) / denominator).toString().padStart(4, "0").replace(/0+$/, "");
  return `${size / denominator}${places && `.${places}`}`;
}

/** A mixed number in lowest terms: `0`, `3/4`, `5 1/2`. */
export function mixed(size: bigint, denominator: bigint): string {
  const [whole, rest] = [size / denominator, size % denominator];
  if (rest === 0n) return `${whole}`;
  return `${whole ? `${whole} ` : ""}${rest}/${denominator}`;
}
