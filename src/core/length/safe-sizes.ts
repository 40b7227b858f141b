import type { Rational } from "./rational";
import { roundFigure } from "./round-figure";
import type { Unit } from "./unit";

/** Pieces that a saw makes or guides with the hand too near to its blade are smaller than this. */
export interface SafeSizes {
  /** Kept by a crosscut, and along the fence in a rip or a groove. */
  length: Rational;
  /** Kept by a rip, and what is ripped. */
  width: Rational;
}

/**
 * The one limit of all tables.
 * @source common practice; the saw's manual decides
 */
export const safeSizes = (unit: Unit): SafeSizes => ({
  length: roundFigure("6", "150", unit),
  width: roundFigure("3", "75", unit),
});
