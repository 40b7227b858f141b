declare const exact: unique symbol;

/**
 * An exact rational number: a length in the unit of the call, or a plain factor. Never changed in place. What is beneath
 * it is known in this file alone.
 */
export interface Rational {
  readonly [exact]: true;
}

/**
 * In lowest terms, the denominator above 0: equal numbers have equal terms. Both are plain numbers where both are small,
 * as those of nearly all sizes are, for which sums take half the time; else both are bigints, here called numbers
 * as well: the same signs work out both, as long as they are not mixed.
 */
class Quotient {
  constructor(
    readonly n: number,
    readonly d: number,
  ) {}

  /** A text that equal numbers alone share: what may be a word or a number as well is compared by its text. */
  toString(): string {
    return this.d > 1 ? `${this.n}/${this.d}` : String(this.n);
  }
}

const under = (a: Rational): Quotient => a as unknown as Quotient;

const long = (term: number | bigint): number => BigInt(term) as unknown as number;

/** Products of two are exact, and so is a sum of two such products. */
const isSmall = (term: number | bigint): boolean => Math.abs(Number(term)) < 2 ** 26;

const over = (n: number, d: number): Rational => {
  const kind = isSmall(n) && isSmall(d) ? Number : long;
  return new Quotient(kind(n), kind(d)) as unknown as Rational;
};

/** @throws RangeError where the denominator is 0 */
function quotient(n: number, d: number): Rational {
  if (!d) throw new RangeError("a quotient by 0");
  const common = greatestDivisor(n, d);
  const divisor = d < 0 === common < 0 ? common : -common;
  // A zero is never -0.
  return over(n / divisor || d - d, d / divisor);
}

/** With any sign. */
function greatestDivisor(a: number, b: number): number {
  while (b) {
    const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

/** Works on the terms of two, made of one kind. */
const withTerms = <T>(a: Rational, b: Rational, work: (n: number, d: number, m: number, e: number) => T): T => {
  const { n, d } = under(a);
  const { n: m, d: e } = under(b);
  return typeof n === typeof m ? work(n, d, m, e) : work(long(n), long(d), long(m), long(e));
};

/**
 * The exact quotient of two whole numbers.
 * @throws RangeError where one is no whole number, or the second is 0
 * @example ratio(7, 16) // seven sixteenths
 */
export const ratio = (numerator: number | bigint, denominator: number | bigint = 1): Rational => {
  const areSmall = [numerator, denominator].every((term) => isSmall(term) && Number.isInteger(Number(term)));
  const kind = areSmall ? Number : long;
  return quotient(kind(numerator), kind(denominator));
};

export const isRational = (value: unknown): value is Rational => value instanceof Quotient;

export const ZERO = ratio(0);

export const add = (a: Rational, b: Rational): Rational =>
  withTerms(a, b, (n, d, m, e) => quotient(n * e + m * d, d * e));
export const multiply = (a: Rational, b: Rational): Rational => withTerms(a, b, (n, d, m, e) => quotient(n * m, d * e));
/** @throws RangeError where `b` is 0 */
export const divide = (a: Rational, b: Rational): Rational => withTerms(a, b, (n, d, m, e) => quotient(n * e, d * m));
export const negate = (a: Rational): Rational => (isZero(a) ? a : over(-under(a).n, under(a).d));
export const subtract = (a: Rational, b: Rational): Rational => add(a, negate(b));
export const abs = (a: Rational): Rational => (isNegative(a) ? negate(a) : a);

/** `a` taken a whole number of times. */
export const times = (count: number, a: Rational): Rational => multiply(ratio(count), a);
/** One of `count` equal parts of `a`. */
export const share = (a: Rational, count: number): Rational => divide(a, ratio(count));

export const half = (a: Rational): Rational => share(a, 2);

export const total = (lengths: readonly Rational[]): Rational => lengths.reduce(add, ZERO);

/** Below 0, 0 or above 0, as `a` is less than, equal to or greater than `b`. */
export const compare = (a: Rational, b: Rational): number =>
  withTerms(a, b, (n, d, m, e) => (n * e < m * d ? -1 : Number(n * e > m * d)));
export const less = (a: Rational, b: Rational): boolean => compare(a, b) < 0;
export const lesserOf = (a: Rational, b: Rational): Rational => (less(b, a) ? b : a);
export const greaterOf = (a: Rational, b: Rational): Rational => (less(a, b) ? b : a);
export const equal = (a: Rational, b: Rational): boolean => under(a).n === under(b).n && under(a).d === under(b).d;
export const isPositive = (a: Rational): boolean => under(a).n > 0;
export const isNegative = (a: Rational): boolean => under(a).n < 0;
export const isZero = (a: Rational): boolean => under(a).n === 0;
export const isWhole = (a: Rational): boolean => under(a).d <= 1;

/** Numerator with its sign, and the (positive) denominator, in lowest terms. */
export const terms = (a: Rational): { numerator: bigint; denominator: bigint } => ({
  numerator: BigInt(under(a).n),
  denominator: BigInt(under(a).d),
});

/** The greatest whole number that is not above `a`. */
export const wholePart = (a: Rational): bigint => {
  const { numerator: n, denominator: d } = terms(a);
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
  values.reduce((common, value) => {
    const { denominator } = terms(value);
    return (common * denominator) / BigInt(greatestDivisor(long(common), long(denominator)));
  }, 1n);
