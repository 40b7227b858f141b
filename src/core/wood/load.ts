import { multiply, toDouble, type Rational, type Unit } from "../length";

/**
 * The load of an even design rate on a drawer's bottom.
 * @returns lb with inches, kg with millimetres
 * @source ANSI/KCMA A161.1, clause 7.1: 15 lb/ft² (718 Pa)
 */
export function designLoad(insideWidth: Rational, insideDepth: Rational, unit: Unit): number {
  const area = toDouble(multiply(insideWidth, insideDepth));
  return unit === "in" ? (area / 144) * 15 : ((area / 1e6) * 718) / STANDARD_GRAVITY;
}

/** m/s²; NIST SP 330, exact by convention. */
const STANDARD_GRAVITY = 9.80665;
