import { ratio, terms, ZERO, type Rational } from "./rational";

/** The square root of a length squared: exact where it is a fraction, else the fraction just below it, within 2^-64. */
export function root(square: Rational): Rational {
  const { numerator, denominator } = terms(square);
  if (numerator <= 0n) return ZERO;
  return ratio(wholeRoot(numerator * denominator * FINE * FINE), denominator * FINE);
}

const FINE = 2n ** 64n;

/** The greatest whole number whose square is not above `n`, by Newton's rule from above. */
function wholeRoot(n: bigint): bigint {
  let guess = 1n << BigInt((n.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (guess + n / guess) >> 1n;
    if (next >= guess) return guess;
    guess = next;
  }
}
