import { ratio, terms, type Rational } from "./rational";

/**
 * The simplest fraction (smallest denominator) within 1e-9 of a double, relative to the larger of 1 and its size:
 * 0.1 is one tenth, 9.041666666666666 is 9 1/24. Ties among whole numbers go to the nearest.
 * @param value a finite double
 * @example fromDouble(10.2 - 2.2) // exactly 8
 */
export function fromDouble(value: number): Rational {
  return quickly(value) ?? simplest(value);
}

/**
 * The double nearest to an exact number (ties to even), so that one rounding is all that a result ever suffers.
 * @example toDouble(ratio(1, 3)) // 0.3333333333333333
 */
export function toDouble(value: Rational): number {
  const { numerator, denominator } = terms(value);
  const size = numerator < 0n ? -numerator : numerator;
  const nearest =
    size <= EXACT && denominator <= EXACT ? Number(size) / Number(denominator) : divideLong(size, denominator);
  return numerator < 0n ? -nearest : nearest;
}

/** Whole numbers up to here are doubles without rounding. */
const EXACT = BigInt(Number.MAX_SAFE_INTEGER);

/**
 * Nearly every size in a shop is a number of 64ths or of hundredths. Two different fractions with denominators
 * up to 64 (100) stand at least 1/4096 (1/10,000) apart, which is more than the tolerance at these sizes:
 * so the double's own fraction is the only candidate.
 */
function quickly(value: number): Rational | undefined {
  const size = Math.abs(value);
  if (size < 1e5 && Number.isInteger(value * 64)) return ratio(value * 64, 64);
  if (size < 1e4) {
    const hundredths = Math.round(value * 100);
    if (hundredths / 100 === value) return ratio(hundredths, 100);
  }
  return undefined;
}

function simplest(value: number): Rational {
  const [numerator, denominator] = dyadic(Math.abs(value));
  const sign = value < 0 ? -1n : 1n;
  const nearest = (2n * numerator + denominator) / (2n * denominator);
  // The interval's ends over one denominator: x ± max(1, x) / 1e9.
  const scale = 1_000_000_000n;
  const margin = numerator > denominator ? numerator : denominator;
  const end = denominator * scale;
  const low = numerator * scale - margin;
  const high = numerator * scale + margin;
  if (nearest * end >= low && nearest * end <= high) return ratio(sign * nearest);
  const [p, q] = simplestBetween(low, end, high, end);
  return ratio(sign * p, q);
}

/**
 * The fraction of smallest denominator in [a/b, c/d], positive ends, by continued fractions: take the whole part
 * that both ends share, turn what is left upside down, and go on until a whole number lies between.
 */
function simplestBetween(a: bigint, b: bigint, c: bigint, d: bigint): [bigint, bigint] {
  let [p0, q0, p1, q1] = [0n, 1n, 1n, 0n];
  for (;;) {
    const floor = a / b;
    const ceiling = (a + b - 1n) / b;
    if (ceiling * d <= c) return [ceiling * p1 + p0, ceiling * q1 + q0];
    [p0, q0, p1, q1] = [p1, q1, floor * p1 + p0, floor * q1 + q0];
    [a, b, c, d] = [d, c - floor * d, b, a - floor * b];
  }
}

/** A positive double as the exact quotient that it is. */
function dyadic(value: number): [bigint, bigint] {
  let denominator = 1n;
  while (!Number.isInteger(value)) {
    value *= 2;
    denominator *= 2n;
  }
  return [BigInt(value), denominator];
}

/** Division that rounds once: 55 bits or more of the quotient, its last bit set where anything is left over. */
function divideLong(numerator: bigint, denominator: bigint): number {
  const shift = 56 - (bits(numerator) - bits(denominator));
  const [n, d] = shift >= 0 ? [numerator << BigInt(shift), denominator] : [numerator, denominator << BigInt(-shift)];
  const quotient = n / d;
  return Number(quotient * d === n ? quotient : quotient | 1n) * 2 ** -shift;
}

const bits = (value: bigint): number => value.toString(2).length;
