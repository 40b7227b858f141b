import { usual, frontHeights } from "../core/drawer";
import { ZERO } from "../core/length";
import { drawers, length, optionalLength, unit } from "./arguments";
import { cellFunction } from "./calls";
import { column, lengthResult } from "./cells";

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Gives the heights of the fronts that divide a face, from top to bottom, some fixed and some sharing the rest.
 * @customfunction
 * @group Fronts
 * @param {any} face_height Height of the face that the fronts fill, more than 0
 * @param {any[][]} drawers A count of equal fronts (1 to 100), or a list from top to bottom, as a range or a text: 5 1/2; 1 part; 2 parts
 * @param {any} [gap] Gap between neighbors, 0 or more: 1/8 in, 3 mm (default)
 * @param {any} [top_reveal] How far the fronts stay short of the face's upper edge; negative where they run past it: 0 (default)
 * @param {any} [bottom_reveal] The same at the lower edge: 0 (default)
 * @param {any} [step] Step that shared heights are rounded down to, spare steps going to the lowest fronts; 0 (default) does not round
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any[][]} A column of front heights, top to bottom, in the unit
 * @throws #VALUE! where the list cannot be read, or the fixed fronts, gaps and reveals leave nothing to share
 * @example =DRAWER.FRONTHEIGHTS("27 5/8", "5 1/2; 1 part; 1 part") // => {5.5;10.9375;10.9375}
 * @example =DRAWER.FRONTHEIGHTS("27 5/8", "1 part; 2 parts", 0.125, 0, 0, "1/16") // => {9.125;18.375}
 * @source common practice: applied fronts stand 1/8 in (3 mm) apart, and deeper drawers stand below
 */
export function FRONTHEIGHTS(
  face_height: any,
  drawers: any[][],
  gap?: any,
  top_reveal?: any,
  bottom_reveal?: any,
  step?: any,
  unit?: Unit,
): any[][] {
  return call([face_height, drawers, gap, top_reveal, bottom_reveal, step, unit]);
}

const call = cellFunction(
  [
    length("face_height"),
    drawers("drawers"),
    optionalLength("gap", usual("front gap")),
    optionalLength("top_reveal", () => ZERO, "any"),
    optionalLength("bottom_reveal", () => ZERO, "any"),
    optionalLength("step", () => ZERO),
    unit("unit"),
  ],
  ([face, asked, gap, first, last, step, unit]) =>
    column(frontHeights(face, asked, { gap, first, last }, step).map((height) => lengthResult(height, unit))),
);
