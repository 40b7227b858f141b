import Fraction from "fraction.js";

/** An exact rational number: a length in the unit of the call, or a plain factor. Never changed in place. */
export type Rational = Fraction;

/**
 * The exact quotient of two whole numbers.
 * @example ratio(7, 16) // seven sixteenths
 */
export const ratio = (numerator: number | bigint, denominator: number | bigint = 1): Rational =>
  new Fraction(BigInt(numerator), BigInt(denominator));

export const isRational = (value: unknown): value is Rational => value instanceof Fraction;

export const ZERO = ratio(0);

export const add = (a: Rational, b: Rational): Rational => a.add(b);
export const subtract = (a: Rational, b: Rational): Rational => a.sub(b);
export const multiply = (a: Rational, b: Rational): Rational => a.mul(b);
export const divide = (a: Rational, b: Rational): Rational => a.div(b);
export const negate = (a: Rational): Rational => a.neg();
export const abs = (a: Rational): Rational => a.abs();

/** `a` taken a whole number of times. */
export const times = (count: number, a: Rational): Rational => a.mul(BigInt(count));
/** One of `count` equal parts of `a`. */
export const share = (a: Rational, count: number): Rational => a.div(BigInt(count));

export const total = (lengths: readonly Rational[]): Rational => lengths.reduce(add, ZERO);

/** Below 0, 0 or above 0, as `a` is less than, equal to or greater than `b`. */
export const compare = (a: Rational, b: Rational): number => a.compare(b);
export const less = (a: Rational, b: Rational): boolean => compare(a, b) < 0;
export const equal = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d && a.s === b.s;
export const isPositive = (a: Rational): boolean => a.n !== 0n && a.s > 0n;
export const isNegative = (a: Rational): boolean => a.n !== 0n && a.s < 0n;
export const isZero = (a: Rational): boolean => a.n === 0n;
export const isWhole = (a: Rational): boolean => a.d === 1n;

/** Numerator with its sign, and the (positive) denominator, in lowest terms. */
export const terms = (a: Rational): { numerator: bigint; denominator: bigint } => ({
  numerator: a.s * a.n,
  denominator: a.d,
});

/** The greatest whole number that is not above `a`. */
export const wholePart = (a: Rational): bigint => terms(a.floor()).numerator;

/** The greatest multiple of `step` that is not above `a`; `a` itself where the step is 0. */
export const roundDown = (a: Rational, step: Rational): Rational =>
  isZero(step) ? a : multiply(step, ratio(wholePart(divide(a, step))));

/** The least multiple of `step` that is not below `a`; `a` itself where the step is 0. */
export const roundUp = (a: Rational, step: Rational): Rational => negate(roundDown(negate(a), step));

/** A text that equal numbers alone share, for grouping. */
export const keyOf = (a: Rational): string => a.toFraction();
