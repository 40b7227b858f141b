import { terms, type Rational } from "./rational";
import type { Unit } from "./unit";

/**
 * A length as an exact text with its mark, which `parseLength` reads back to the same length: `23 7/16 in`,
 * `-3/4 in`, `386.6 mm`, `168 1/3 mm`. Millimeters are decimal where that is exact within four places.
 * @example writeLength(ratio(375, 16), "in") // "23 7/16 in"
 */
export const writeLength = (length: Rational, unit: Unit): string => `${writeNumber(length, unit)} ${unit}`;

/** The same without the mark. */
export function writeNumber(length: Rational, unit: Unit): string {
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
