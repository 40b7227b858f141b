import { sideLength } from "../core/drawer";
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
 * Gives the length of the box sides for the joint at the corners.
 * @customfunction
 * @group Boxes
 * @param {any} box_depth Outside depth of the box, front to back, more than 0
 * @param {any} end_thickness Thickness of box front and back as measured, more than 0
 * @param {CornerJoint} [joint] butt (default), rabbet, dado, dovetail, half-blind dovetail or box joint
 * @param {any} [joint_depth] Socket depth of half-blind dovetails: more than 0, at most the end thickness
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any} Length of the sides, in the unit
 * @throws #VALUE! where the ends take all of the depth, or half-blind sockets have no depth or go through
 * @example =DRAWER.SIDELENGTH(22, 0.5) // => 22
 * @example =DRAWER.SIDELENGTH(21, "5/8", "half-blind dovetail", "3/8") // => 20.5
 * @source common practice: a half-blind socket leaves the lap of the end standing before it
 */
export function SIDELENGTH(
  box_depth: any,
  end_thickness: any,
  joint?: CornerJoint,
  joint_depth?: any,
  unit?: Unit,
): any {
  return call([box_depth, end_thickness, joint, joint_depth, unit]);
}

const call = cellFunction(
  [length("box_depth"), length("end_thickness"), cornerJoint("joint"), lengthIfGiven("joint_depth"), unit("unit")],
  ([depth, end, joint, socket, unit]) => lengthResult(sideLength(depth, end, joint, socket).value, unit),
);
