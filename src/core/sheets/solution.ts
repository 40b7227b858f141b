import type { Rational } from "../length";
import type { Exact } from "./exact";
import type { Problem } from "./problem";

/** An answer as data: of each sheet the tree of cuts, in whole small units (`lengthOf` gives lengths). */
export interface Solution {
  problem: Problem;
  exact: Exact;
  sheets: readonly CutSheet[];
  least: Least;
  /** No answer costs less, and none of that cost has fewer sheets. */
  proven: boolean;
  /** It was not searched for as long as its effort asks, for there are so many parts. */
  isShort: boolean;
}

export interface CutSheet {
  /** The row of stock. */
  stock: number;
  /** The trimmed sheet. */
  piece: Piece;
}

/** What is no part and is not cut further is an offcut. */
export interface Piece {
  /** From the left and the lower edge of the untrimmed sheet, along its length and its width. */
  x: number;
  y: number;
  length: number;
  width: number;
  part?: { index: number; turned: boolean };
  cut?: Cut;
}

/** Edge-to-edge cuts in one direction: `rip` along the sheet's length, `crosscut` across it. */
export interface Cut {
  kind: "rip" | "crosscut";
  /** From the lower edge up, or from the left; a kerf lies between neighbors, and less than one may be lost at the end. */
  into: readonly Piece[];
}

/** Along which axis the pieces of a cut follow each other, which of their sides lies along it, and the other kind. */
export const WAYS = {
  crosscut: { at: "x", side: "length", other: "rip" },
  rip: { at: "y", side: "width", other: "crosscut" },
} as const;

/** What every answer needs at least, proven: sheets where there is one size, else cost, or area without prices. */
export interface Least {
  measure: "sheets" | "cost" | "area";
  value: Rational;
}

export const isOffcut = (piece: Piece): boolean => !piece.part && !piece.cut;

/** No offcut is kept of which no cut could take anything. */
export const isWaste = ({ length, width }: Piece, { kerf }: Pick<Exact, "kerf">): boolean =>
  Math.min(length, width) <= kerf;

/** A piece and all that are cut from it, each before its own. */
export function piecesOf(piece: Piece, all: Piece[] = []): Piece[] {
  all.push(piece);
  for (const child of piece.cut?.into ?? []) piecesOf(child, all);
  return all;
}
