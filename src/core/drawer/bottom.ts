import { Fault, isZero, less, times, ZERO, type Rational } from "../length";
import { insideDepth, insideWidth } from "./corner";
import { minus, plus, sum, type Size } from "./size";
import type { BottomFit } from "./words";

/**
 * Width of a bottom that runs in a groove in both sides: inside width and both grooves, less the play.
 * @throws Fault `box.sidesThick`, `groove.through`, `groove.playEatsHold`
 */
export function bottomWidth(width: Rational, side: Rational, groove: Rational, play: Rational): Size {
  insideWidth(width, side);
  checkGroove(groove, side, "side");
  checkHold(times(2, groove), play);
  return sum(
    plus("box width", width),
    minus("side thickness", side, 2),
    plus("groove depth", groove, 2),
    minus("bottom play", play),
  );
}

/**
 * Depth (front to back) of the bottom: grooved into both ends; slid in under the back, flush with its outer face;
 * or applied from below, as deep as the box.
 * @param groove depth of the groove in the ends; an applied bottom has none
 * @param inset how far the ends stand in from those of the sides
 * @throws Fault `box.endsThick`, `groove.depthMissing`, `groove.through`, `groove.playEatsHold`
 */
export function bottomDepth(
  depth: Rational,
  end: Rational,
  groove: Rational | undefined,
  play: Rational,
  fit: BottomFit,
  inset: Rational = ZERO,
): Size {
  insideDepth(depth, end, inset);
  if (fit === "applied") return sum(plus("box depth", depth));
  if (!groove || isZero(groove)) throw new Fault("groove.depthMissing", { fit });
  checkGroove(groove, end, "end");
  const ends = fit === "grooved" ? 2 : 1;
  checkHold(times(ends, groove), play);
  return sum(
    plus("box depth", depth),
    minus("end thickness", end, ends),
    minus("dado inset", inset, 2),
    plus("groove depth", groove, ends),
    minus("bottom play", play),
  );
}

/** @throws Fault `groove.through` */
export function checkGroove(groove: Rational, stock: Rational, part: "side" | "end"): void {
  if (!less(groove, stock)) throw new Fault("groove.through", { groove, stock, part });
}

/** A bottom with more play than its grooves are deep would drop out. */
export function checkHold(hold: Rational, play: Rational): void {
  if (!less(play, hold)) throw new Fault("groove.playEatsHold", { play, hold });
}
