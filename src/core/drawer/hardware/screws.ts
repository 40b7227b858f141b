import { add, compare, divide, less, multiply, negate, ratio, roundFigure, subtract, wholePart } from "../../length";
import type { Rational, Unit } from "../../length";
import type { Standards } from "../standards";

/** The longest screw on sale that is no longer than `most`. */
export const longestScrew = (s: Standards, most: Rational): Rational | undefined =>
  s["screw lengths"]
    .filter((length) => !less(most, length))
    .sort(compare)
    .pop();

/** The shortest screw on sale that is at least `least`. */
export const shortestScrew = (s: Standards, least: Rational): Rational | undefined =>
  s["screw lengths"].filter((length) => !less(length, least)).sort(compare)[0];

/** The asked length, or what a rule gives. */
export const lengthOrRule = (asked: Rational | "auto", rule: () => Rational | undefined): Rational | undefined =>
  asked === "auto" ? rule() : asked;

/** The longest screw through one piece into another that stays inside both; none where it would not get through. */
export function screwThrough(s: Standards, through: Rational, into: Rational, unit: Unit): Rational | undefined {
  const longest = longestScrew(s, subtract(add(through, into), skin(unit)));
  return longest && less(through, longest) ? longest : undefined;
}

/** What a screw's point leaves standing. @source common practice */
export const skin = (unit: Unit): Rational => (unit === "in" ? ratio(1, 8) : ratio(3));

/**
 * Pocket screws by stock, which may measure a little less than its name: one that is longer comes out of it.
 * @source common practice; 11/16 in stock takes that of 5/8 in
 */
const POCKET: Record<Unit, readonly (readonly [stock: Rational, screw: Rational])[]> = {
  in: [
    [ratio(3, 2), ratio(5, 2)],
    [ratio(5, 4), ratio(2)],
    [ratio(7, 8), ratio(3, 2)],
    [ratio(3, 4), ratio(5, 4)],
    [ratio(1, 2), ratio(1)],
  ],
  mm: [
    [ratio(38), ratio(64)],
    [ratio(32), ratio(50)],
    [ratio(22), ratio(38)],
    [ratio(18), ratio(32)],
    [ratio(12), ratio(25)],
  ],
};

/** None for stock too thin to hold a pocket screw. */
export function pocketScrew(stock: Rational, unit: Unit): Rational | undefined {
  const measured = add(stock, roundFigure("3/64", "1", unit));
  return POCKET[unit].find(([nominal]) => !less(measured, nominal))?.[1];
}

/** So many that none is further from the next than `spacing`, but at least `least`. */
export const everyFew = (length: Rational, spacing: Rational, least: number): number =>
  Math.max(least, Number(-wholePart(negate(divide(length, spacing)))));

export const scaled = (length: Rational, numerator: number, denominator = 1): Rational =>
  multiply(length, ratio(numerator, denominator));
