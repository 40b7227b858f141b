import { boxHeight, usual } from "../core/drawer";
import { ZERO } from "../core/length";
import { length, optionalLength, unit } from "./arguments";
import { cellFunction } from "./calls";
import { lengthResult } from "./cells";

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Gives the box height that leaves its space below and above, rounded down to a multiple of the step.
 * @customfunction
 * @group Boxes
 * @param {any} space_height Clear height that the box stands in, more than 0
 * @param {any} [space_below] Space under the box, 0 or more: 1/2 in, 12 mm (default)
 * @param {any} [space_above] Space over the box, 0 or more: 1/4 in, 6 mm (default)
 * @param {any} [step] Multiple that the height is rounded down to; 0 (default) does not round
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Box height, in the unit
 * @throws #VALUE! where the spaces leave nothing, or less than one step
 * @example =DRAWER.BOXHEIGHT("8 7/16", 0.5, 0.25, 0.25) // => 7.5
 * @example =DRAWER.BOXHEIGHT(170, 12, 6, 5, "mm") // => 150
 * @source common practice: a box is lower than its space by what tilting it into its slides takes
 */
export function BOXHEIGHT(space_height: any, space_below?: any, space_above?: any, step?: any, unit?: Unit): any {
  return call([space_height, space_below, space_above, step, unit]);
}

const call = cellFunction(
  [
    length("space_height"),
    optionalLength("space_below", usual("space below")),
    optionalLength("space_above", usual("space above")),
    optionalLength("step", () => ZERO),
    unit("unit"),
  ],
  ([space, below, above, step, unit]) => lengthResult(boxHeight(space, below, above, step).value, unit),
);
