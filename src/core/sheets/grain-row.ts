import type { Exact } from "./exact";
import { linesOf } from "./problem";
import { piecesOf, type Piece, type Solution } from "./solution";

/** How far a line of a panel lies from the next: as far as any of its parts wants. */
export const gapAfter = (line: readonly number[], { lineGaps }: Exact): number =>
  Math.max(...line.map((part) => lineGaps[part]!));

/**
 * How far apart two neighbors lie so that the grain runs on: they are of one line of a group, and not of two copies of
 * it, or two lines of one panel. Undefined where it does not run on.
 */
export function apart({ problem: { parts }, exact }: Solution, piece?: Piece, next?: Piece): number | undefined {
  const group = parts[firstOf(piece) ?? -1]?.grainGroup;
  if (group === undefined || !piece || !next) return undefined;
  const lines = linesOf(parts, group);
  const [own, other] = [membersOf(piece), membersOf(next)];
  if (lines.some((line) => `,${line},`.includes(`,${own},${other},`))) return exact.gaps[own[own.length - 1]!];
  const [a, b] = [own, other].map((of) => lines.findIndex((line) => `${line}` === `${of}`)) as [number, number];
  // A panel that lies turned has its lines the other way round.
  const first = lines[Math.min(a, b)];
  return first && Math.abs(a - b) === 1 ? gapAfter(first, exact) : undefined;
}

/** Looked for before all are gathered: most pieces are of no group. */
const firstOf = (piece?: Piece): number | undefined => piece && (piece.part?.index ?? firstOf(piece.cut?.into[0]));

const membersOf = (piece: Piece): number[] => piecesOf(piece).flatMap(({ part }) => part?.index ?? []);
