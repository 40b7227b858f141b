import { rowOf, type Part } from "./problem";
import type { Piece } from "./solution";

/** Whether the grain runs on from one neighbor to the next: both are of one row, and not of two copies of it. */
export function runsOn(parts: readonly Part[], piece: Piece, next: Piece): boolean {
  const [own, other] = [memberOf(piece), memberOf(next)];
  const group = parts[own ?? -1]?.grainGroup;
  if (group === undefined || other === undefined) return false;
  const order = rowOf(parts, group);
  return order.some((part, i) => part === own && order[i + 1] === other);
}

/** The part that a piece is, or that alone is cut from it with a strip beside it; a whole row is no member of one. */
export function memberOf({ part, cut }: Piece): number | undefined {
  if (part) return part.index;
  const into = cut?.into ?? [];
  const parts = into.flatMap((child) => child.part ?? []);
  return parts.length === 1 && into.every((child) => !child.cut) ? parts[0]!.index : undefined;
}
