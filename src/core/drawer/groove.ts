import {
  add,
  divide,
  Fault,
  less,
  multiply,
  negate,
  ratio,
  share,
  subtract,
  wholePart,
  type Rational,
} from "../length";

/** One pass over the saw: the fence (its face to the near side of the blade) and the blade's height. */
export interface Pass {
  fence: Rational;
  bladeHeight: Rational;
}

/** More passes than these are no way to cut a groove. */
export const MOST_PASSES = 100;

/**
 * A groove wider than the kerf, cut by moving the fence: the first pass at the offset, the last at the far cheek,
 * as few between them as leave no ridge, evenly spaced.
 * @throws Fault `groove.narrowerThanKerf`, `groove.tooManyPasses`
 */
export function groovePasses(width: Rational, kerf: Rational, offset: Rational, depth: Rational): Pass[] {
  if (less(width, kerf)) throw new Fault("groove.narrowerThanKerf", { width, kerf });
  const passes = Number(-wholePart(negate(divide(width, kerf))));
  if (passes > MOST_PASSES) throw new Fault("groove.tooManyPasses", { passes, most: MOST_PASSES, width, kerf });
  const travel = subtract(width, kerf);
  return Array.from({ length: passes }, (_, i) => ({
    fence: i === 0 ? offset : add(offset, share(multiply(travel, ratio(i)), passes - 1)),
    bladeHeight: depth,
  }));
}
