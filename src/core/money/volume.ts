import type { PlannedOpening } from "../drawer";
import { divide, multiply, times, total, unitsIn, type Rational, type Unit } from "../length";

/** What all drawers hold inside, in all copies: cubic feet, or liters in a metric job. */
export function insideVolume(plan: readonly PlannedOpening[], unit: Unit): Rational {
  const side = unit === "in" ? unitsIn("ft", unit) : times(10, unitsIn("cm", unit));
  return divide(
    total(
      plan.flatMap(({ opening, drawers }) =>
        drawers.map(({ stock, insideHeight }) =>
          times(
            opening.quantity,
            multiply(stock.insideWidth.value, multiply(stock.insideDepth.value, insideHeight.value)),
          ),
        ),
      ),
    ),
    multiply(side, multiply(side, side)),
  );
}
