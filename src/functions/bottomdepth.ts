import { bottomDepth, usual } from "../core/drawer";
import { bottomFit, length, lengthIfGiven, optionalLength, unit } from "./arguments";
import { cellFunction } from "./calls";
import { lengthResult } from "./cells";

/** @customenum {string} */
enum BottomFit {
  /** In a groove on all four sides */
  grooved = "grooved",
  /** Slid in under the back, flush with its outer face */
  under_back = "under back",
  /** Nailed and glued on from below, as deep as the box */
  applied = "applied",
}

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Gives the depth of the bottom, front to back, for the way it is held.
 * @customfunction
 * @group Boxes
 * @param {any} box_depth Outside depth of the box, more than 0; with its ends in dadoes less twice the dado inset (applied bottom: whole)
 * @param {any} end_thickness Thickness of box front and back as measured, more than 0
 * @param {any} groove_depth Depth of the grooves in the ends: more than 0, less than their thickness; an applied bottom needs none
 * @param {any} [play] Play of the bottom in all, less than it is held by: 1/16 in, 1.5 mm (default)
 * @param {BottomFit} [bottom_fit] grooved (default), under back or applied
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Bottom depth, in the unit
 * @throws #VALUE! where a groove is missing or goes through the end, or the play would let the bottom drop out
 * @example =DRAWER.BOTTOMDEPTH(22, 0.5, 0.25) // => 21.4375
 * @example =DRAWER.BOTTOMDEPTH(22, 0.75, 0.25, , "under back") // => 21.4375
 * @example =DRAWER.BOTTOMDEPTH(22, 0.5, , , "applied") // => 22
 * @source common practice: D − 2t + 2g − play grooved, D − t + g − play under the back, D applied
 */
export function BOTTOMDEPTH(
  box_depth: any,
  end_thickness: any,
  groove_depth: any,
  play?: any,
  bottom_fit?: BottomFit,
  unit?: Unit,
): any {
  return call([box_depth, end_thickness, groove_depth, play, bottom_fit, unit]);
}

const call = cellFunction(
  [
    length("box_depth"),
    length("end_thickness"),
    lengthIfGiven("groove_depth", "not negative"),
    optionalLength("play", usual("bottom play")),
    bottomFit("bottom_fit"),
    unit("unit"),
  ],
  ([depth, end, groove, play, fit, unit]) => lengthResult(bottomDepth(depth, end, groove, play, fit).value, unit),
);
