import { add, Fault, isPositive, less, subtract, times, type Rational } from "../length";
import type { CornerJoint } from "./words";

/**
 * Length of box front and back. Butted ends stand between the sides; ends in a rabbet or dado reach into them;
 * dovetailed and box-jointed ends run to the outer faces.
 * @param depth how far a rabbet or dado is cut into the side; other joints ignore it
 * @throws Fault `joint.depthMissing`, `joint.depthThrough` (as deep as the side, or deeper), `box.sidesThick`
 */
export function endLength(width: Rational, side: Rational, joint: CornerJoint, depth?: Rational): Rational {
  const between = subtract(width, times(2, side));
  if (!isPositive(between)) throw new Fault("box.sidesThick", { width, side });
  switch (joint) {
    case "butt":
      return between;
    case "rabbet":
    case "dado":
      if (!depth) throw new Fault("joint.depthMissing", { joint });
      if (!less(depth, side)) throw new Fault("joint.depthThrough", { joint, depth, side });
      return add(between, times(2, depth));
    default:
      return width;
  }
}

/**
 * Length of the sides: the box's depth, less what half-blind sockets leave standing of both ends.
 * @param socket how deep the sockets are cut into box front and back; other joints ignore it
 * @throws Fault `joint.socketMissing`, `joint.socketThrough`, `box.endsThick`
 */
export function sideLength(boxDepth: Rational, end: Rational, joint: CornerJoint, socket?: Rational): Rational {
  if (!less(times(2, end), boxDepth)) throw new Fault("box.endsThick", { depth: boxDepth, end });
  if (joint !== "half-blind dovetail") return boxDepth;
  if (!socket) throw new Fault("joint.socketMissing", {});
  if (less(end, socket)) throw new Fault("joint.socketThrough", { socket, end });
  return subtract(boxDepth, times(2, subtract(end, socket)));
}
