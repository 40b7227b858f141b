import { add, Fault, isPositive, less, times, ZERO, type Rational } from "../length";
import { minus, plus, sum, type Size } from "./size";
import type { CornerJoint } from "./words";

/**
 * Length of box front and back. Butted ends stand between the sides; ends in a rabbet or dado reach into them;
 * dovetailed and box-jointed ends run to the outer faces.
 * @param depth how far a rabbet or dado is cut into the side; other joints ignore it
 * @throws Fault `joint.depthMissing`, `joint.depthThrough` (as deep as the side, or deeper), `box.sidesThick`
 */
export function endLength(width: Rational, side: Rational, joint: CornerJoint, depth?: Rational): Size {
  insideWidth(width, side);
  const whole = plus("box width", width);
  const sides = minus("side thickness", side, 2);
  switch (joint) {
    case "butt":
      return sum(whole, sides);
    case "rabbet":
    case "dado":
      if (!depth) throw new Fault("joint.depthMissing", { joint });
      if (!less(depth, side)) throw new Fault("joint.depthThrough", { joint, depth, side });
      return sum(whole, sides, plus(`${joint} depth`, depth, 2));
    default:
      return sum(whole);
  }
}

/**
 * Length of the sides: the box's depth, less what half-blind sockets leave standing of both ends.
 * @param socket how deep the sockets are cut into box front and back; other joints ignore it
 * @throws Fault `joint.socketMissing`, `joint.socketThrough`, `box.endsThick`
 */
export function sideLength(depth: Rational, end: Rational, joint: CornerJoint, socket?: Rational): Size {
  insideDepth(depth, end);
  if (joint !== "half-blind dovetail") return sum(plus("box depth", depth));
  const deep = checkSocket(end, socket);
  return sum(plus("box depth", depth), minus("end thickness", end, 2), plus("socket depth", deep, 2));
}

/** Clear width between the sides. @throws Fault `box.sidesThick` */
export function insideWidth(width: Rational, side: Rational): Size {
  const inside = sum(plus("box width", width), minus("side thickness", side, 2));
  if (!isPositive(inside.value)) throw new Fault("box.sidesThick", { width, side, both: times(2, side) });
  return inside;
}

/**
 * Clear depth between box front and back.
 * @param inset how far both stand in from the sides' ends
 * @throws Fault `box.endsThick`
 */
export function insideDepth(depth: Rational, end: Rational, inset: Rational = ZERO): Size {
  const inside = sum(plus("box depth", depth), minus("end thickness", end, 2), minus("dado inset", inset, 2));
  if (!isPositive(inside.value)) throw new Fault("box.endsThick", { depth, end, both: times(2, add(end, inset)) });
  return inside;
}

/** Checks that sockets of that depth can be cut into an end. @throws Fault `joint.socketMissing`, `joint.socketThrough` */
export function checkSocket(end: Rational, socket?: Rational): Rational {
  if (!socket) throw new Fault("joint.socketMissing", {});
  if (less(end, socket)) throw new Fault("joint.socketThrough", { socket, end });
  return socket;
}
