import { anyLength, unit } from "./arguments";
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
 * Gives the number that a length text stands for, so that native formulas can go on with it.
 * @customfunction
 * @group Lengths
 * @param {any} value A length: a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm
 * @param {Unit} [unit] Unit of a value without a mark, and of the result: in (default) or mm
 * @returns {any} The length as a number, in the unit
 * @throws #VALUE! where the value is blank or no length
 * @example =DRAWER.LENGTH("23 7/16") // => 23.4375
 * @example =DRAWER.LENGTH("595 mm", "mm") // => 595
 * @source NIST Handbook 44, Appendix C: 1 in = 25.4 mm, 1 ft = 12 in
 */
export function LENGTH(value: any, unit?: Unit): any {
  return call([value, unit]);
}

const call = cellFunction([anyLength("value"), unit("unit")], ([value, unit]) => lengthResult(value, unit));
