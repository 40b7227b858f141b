import type { Rational } from "../length";
import { lengthOf, type Exact } from "./exact";
import type { Piece } from "./solution";

/**
 * Where a cut runs on the sheet as it is laid out: the edge of the piece that it sets free. `at` is up from the sheet's
 * lower edge for a rip and from its left edge for a crosscut, `from` and `to` are along it; `keeps` tells on which side
 * that piece lies.
 */
export interface CutLine {
  at: Rational;
  from: Rational;
  to: Rational;
  keeps: "before" | "after";
}

type Kind = "rip" | "crosscut";

/** One edge of a piece, within the piece that it is cut from. */
export function edgeLine(kind: Kind, piece: Piece, of: Piece, keeps: CutLine["keeps"], exact: Exact): CutLine {
  const [start, size] = kind === "rip" ? [piece.y, piece.width] : [piece.x, piece.length];
  const [from, length] = kind === "rip" ? [of.x, of.length] : [of.y, of.width];
  const at = keeps === "before" ? start + size : start;
  return { at: lengthOf(at, exact), from: lengthOf(from, exact), to: lengthOf(from + length, exact), keeps };
}
