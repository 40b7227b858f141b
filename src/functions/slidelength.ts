import { slideLength, usual } from "../core/drawer";
import { ZERO } from "../core/length";
import { length, lengthList, optionalLength, unit } from "./arguments";
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
 * Gives the longest slide of those listed that the opening takes, behind its setback and with its rear clearance.
 * @customfunction
 * @group Boxes
 * @param {any} inside_depth Depth from the front edge of the carcase to the first obstruction, more than 0
 * @param {any} [rear_clearance] Space behind the slide, 0 or more: 1/2 in, 12 mm (default)
 * @param {any} [front_setback] How far the slide stands back from the front edge, 0 or more: 0 (default)
 * @param {any[][]} [lengths] Lengths on sale: a range, or a text such as 12; 16; 20. Default 10, 12 … 28 in; 250, 300 … 700 mm
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Slide length, in the unit
 * @throws #N/A where no slide fits; #VALUE! where an argument is no length
 * @example =DRAWER.SLIDELENGTH(23.25) // => 22
 * @example =DRAWER.SLIDELENGTH(23.25, 0.5, 0, "12; 16; 20") // => 20
 * @example =DRAWER.SLIDELENGTH(525, 12, 19, , "mm") // => 450
 * @source common practice: slides are sold from 10 to 28 in by 2 in, from 250 to 700 mm by 50 mm
 */
export function SLIDELENGTH(
  inside_depth: any,
  rear_clearance?: any,
  front_setback?: any,
  lengths?: any[][],
  unit?: Unit,
): any {
  return call([inside_depth, rear_clearance, front_setback, lengths, unit]);
}

const call = cellFunction(
  [
    length("inside_depth"),
    optionalLength("rear_clearance", usual("rear clearance")),
    optionalLength("front_setback", () => ZERO),
    lengthList("lengths", usual("slide lengths")),
    unit("unit"),
  ],
  ([depth, rear, setback, lengths, unit]) => lengthResult(slideLength(depth, rear, setback, lengths).value, unit),
);
