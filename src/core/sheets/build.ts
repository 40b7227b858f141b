import type { Exact } from "./exact";
import { isPlaced, type Block, type Divided, type Draft, type Placed } from "./model";
import type { Member, Reduced } from "./reduce";
import { WAYS, type Cut, type CutSheet, type Piece } from "./solution";

/** Gives a draft its kerfs back, and its pieces their names, in the order of the parts. */
export function build(draft: Draft, { members }: Reduced, exact: Exact): CutSheet[] {
  const builder = new Builder(members, exact);
  const sheets = [...draft.sheets].sort((a, b) => a.size - b.size);
  return sheets.map(({ size, root }) => ({
    stock: size,
    piece: builder.piece(root, exact.trim, exact.trim),
  }));
}

class Builder {
  private readonly next: number[];

  constructor(
    private readonly members: readonly (readonly Member[])[],
    private readonly exact: Exact,
  ) {
    this.next = members.map(() => 0);
  }

  piece(block: Block, x: number, y: number): Piece {
    const { kerf } = this.exact;
    const whole = { x, y, length: block.w - kerf, width: block.h - kerf };
    return isPlaced(block) ? this.placed(block, whole) : this.divided(block, whole);
  }

  private divided({ axis, blocks }: Divided, whole: Piece): Piece {
    const { kerf } = this.exact;
    const along = (b: Block): number => (axis === "x" ? b.w : b.h);
    // Equal settings of the fence together, and the largest first.
    const sorted = [...blocks].sort((a, b) => along(b) - along(a));
    const slices = sorted.map((block) => ({ size: along(block) - kerf, gap: kerf }));
    return sliced(whole, axis === "x" ? "crosscut" : "rip", slices, ({ x, y }, i) => this.piece(sorted[i]!, x, y));
  }

  private placed({ kind, turned }: Placed, whole: Piece): Piece {
    const { lines, stacked } = this.members[kind]![this.next[kind]!++]!;
    const { kerf } = this.exact;
    const along = turned ? "rip" : "crosscut";
    const across = WAYS[along].other;
    // The other way round than it is meant to lie, a panel is turned, never mirrored.
    const isBack = turned !== stacked;
    const ordered = isBack ? [...lines].reverse() : lines;
    const strips = isBack ? ordered.map(({ size }, k) => ({ size, gap: ordered[k + 1]?.gap ?? kerf })) : lines;
    return sliced(whole, across, strips, (strip, k) =>
      sliced(strip, along, ordered[k]!.row, (slice, i) => {
        const { part, flipped, across: size } = ordered[k]!.row[i]!;
        // A part that is narrower than its line leaves a strip beside it.
        return sliced(slice, across, [{ size, gap: kerf }], (piece) => ({
          ...piece,
          part: { index: part, turned: flipped !== turned },
        }));
      }),
    );
  }
}

/** Slices of these sizes one after another, and what is left at the end; one that is as large as the whole is the whole. */
function sliced(
  whole: Piece,
  kind: Cut["kind"],
  slices: readonly { size: number; gap: number }[],
  piece: (slice: Piece, place: number) => Piece,
): Piece {
  const { at, side } = WAYS[kind];
  if (slices.length === 1 && slices[0]!.size === whole[side]) return piece(whole, 0);
  let from = whole[at];
  const into = slices.map(({ size, gap }, i) => {
    const slice = { ...whole, [at]: from, [side]: size };
    from += size + gap;
    return piece(slice, i);
  });
  const rest = whole[at] + whole[side] - from;
  if (rest > 0) into.push({ ...whole, [at]: from, [side]: rest });
  return { ...whole, cut: { kind, into } };
}
