import { usual, frontSize, MOST_FRONTS } from "../core/drawer";
import { ZERO } from "../core/length";
import { length, optionalLength, unit, wholeNumber } from "./arguments";
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
 * Gives the width of each of a number of equal fronts that with their gaps and reveals fill a face.
 * @customfunction
 * @group Fronts
 * @param {any} face_width Width of the face that the fronts fill, more than 0
 * @param {any} columns How many fronts, a whole number from 1 to 100
 * @param {any} [gap] Gap between neighbors, 0 or more: 1/8 in, 3 mm (default)
 * @param {any} [left_reveal] How far the fronts stay short of the face's left edge; negative where they run past it: 0 (default)
 * @param {any} [right_reveal] The same at the right edge: 0 (default)
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Front width, in the unit
 * @throws #VALUE! where gaps and reveals leave nothing for the fronts
 * @example =DRAWER.FRONTWIDTH(75, 3, 0.125, 0.0625, 0.0625) // => 24.875
 * @source common practice: applied fronts stand 1/8 in (3 mm) apart
 */
export function FRONTWIDTH(
  face_width: any,
  columns: any,
  gap?: any,
  left_reveal?: any,
  right_reveal?: any,
  unit?: Unit,
): any {
  return call([face_width, columns, gap, left_reveal, right_reveal, unit]);
}

const call = cellFunction(
  [
    length("face_width"),
    wholeNumber("columns", 1, MOST_FRONTS),
    optionalLength("gap", usual("front gap")),
    optionalLength("left_reveal", () => ZERO, "any"),
    optionalLength("right_reveal", () => ZERO, "any"),
    unit("unit"),
  ],
  ([face, count, gap, first, last, unit]) => lengthResult(frontSize(face, count, { gap, first, last }), unit),
);
