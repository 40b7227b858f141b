import { usual, graduated, MOST_FRONTS, PROGRESSIONS } from "../core/drawer";
import { graduationAmount, length, optionalLength, unit, wholeNumber, word } from "./arguments";
import { cellFunction } from "./calls";
import { column, lengthResult } from "./cells";

/** @customenum {string} */
enum FrontProgression {
  /** All of one height */
  equal = "equal",
  /** Each taller than the one above by the length amount */
  arithmetic = "arithmetic",
  /** Each taller than the one above by the factor amount */
  geometric = "geometric",
}

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Gives front heights that grow downward by a rule and with their gaps fill the face exactly.
 * @customfunction
 * @group Fronts
 * @param {any} face_height Height of the face that fronts and gaps fill, more than 0
 * @param {any} count How many fronts, a whole number from 1 to 100
 * @param {FrontProgression} [rule] equal (default), arithmetic or geometric
 * @param {any} [amount] What each front is taller by: a length of 0 or more (arithmetic), a factor from 1 to 10 (geometric)
 * @param {any} [gap] Gap between neighbors, 0 or more: 1/8 in, 3 mm (default)
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any[][]} A column of front heights, top to bottom, in the unit
 * @throws #VALUE! where the rule has no amount, or gaps and steps leave nothing for the top front
 * @example =DRAWER.GRADUATED(28, 4, "arithmetic", 0.75, 0.125) // => {5.78125;6.53125;7.28125;8.03125}
 * @example =DRAWER.GRADUATED(26.84, 4, "geometric", 1.2, "none") // => {5;6;7.2;8.64}
 * @source common practice: drawers grow downward by a like amount or in a like proportion
 */
export function GRADUATED(
  face_height: any,
  count: any,
  rule?: FrontProgression,
  amount?: any,
  gap?: any,
  unit?: Unit,
): any[][] {
  return call([face_height, count, rule, amount, gap, unit]);
}

const call = cellFunction(
  [
    length("face_height"),
    wholeNumber("count", 1, MOST_FRONTS),
    word("rule", PROGRESSIONS),
    graduationAmount("amount"),
    optionalLength("gap", usual("front gap")),
    unit("unit"),
  ],
  ([face, count, rule, amount, gap, unit]) =>
    column(graduated(face, count, rule, amount, gap).map((height) => lengthResult(height, unit))),
);
