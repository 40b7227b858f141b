declare const exact: unique symbol;

/**
 * An exact rational number: a length in the unit of the call, or a plain factor. Never changed in place. What is beneath
 * it is known in this file alone.
 */
export interface Rational {
  readonly [exact]: true;
}

/** In lowest terms, the denominator above 0: equal numbers have equal terms. */
class Quotient {
  constructor(
    readonly n: bigint,
    readonly d: bigint,
  ) {}

  /** A text that equal numbers alone share: what may be a word or a number as well is compared by its text. */
  toString(): string {
    return this.d === 1n ? String(this.n) : `${this.n}/${this.d}`;
  }
}

const under = (a: Rational): Quotient => a as unknown as Quotient;

const over = (n: bigint, d: bigint): Rational => new Quotient(n, d) as unknown as Rational;

/** @throws RangeError where the denominator is 0 */
function quotient(n: bigint, d: bigint): Rational {
  if (d === 1n) return over(n, d);
  if (d === 0n) throw new RangeError("a quotient by 0");
  const common = greatestDivisor(n, d);
  const divisor = d < 0n === common < 0n ? common : -common;
  return divisor === 1n ? over(n, d) : over(n / divisor, d / divisor);
}

/** With any sign. */
function greatestDivisor(a: bigint, b: bigint): bigint {
  while (b) {
    const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

/**
 * The exact quotient of two whole numbers.
 * @example ratio(7, 16) // seven sixteenths
 */
export const ratio = (numerator: number | bigint, denominator: number | bigint = 1): Rational =>
  quotient(BigInt(numerator), BigInt(denominator));

export const isRational = (value: unknown): value is Rational => value instanceof Quotient;

export const ZERO = ratio(0);

export const add = (a: Rational, b: Rational): Rational => {
  const [one, other] = [under(a), under(b)];
  return quotient(one.n * other.d + other.n * one.d, one.d * other.d);
};
export const multiply = (a: Rational, b: Rational): Rational =>
  quotient(under(a).n * under(b).n, under(a).d * under(b).d);
/** @throws RangeError where `b` is 0 */
export const divide = (a: Rational, b: Rational): Rational =>
  quotient(under(a).n * under(b).d, under(a).d * under(b).n);
export const negate = (a: Rational): Rational => over(-under(a).n, under(a).d);
export const subtract = (a: Rational, b: Rational): Rational => add(a, negate(b));
export const abs = (a: Rational): Rational => (isNegative(a) ? negate(a) : a);

/** `a` taken a whole number of times. */
export const times = (count: number, a: Rational): Rational => multiply(ratio(count), a);
/** One of `count` equal parts of `a`. */
export const share = (a: Rational, count: number): Rational => divide(a, ratio(count));

export const half = (a: Rational): Rational => share(a, 2);

export const total = (lengths: readonly Rational[]): Rational => lengths.reduce(add, ZERO);

/** Below 0, 0 or above 0, as `a` is less than, equal to or greater than `b`. */
export const compare = (a: Rational, b: Rational): number => {
  const [left, right] = [under(a).n * under(b).d, under(b).n * under(a).d];
  return left < right ? -1 : left > right ? 1 : 0;
};
export const less = (a: Rational, b: Rational): boolean => compare(a, b) < 0;
export const lesserOf = (a: Rational, b: Rational): Rational => (less(b, a) ? b : a);
export const greaterOf = (a: Rational, b: Rational): Rational => (less(a, b) ? b : a);
export const equal = (a: Rational, b: Rational): boolean => under(a).n === under(b).n && under(a).d === under(b).d;
export const isPositive = (a: Rational): boolean => under(a).n > 0n;
export const isNegative = (a: Rational): boolean => under(a).n < 0n;
export const isZero = (a: Rational): boolean => under(a).n === 0n;
export const isWhole = (a: Rational): boolean => under(a).d === 1n;

/** Numerator with its sign, and the (positive) denominator, in lowest terms. */
export const terms = (a: Rational): { numerator: bigint; denominator: bigint } => ({
  numerator: under(a).n,
  denominator: under(a).d,
});

/** The greatest whole number that is not above `a`. */
export const wholePart = (a: Rational): bigint => {
  const { n, d } = under(a);
  // Division of whole numbers goes toward 0.
  return n < 0n ? -((d - 1n - n) / d) : n / d;
};

/** The greatest multiple of `step` that is not above `a`; `a` itself where the step is 0. */
export const roundDown = (a: Rational, step: Rational): Rational =>
  isZero(step) ? a : multiply(step, ratio(wholePart(divide(a, step))));

/** The least multiple of `step` that is not below `a`; `a` itself where the step is 0. */
export const roundUp = (a: Rational, step: Rational): Rational => negate(roundDown(negate(a), step));

/** A text that equal numbers alone share, for grouping. */
export const keyOf = (a: Rational): string => String(a);

/** The least whole number that makes all of these whole. */
export const commonDenominator = (values: readonly Rational[]): bigint =>
  values.reduce((common, value) => (common * under(value).d) / greatestDivisor(common, under(value).d), 1n);
