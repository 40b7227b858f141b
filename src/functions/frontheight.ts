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
 * Gives the height of each of a number of equal fronts that with their gaps and reveals fill a face.
 * @customfunction
 * @group Fronts
 * @param {any} face_height Height of the face that the fronts fill, more than 0
 * @param {any} count How many fronts, a whole number from 1 to 100
 * @param {any} [gap] Gap between neighbors, 0 or more: 1/8 in, 3 mm (default)
 * @param {any} [top_reveal] How far the fronts stay short of the face's upper edge; negative where they run past it: 0 (default)
 * @param {any} [bottom_reveal] The same at the lower edge: 0 (default)
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Front height, in the unit
 * @throws #VALUE! where gaps and reveals leave nothing for the fronts
 * @example =DRAWER.FRONTHEIGHT("27 5/8", 3) // => 9.125
 * @source common practice: applied fronts stand 1/8 in (3 mm) apart
 */
export function FRONTHEIGHT(
  face_height: any,
  count: any,
  gap?: any,
  top_reveal?: any,
  bottom_reveal?: any,
  unit?: Unit,
): any {
  return call([face_height, count, gap, top_reveal, bottom_reveal, unit]);
}

const call = cellFunction(
  [
    length("face_height"),
    wholeNumber("count", 1, MOST_FRONTS),
    optionalLength("gap", usual("front gap")),
    optionalLength("top_reveal", () => ZERO, "any"),
    optionalLength("bottom_reveal", () => ZERO, "any"),
    unit("unit"),
  ],
  ([face, count, gap, first, last, unit]) => lengthResult(frontSize(face, count, { gap, first, last }), unit),
);
