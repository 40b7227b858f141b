import {
  add,
  divide,
  Fault,
  isPositive,
  isZero,
  less,
  multiply,
  ratio,
  roundDown,
  share,
  subtract,
  times,
  total,
  type Rational,
} from "../length";
import type { Progression } from "./words";

/** Fronts of a face from its first edge to its last: what lies between them, and what stays free at the ends. */
export interface Spacing {
  gap: Rational;
  first: Rational;
  last: Rational;
}

/** One drawer as asked for: a front of a fixed height, or so many parts of what the fixed ones leave. */
export type DrawerAsked = { fixed: Rational } | { parts: Rational };

/** The most fronts that one face is divided into. */
export const MOST_FRONTS = 100;

/**
 * The size of each of `count` equal fronts: height down a face, width across it.
 * @throws Fault `fronts.noRoom` where gaps and reveals leave nothing
 */
export function frontSize(face: Rational, count: number, spacing: Spacing): Rational {
  return share(roomForFronts(face, count, spacing), count);
}

/** A front of a divided face: its height, and how it came by it. */
export interface FrontShare {
  height: Rational;
  /** The exact share before rounding; a fixed front has none. */
  exact?: Rational;
  /** A spare step was added. */
  spare: boolean;
}

/**
 * Front heights from top to bottom: the fixed ones as they are, the others by their parts of the rest. With a step
 * the shared ones are rounded down to it, and the whole steps left over go one each to the lowest of them upward.
 * @throws Fault `fronts.noRoom`, `fronts.fixedTall`, `fronts.nothingToShare`, `fronts.belowStep`
 */
export function divideFace(
  face: Rational,
  drawers: readonly DrawerAsked[],
  spacing: Spacing,
  step: Rational,
): FrontShare[] {
  const room = roomForFronts(face, drawers.length, spacing);
  const fixed = total(drawers.map((drawer) => ("fixed" in drawer ? drawer.fixed : ratio(0))));
  const rest = subtract(room, fixed);
  if (less(rest, ratio(0))) throw new Fault("fronts.fixedTall", { face, fixed, room });
  const parts = total(drawers.map((drawer) => ("parts" in drawer ? drawer.parts : ratio(0))));
  if (!isZero(parts) && isZero(rest)) throw new Fault("fronts.nothingToShare", { face, fixed });
  const fronts = drawers.map((drawer): FrontShare => {
    if ("fixed" in drawer) return { height: drawer.fixed, spare: false };
    const exact = divide(multiply(drawer.parts, rest), parts);
    return { height: roundDown(exact, step), exact, spare: false };
  });
  if (!isZero(step)) handOutSteps(fronts, subtract(room, total(fronts.map(({ height }) => height))), step);
  if (!fronts.every(({ height }) => isPositive(height))) throw new Fault("fronts.belowStep", { step, rest });
  return fronts;
}

/** The heights alone of a divided face. */
export const frontHeights = (...args: Parameters<typeof divideFace>): Rational[] =>
  divideFace(...args).map(({ height }) => height);

/**
 * Front heights that grow downward and with their gaps fill the face exactly.
 * @param amount what each is taller by: a length (arithmetic) or a factor (geometric)
 * @throws Fault `fronts.noRoom`, `fronts.amountMissing`, `fronts.stepsTall`
 */
export function graduated(
  face: Rational,
  count: number,
  rule: Progression,
  amount: Rational | undefined,
  gap: Rational,
): Rational[] {
  const room = roomForFronts(face, count, { gap, first: ratio(0), last: ratio(0) });
  const rank = Array.from({ length: count }, (_, i) => i);
  if (rule === "equal") return rank.map(() => share(room, count));
  if (!amount) throw new Fault("fronts.amountMissing", { rule });
  if (rule === "geometric") {
    const sizes = [ratio(1)];
    while (sizes.length < count) sizes.push(multiply(sizes[sizes.length - 1]!, amount));
    const unit = divide(room, total(sizes));
    return sizes.map((size) => multiply(size, unit));
  }
  const steps = times((count * (count - 1)) / 2, amount);
  const top = share(subtract(room, steps), count);
  if (!isPositive(top)) throw new Fault("fronts.stepsTall", { face, count, amount });
  return rank.map((i) => add(top, times(i, amount)));
}

function roomForFronts(face: Rational, count: number, { gap, first, last }: Spacing): Rational {
  const room = subtract(subtract(subtract(face, first), last), times(count - 1, gap));
  if (!isPositive(room)) throw new Fault("fronts.noRoom", { face, count, gap, first, last });
  return room;
}

/** Rounding down leaves less than one step a front, so that going once up the face is enough. */
function handOutSteps(fronts: FrontShare[], left: Rational, step: Rational): void {
  for (const front of [...fronts].reverse()) {
    if (less(left, step)) return;
    if (!front.exact) continue;
    front.height = add(front.height, step);
    front.spare = true;
    left = subtract(left, step);
  }
}
