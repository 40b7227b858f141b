import { roundFigure, type Rational, type Unit } from "../length";

/** A piece that is less than this cannot be guided safely past a saw. */
export interface SafeSizes {
  /** Along the fence. */
  guided: Rational;
  /** Across it. */
  wide: Rational;
}

/**
 * What a piece in hand needs at least.
 * @source common practice; the saw's manual decides
 */
export const safeSizes = (unit: Unit): SafeSizes => ({
  guided: roundFigure("6", "150", unit),
  wide: roundFigure("2", "50", unit),
});
