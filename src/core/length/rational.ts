import Fraction from "fraction.js";

declare const exact: unique symbol;

/**
 * An exact rational number: a length in the unit of the call, or a plain factor. Never changed in place. What is beneath
 * it is known in this file alone.
 */
export interface Rational {
  readonly [exact]: true;
}

const under = (a: Rational): Fraction => a as unknown as Fraction;
const over = (a: Fraction): Rational => a as unknown as Rational;

/**
 * The exact quotient of two whole numbers.
 * @example ratio(7, 16) // seven sixteenths
 */
export const ratio = (numerator: number | bigint, denominator: number | bigint = 1): Rational =>
  over(new Fraction(BigInt(numerator), BigInt(denominator)));

export const isRational = (value: unknown): value is Rational => value instanceof Fraction;

export const ZERO = ratio(0);

export const add = (a: Rational, b: Rational): Rational => over(under(a).add(under(b)));
export const subtract = (a: Rational, b: Rational): Rational => over(under(a).sub(under(b)));
export const multiply = (a: Rational, b: Rational): Rational => over(under(a).mul(under(b)));
export const divide = (a: Rational, b: Rational): Rational => over(under(a).div(under(b)));
export const negate = (a: Rational): Rational => over(under(a).neg());
export const abs = (a: Rational): Rational => over(under(a).abs());

/** `a` taken a whole number of times. */
export const times = (count: number, a: Rational): Rational => over(under(a).mul(BigInt(count)));
/** One of `count` equal parts of `a`. */
export const share = (a: Rational, count: number): Rational => over(under(a).div(BigInt(count)));

export const half = (a: Rational): Rational => share(a, 2);

export const total = (lengths: readonly Rational[]): Rational => lengths.reduce(add, ZERO);

/** Below 0, 0 or above 0, as `a` is less than, equal to or greater than `b`. */
export const compare = (a: Rational, b: Rational): number => under(a).compare(under(b));
export const less = (a: Rational, b: Rational): boolean => compare(a, b) < 0;
export const lesserOf = (a: Rational, b: Rational): Rational => (less(b, a) ? b : a);
export const greaterOf = (a: Rational, b: Rational): Rational => (less(a, b) ? b : a);
export const equal = (a: Rational, b: Rational): boolean => {
  const [one, other] = [under(a), under(b)];
  return one.n === other.n && one.d === other.d && one.s === other.s;
};
export const isPositive = (a: Rational): boolean => under(a).n !== 0n && under(a).s > 0n;
export const isNegative = (a: Rational): boolean => under(a).n !== 0n && under(a).s < 0n;
export const isZero = (a: Rational): boolean => under(a).n === 0n;
export const isWhole = (a: Rational): boolean => under(a).d === 1n;

/** Numerator with its sign, and the (positive) denominator, in lowest terms. */
export const terms = (a: Rational): { numerator: bigint; denominator: bigint } => ({
  numerator: under(a).s * under(a).n,
  denominator: under(a).d,
});

/** The greatest whole number that is not above `a`. */
export const wholePart = (a: Rational): bigint => terms(over(under(a).floor())).numerator;

/** The greatest multiple of `step` that is not above `a`; `a` itself where the step is 0. */
export const roundDown = (a: Rational, step: Rational): Rational =>
  isZero(step) ? a : multiply(step, ratio(wholePart(divide(a, step))));

/** The least multiple of `step` that is not below `a`; `a` itself where the step is 0. */
export const roundUp = (a: Rational, step: Rational): Rational => negate(roundDown(negate(a), step));

/** A text that equal numbers alone share, for grouping. */
export const keyOf = (a: Rational): string => under(a).toFraction();

/** The least whole number that makes all of these whole. */
export const commonDenominator = (values: readonly Rational[]): bigint =>
  terms(over(values.reduce((common, value) => common.lcm(terms(value).denominator), new Fraction(1)))).numerator;
