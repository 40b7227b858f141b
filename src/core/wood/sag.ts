import { Fault, less, toDouble, type Rational, type Unit } from "../length";
import { clampedDeflection } from "./clamped-plate";
import { heldDeflection } from "./held-plate";
import { STANDARD_GRAVITY } from "./load";

/** How a bottom's four edges are held: laid in grooves, where they may tilt, or glued in so that they cannot. */
export type Edges = "held" | "clamped";

export interface Bottom {
  /** Clear sizes between the edges that hold it. */
  width: Rational;
  depth: Rational;
  thickness: Rational;
  /** Modulus of elasticity, in psi or MPa. */
  stiffness: number;
}

/**
 * The largest deflection of a bottom under an even load, by the theory of thin plates that bend alike in all directions.
 * Once it nears half the thickness the bottom begins to hang like a cloth as well, and sags less than that.
 * @param load on the whole bottom, in lb or kg
 * @throws Fault `sag.thick`, `sag.broken`
 * @source Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., chapters 5 and 6
 */
export function sag(bottom: Bottom, load: number, edges: Edges, unit: Unit): number {
  const short = less(bottom.depth, bottom.width) ? bottom.depth : bottom.width;
  if (!less(bottom.thickness, short)) throw new Fault("sag.thick", { thickness: bottom.thickness, short });
  const [width, depth, thickness] = [toDouble(bottom.width), toDouble(bottom.depth), toDouble(bottom.thickness)];
  const [a, b] = [Math.min(width, depth), Math.max(width, depth)];
  const pressure = (unit === "in" ? load : load * STANDARD_GRAVITY) / (width * depth);
  const rigidity = (bottom.stiffness * thickness ** 3) / (12 * (1 - POISSON ** 2));
  const deflection = edges === "held" ? heldDeflection(b / a) : clampedDeflection(b / a);
  const sags = (deflection * pressure * a ** 4) / rigidity;
  // A bottom so far gone, or so thin that its stiffness is no number any more, has long been broken.
  if (!(sags < a)) throw new Fault("sag.broken", { short });
  return sags;
}

/** What handbooks reckon plates with. */
const POISSON = 0.3;
