import {
  add,
  divide,
  isZero,
  less,
  multiply,
  ratio,
  root,
  subtract,
  times,
  total,
  ZERO,
  type Rational,
} from "../../length";
import type { Standards } from "../standards";
import type { CornerJoint } from "../words";
import { sideSpace } from "./mounting";
import type { PlannedOpening } from "./plan";

/** The side space of an opening's boxes, per side: as planned, as it may come out, and as the slide allows it. */
export interface Fit {
  nominal: Rational;
  /** Where every error adds up. */
  least: Rational;
  most: Rational;
  /** Where errors make up for one another, as independent ones mostly do. */
  likelyLeast: Rational;
  likelyMost: Rational;
  allowedLeast: Rational;
  allowedMost: Rational;
}

/** What becomes of the boxes: what falls short of the slide's range, what exceeds it, and what would mend it. */
export interface Verdict {
  kind: "always" | "likely" | "binds" | "loose" | "either";
  /** The greatest shortfall and excess per side: of the likely range, or of the worst case where the likely one fits. */
  short: Rational;
  over: Rational;
  /** How much narrower the box puts its range in the middle of the allowed one; negative: wider. */
  narrower: Rational;
  /** Whether the likely range is too wide for the slide wherever it lies. */
  spread: boolean;
}

/**
 * The side space of the boxes of an opening, all of which are equally wide.
 * Both sides come from one sheet, so that their thickness errs together; a rabbet or dado adds its two depths.
 */
export function fitOf({ drawers }: PlannedOpening): Fit {
  const drawer = drawers[0]!;
  const s = drawer.opening.standards;
  const nominal = sideSpace(drawer).value;
  const { worst, likely } = spread(s);
  return {
    nominal,
    least: subtract(nominal, worst),
    most: add(nominal, worst),
    likelyLeast: subtract(nominal, likely),
    likelyMost: add(nominal, likely),
    allowedLeast: subtract(nominal, s["slide tolerance low"]),
    allowedMost: add(nominal, s["slide tolerance high"]),
  };
}

/** How many cuts and side thicknesses make up a box's width. */
const ERRORS: Record<CornerJoint, { cuts: number; sides: number }> = {
  butt: { cuts: 1, sides: 2 },
  rabbet: { cuts: 3, sides: 2 },
  dado: { cuts: 3, sides: 2 },
  dovetail: { cuts: 1, sides: 0 },
  "half-blind dovetail": { cuts: 1, sides: 0 },
  "box joint": { cuts: 1, sides: 0 },
};

/** Half of what opening and box may err by together: one side's part of it. */
function spread(s: Standards): { worst: Rational; likely: Rational } {
  const { "opening tolerance": opening, "cut tolerance": cut } = s;
  const { cuts, sides } = ERRORS[s["corner joint"]];
  const stock = times(sides, s["thickness tolerance"]);
  const squares = [square(opening), times(cuts, square(cut)), square(stock)];
  return { worst: half(total([opening, times(cuts, cut), stock])), likely: half(root(total(squares))) };
}

export function verdictOf(fit: Fit): Verdict {
  const always = !less(fit.least, fit.allowedLeast) && !less(fit.allowedMost, fit.most);
  const short = positive(subtract(fit.allowedLeast, fit.likelyLeast));
  const over = positive(subtract(fit.likelyMost, fit.allowedMost));
  const narrower = subtract(add(fit.allowedMost, fit.allowedLeast), times(2, fit.nominal));
  const spread = less(subtract(fit.allowedMost, fit.allowedLeast), subtract(fit.likelyMost, fit.likelyLeast));
  if (!isZero(short) || !isZero(over)) {
    return { kind: isZero(over) ? "binds" : isZero(short) ? "loose" : "either", short, over, narrower, spread };
  }
  return {
    kind: always ? "always" : "likely",
    short: positive(subtract(fit.allowedLeast, fit.least)),
    over: positive(subtract(fit.most, fit.allowedMost)),
    narrower,
    spread,
  };
}

const square = (length: Rational): Rational => multiply(length, length);
const half = (length: Rational): Rational => divide(length, ratio(2));
const positive = (length: Rational): Rational => (less(ZERO, length) ? length : ZERO);
