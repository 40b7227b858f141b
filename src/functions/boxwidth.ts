import { boxWidth } from "../core/drawer";
import { length, sideClearance, unit } from "./arguments";
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
 * Gives the box width that leaves exact room for both slides: the opening less twice the side clearance.
 * @customfunction
 * @group Boxes
 * @param {any} opening_width Clear width of the opening, more than 0
 * @param {any} [slide] Clearance per side, 0 or more, or side-mount (default, 1/2 in), center-mount (1/8 in) or wood runner (1/16 in)
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Box width, in the unit (in mm the named slides take 12.7, 3 and 1.5 per side)
 * @throws #VALUE! where the slides leave no room, or for undermount slides, whose deduction stands in their data sheet
 * @example =DRAWER.BOXWIDTH(24) // => 23
 * @example =DRAWER.BOXWIDTH("18 1/16", "wood runner") // => 17.9375
 * @example =DRAWER.BOXWIDTH(412, "side-mount", "mm") // => 386.6
 * @source common practice: side-mount slides take 1/2 in (12.7 mm) a side
 */
export function BOXWIDTH(opening_width: any, slide?: any, unit?: Unit): any {
  return call([opening_width, slide, unit]);
}

const call = cellFunction(
  [length("opening_width"), sideClearance("slide"), unit("unit")],
  ([opening, clearance, unit]) => lengthResult(boxWidth(opening, clearance).value, unit),
);
