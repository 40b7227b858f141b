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

/**
 * On which side of its line a piece lies. Each is cut off at its far edge, but where nothing is left beyond the farthest:
 * then those beyond the piece that is left over are cut off at their near edges, so that no two cuts share a line.
 * @param last what is cut off last, or left over
 */
export function sideKept(kind: Kind, kept: Piece, last: Piece, of: Piece): CutLine["keeps"] {
  const start = (piece: Piece): number => (kind === "rip" ? piece.y : piece.x);
  const end = (piece: Piece): number => start(piece) + (kind === "rip" ? piece.width : piece.length);
  const isFilled = of.cut!.into.some((piece) => end(piece) === end(of));
  return isFilled && start(kept) > start(last) ? "after" : "before";
}
