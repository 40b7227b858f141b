import { abs, isNegative, multiply, negate, ratio, terms, type Rational } from "../length";

/**
 * An amount to the currency's decimals, halves away from zero, as native rounding does.
 * @example rounded(ratio(105, 1000), 2) // 0.11: 7 % of 1.50
 * @source Streamlined Sales and Use Tax Agreement, section 324: to the third decimal, up where that is above 4
 */
export function rounded(amount: Rational, decimals: number): Rational {
  const scale = 10n ** BigInt(decimals);
  const { numerator, denominator } = terms(multiply(abs(amount), ratio(scale)));
  const units = ratio((2n * numerator + denominator) / (2n * denominator), scale);
  return isNegative(amount) ? negate(units) : units;
}
