import { add, Fault, isPositive, isZero, less, subtract, times, type Rational } from "../length";
import type { BottomFit } from "./words";

/**
 * Width of a bottom that runs in a groove in both sides: inside width and both grooves, less the play.
 * @throws Fault `box.sidesThick`, `groove.through`, `groove.playEatsHold`
 */
export function bottomWidth(width: Rational, side: Rational, groove: Rational, play: Rational): Rational {
  const inside = subtract(width, times(2, side));
  if (!isPositive(inside)) throw new Fault("box.sidesThick", { width, side });
  checkGroove(groove, side, "side");
  return held(add(inside, times(2, groove)), times(2, groove), play);
}

/**
 * Depth (front to back) of the bottom: grooved into both ends; slid in under the back, flush with its outer face;
 * or applied from below, as deep as the box.
 * @param groove depth of the groove in the ends; an applied bottom has none
 * @throws Fault `box.endsThick`, `groove.depthMissing`, `groove.through`, `groove.playEatsHold`
 */
export function bottomDepth(
  boxDepth: Rational,
  end: Rational,
  groove: Rational | undefined,
  play: Rational,
  fit: BottomFit,
): Rational {
  const inside = subtract(boxDepth, times(2, end));
  if (!isPositive(inside)) throw new Fault("box.endsThick", { depth: boxDepth, end });
  if (fit === "applied") return boxDepth;
  if (!groove || isZero(groove)) throw new Fault("groove.depthMissing", { fit });
  checkGroove(groove, end, "end");
  return fit === "grooved"
    ? held(add(inside, times(2, groove)), times(2, groove), play)
    : held(add(add(inside, end), groove), groove, play);
}

function checkGroove(groove: Rational, stock: Rational, part: "side" | "end"): void {
  if (!less(groove, stock)) throw new Fault("groove.through", { groove, stock, part });
}

/** A bottom with more play than its grooves are deep would drop out. */
function held(full: Rational, hold: Rational, play: Rational): Rational {
  if (!less(play, hold)) throw new Fault("groove.playEatsHold", { play, hold });
  return subtract(full, play);
}
