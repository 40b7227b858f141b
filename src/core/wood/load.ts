import { multiply, toDouble, type Rational, type Unit } from "../length";

/**
 * The load of an even rate over a drawer's inside area.
 * @param rate in lb/ft² with inches, in Pa with millimeters
 * @returns lb with inches, kg with millimeters
 */
export function evenLoad(insideWidth: Rational, insideDepth: Rational, rate: number, unit: Unit): number {
  const area = toDouble(multiply(insideWidth, insideDepth));
  return unit === "in" ? (area / 144) * rate : ((area / 1e6) * rate) / STANDARD_GRAVITY;
}

/**
 * The rate that drawers are tested with: lb/ft², Pa.
 * @source ANSI/KCMA A161.1, clause 7.1: 15 lb/ft² (718 Pa)
 */
export const DESIGN_RATE: Record<Unit, number> = { in: 15, mm: 718 };

/** m/s²; NIST SP 330, exact by convention. */
export const STANDARD_GRAVITY = 9.80665;
