import type { Rational } from "../length";
import type { SawCut } from "./cuts";
import { lengthOf, type Exact } from "./exact";

/**
 * Where a cut runs on the sheet as it is laid out: the edge of the piece that it sets free. `at` is up from the sheet's
 * lower edge for a rip and from its left edge for a crosscut, `from` and `to` are along it.
 */
export function cutLine({ kind, frees }: SawCut, exact: Exact): Record<"at" | "from" | "to", Rational> {
  const { piece, of, keeps } = frees;
  const [start, size] = kind === "rip" ? [piece.y, piece.width] : [piece.x, piece.length];
  const [from, length] = kind === "rip" ? [of.x, of.length] : [of.y, of.width];
  const at = keeps === "before" ? start + size : start;
  return { at: lengthOf(at, exact), from: lengthOf(from, exact), to: lengthOf(from + length, exact) };
}
