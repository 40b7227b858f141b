import {
  add,
  greaterOf,
  half,
  isZero,
  less,
  multiply,
  root,
  roundFigure,
  share,
  subtract,
  times,
  total,
  ZERO,
  type Rational,
  type Unit,
} from "../../length";
import type { Opening } from "../opening";
import { runnerOf } from "../runner";
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
  const { opening } = drawer;
  const nominal = sideSpace(drawer).value;
  // The box is as wide as the narrowest place allows; at the widest it has so much more beside it.
  const widest = add(nominal, share(subtract(greatest(opening.measurements.width), opening.least.width), 2));
  const { worst, likely } = spread(opening.standards);
  return {
    nominal,
    least: subtract(nominal, worst),
    most: add(widest, worst),
    likelyLeast: subtract(nominal, likely),
    likelyMost: add(widest, likely),
    ...allowed(opening, nominal),
  };
}

/** What the slide takes; a box that no slide holds at its side wants play of its own. */
function allowed({ standards: s, unit }: Opening, nominal: Rational): Pick<Fit, "allowedLeast" | "allowedMost"> {
  const play = ownPlay(s, unit);
  if (!play) {
    return {
      allowedLeast: subtract(nominal, s["slide tolerance low"]),
      allowedMost: add(nominal, s["slide tolerance high"]),
    };
  }
  // A strip in a groove meets its bottom before the box meets the case.
  const atGroove = runnerOf(s) === "side groove" ? subtract(nominal, s["runner play"]) : play.least;
  return { allowedLeast: greaterOf(play.least, atGroove), allowedMost: play.most };
}

/** Whether the box is judged by play of its own, and not by what a slide at its side takes. */
export const hasOwnPlay = ({ slide }: Standards): boolean => slide === "wood runner" || slide === "center-mount";

/**
 * Per side: less binds when the weather turns damp, more lets the box rack and its front wander.
 * @source common practice
 */
function ownPlay(s: Standards, unit: Unit): { least: Rational; most: Rational } | undefined {
  if (!hasOwnPlay(s)) return undefined;
  const least = roundFigure("1/64", "0.4", unit);
  return { least, most: s.slide === "wood runner" ? roundFigure("1/8", "3", unit) : roundFigure("1/4", "6", unit) };
}

const greatest = (lengths: readonly Rational[]): Rational => lengths.reduce(greaterOf);

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
  const narrower = subtract(add(fit.allowedMost, fit.allowedLeast), add(fit.likelyLeast, fit.likelyMost));
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
const positive = (length: Rational): Rational => greaterOf(ZERO, length);
