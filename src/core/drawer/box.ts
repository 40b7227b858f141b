import { Fault, isPositive, roundDown, subtract, times, type Rational } from "../length";

/**
 * The box width that leaves room for both slides.
 * @throws Fault `box.openingNarrow` where nothing is left for the box
 */
export function boxWidth(opening: Rational, clearance: Rational): Rational {
  const room = times(2, clearance);
  const width = subtract(opening, room);
  if (!isPositive(width)) throw new Fault("box.openingNarrow", { opening, clearance, room });
  return width;
}

/**
 * The box height that leaves its space below and above, rounded down to a multiple of `step` (0: not rounded).
 * @throws Fault `box.spaceLow` where nothing is left, `box.spaceBelowStep` where less than one step is left
 */
export function boxHeight(space: Rational, below: Rational, above: Rational, step: Rational): Rational {
  const left = subtract(subtract(space, below), above);
  if (!isPositive(left)) throw new Fault("box.spaceLow", { space, below, above });
  const height = roundDown(left, step);
  if (!isPositive(height)) throw new Fault("box.spaceBelowStep", { left, step });
  return height;
}
