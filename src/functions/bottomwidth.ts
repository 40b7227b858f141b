import { bottomWidth, usual } from "../core/drawer";
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
 * Gives the width of a bottom that runs in grooves in both sides (an applied bottom is as wide as the box).
 * @customfunction
 * @group Boxes
 * @param {any} box_width Outside width of the box, more than 0
 * @param {any} side_thickness Thickness of the sides as measured, more than 0
 * @param {any} groove_depth Depth of the grooves in the sides: more than 0, less than their thickness
 * @param {any} [play] Play of the bottom in all, less than both grooves together: 1/16 in, 1.5 mm (default)
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Bottom width, in the unit
 * @throws #VALUE! where a groove goes through the side, or the play would let the bottom drop out
 * @example =DRAWER.BOTTOMWIDTH(17, 0.5, 0.25) // => 16.4375
 * @example =DRAWER.BOTTOMWIDTH(386.6, 12, 6, 1.5, "mm") // => 373.1
 * @source common practice: W − 2t + 2 × groove depth − play
 */
export function BOTTOMWIDTH(box_width: any, side_thickness: any, groove_depth: any, play?: any, unit?: Unit): any {
  return call([box_width, side_thickness, groove_depth, play, unit]);
}

const call = cellFunction(
  [
    length("box_width"),
    length("side_thickness"),
    length("groove_depth"),
    optionalLength("play", usual("bottom play")),
    unit("unit"),
  ],
  ([width, side, groove, play, unit]) => lengthResult(bottomWidth(width, side, groove, play).value, unit),
);
