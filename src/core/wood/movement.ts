import { multiply, ratio, subtract, type Rational } from "../length";
import type { Species } from "./species";

/** Flat sawn: the width lies along the growth rings. Quarter sawn: across them. */
export type Cut = "flat" | "quarter";

/**
 * How much a solid board's width changes with its moisture content, below 0 where it shrinks.
 * @param from moisture content in % that it has now
 * @param to moisture content in % that it comes to
 * @source Wood Handbook, FPL-GTR-190 (2010), chapter 13, Eq. 13-2; it is meant for 6 to 14 %
 */
export function movement(width: Rational, species: Species, from: Rational, to: Rational, cut: Cut): Rational {
  const coefficient = ratio(cut === "flat" ? species.tangential : species.radial, 100_000);
  return multiply(multiply(width, coefficient), subtract(to, from));
}
