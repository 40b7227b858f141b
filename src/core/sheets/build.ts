import type { Exact } from "./exact";
import { isPlaced, type Block, type Divided, type Draft, type Placed } from "./model";
import type { Member, Reduced } from "./reduce";
import type { CutSheet, Piece } from "./solution";

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
    return isPlaced(block) ? this.placed(block, x, y) : this.divided(block, x, y);
  }

  private divided(block: Divided, x: number, y: number): Piece {
    const { kerf } = this.exact;
    const along = (b: Block): number => (block.axis === "x" ? b.w : b.h);
    // Equal settings of the fence together, and the largest first.
    const blocks = [...block.blocks].sort((a, b) => along(b) - along(a));
    let used = 0;
    const into: Piece[] = [];
    for (const child of blocks) {
      into.push(block.axis === "x" ? this.piece(child, x + used, y) : this.piece(child, x, y + used));
      used += along(child);
    }
    const rest = along(block) - used;
    if (into.length === 1 && rest === 0) return into[0]!;
    const whole = { x, y, length: block.w - kerf, width: block.h - kerf };
    if (rest > kerf)
      into.push(
        block.axis === "x"
          ? { ...whole, x: x + used, length: rest - kerf }
          : { ...whole, y: y + used, width: rest - kerf },
      );
    return { ...whole, cut: { kind: block.axis === "x" ? "crosscut" : "rip", into } };
  }

  private placed({ kind, turned, w, h }: Placed, x: number, y: number): Piece {
    const { row } = this.members[kind]![this.next[kind]!++]!;
    const { kerf } = this.exact;
    const whole = { x, y, length: w - kerf, width: h - kerf };
    if (row.length === 1) return { ...whole, part: { index: row[0]!.part, turned: row[0]!.flipped !== turned } };
    return { ...whole, cut: { kind: turned ? "rip" : "crosscut", into: this.row(row, whole, turned) } };
  }

  /** The parts of a row one after another; those that are narrower than the row leave a strip beside them. */
  private row(row: Member["row"], whole: Piece, turned: boolean): Piece[] {
    const { kerf, parts, gaps } = this.exact;
    let at = turned ? whole.y : whole.x;
    return row.map(({ part, flipped }) => {
      const across = flipped !== turned;
      const length = across ? parts[part]!.width : parts[part]!.length;
      const width = across ? parts[part]!.length : parts[part]!.width;
      const slice = turned
        ? { x: whole.x, y: at, length: whole.length, width }
        : { x: at, y: whole.y, length, width: whole.width };
      at += (turned ? width : length) + gaps[part]!;
      const piece = { x: slice.x, y: slice.y, length, width, part: { index: part, turned: across } };
      if (slice.length === length && slice.width === width) return piece;
      const into: Piece[] = [piece];
      if (turned && slice.length - length > kerf)
        into.push({ ...slice, x: slice.x + length + kerf, length: slice.length - length - kerf });
      if (!turned && slice.width - width > kerf)
        into.push({ ...slice, y: slice.y + width + kerf, width: slice.width - width - kerf });
      return { ...slice, cut: { kind: turned ? "crosscut" : "rip", into } };
    });
  }
}
