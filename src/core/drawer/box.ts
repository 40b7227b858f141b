import { Fault, isPositive, times, type Rational } from "../length";
import { downTo, minus, plus, sum, type Size } from "./size";

/**
 * The box width that leaves room for both slides.
 * @throws Fault `box.openingNarrow` where nothing is left for the box
 */
export function boxWidth(opening: Rational, clearance: Rational): Size {
  const width = sum(plus("opening width", opening), minus("side clearance", clearance, 2));
  if (!isPositive(width.value)) {
    throw new Fault("box.openingNarrow", { opening, clearance, room: times(2, clearance) });
  }
  return width;
}

/**
 * The box height that leaves its space below and above, rounded down to a multiple of `step` (0: not rounded).
 * @throws Fault `box.spaceLow` where nothing is left, `box.spaceBelowStep` where less than one step is left
 */
export function boxHeight(space: Rational, below: Rational, above: Rational, step: Rational): Size {
  const left = sum(plus("height of its space", space), minus("space below", below), minus("space above", above));
  if (!isPositive(left.value)) throw new Fault("box.spaceLow", { space, below, above });
  const height = downTo(left, step);
  if (!isPositive(height.value)) throw new Fault("box.spaceBelowStep", { left: left.value, step });
  return height;
}
