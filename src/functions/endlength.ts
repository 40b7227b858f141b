import { endLength } from "../core/drawer";
import { cornerJoint, length, lengthIfGiven, unit } from "./arguments";
import { cellFunction } from "./calls";
import { lengthResult } from "./cells";

/** @customenum {string} */
enum CornerJoint {
  /** Ends stand between the sides */
  butt = "butt",
  /** Ends reach into a rabbet (rebate) in the sides */
  rabbet = "rabbet",
  /** Ends reach into a dado (housing) in the sides */
  dado = "dado",
  /** Through dovetails: ends run to the outer faces */
  dovetail = "dovetail",
  /** Sockets stop short of the outer face of the ends */
  half_blind_dovetail = "half-blind dovetail",
  /** Box (finger) joint: ends run to the outer faces */
  box_joint = "box joint",
}

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Gives the length of box front and back for the joint at the corners.
 * @customfunction
 * @group Boxes
 * @param {any} box_width Outside width of the box, more than 0
 * @param {any} side_thickness Thickness of the sides as measured, more than 0
 * @param {CornerJoint} [joint] butt (default), rabbet, dado, dovetail, half-blind dovetail or box joint
 * @param {any} [joint_depth] How deep a rabbet or dado is cut into the side: more than 0, less than its thickness
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Length of box front and back, in the unit
 * @throws #VALUE! where the sides leave nothing between them, or a rabbet or dado has no depth or goes through
 * @example =DRAWER.ENDLENGTH(17, 0.5) // => 16
 * @example =DRAWER.ENDLENGTH(17, "15/32", "rabbet", "1/4") // => 16.5625
 * @source common practice: W − 2t between the sides, plus twice what a rabbet or dado is deep
 */
export function ENDLENGTH(
  box_width: any,
  side_thickness: any,
  joint?: CornerJoint,
  joint_depth?: any,
  unit?: Unit,
): any {
  return call([box_width, side_thickness, joint, joint_depth, unit]);
}

const call = cellFunction(
  [length("box_width"), length("side_thickness"), cornerJoint("joint"), lengthIfGiven("joint_depth"), unit("unit")],
  ([width, side, joint, depth, unit]) => lengthResult(endLength(width, side, joint, depth).value, unit),
);
