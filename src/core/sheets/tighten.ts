import { isPlaced, TURNED, UPRIGHT, type Block, type Divided, type Draft, type Model, type SheetSize } from "./model";

/** Longer sums than these, in small units times pieces, take too long to work out. */
const MOST = 2e7;

/**
 * The same problem on sheets no larger than pieces laid end to end can fill: what is beyond can only be left over, and
 * without it bounds are higher and places are closer.
 */
export const tightened = (model: Model): Model => ({
  ...model,
  sizes: model.sizes.map((size, s) => ({
    ...size,
    w: reached(model, s, size.w, UPRIGHT),
    h: reached(model, s, size.h, TURNED),
  })),
});

/** Sums as bits: a piece more is a shift. */
function reached({ kinds, sizes, ways, pieces }: Model, size: number, length: number, wide: number): number {
  if (length * pieces > MOST) return length;
  const mask = (1n << BigInt(length + 1)) - 1n;
  const full = 1n << BigInt(length);
  let sums = 1n;
  for (let k = 0; k < kinds.length; k++) {
    const { w, h, count } = kinds[k]!;
    const way = ways[k * sizes.length + size]!;
    const along = [way & UPRIGHT ? (wide === UPRIGHT ? w : h) : 0, way & TURNED ? (wide === UPRIGHT ? h : w) : 0];
    for (let n = 0; n < count; n++) {
      sums = along.reduce((all, side) => (side > 0 ? all | (sums << BigInt(side)) : all), sums) & mask;
      if (sums & full) return length;
    }
  }
  return sums.toString(2).length - 1;
}

/** An answer on the sheets as they are: what was left out of account is left over. */
export const loosened = (draft: Draft, sizes: readonly SheetSize[]): Draft => ({
  ...draft,
  sheets: draft.sheets.map(({ size, root }) => ({ size, root: onSheet(root, sizes[size]!) })),
});

/** A block on a sheet of its own. */
export function onSheet(block: Block, { w, h }: Pick<SheetSize, "w" | "h">): Divided {
  const whole = grown(block, w, h);
  return isPlaced(whole) ? { w, h, axis: "x", blocks: [whole] } : whole;
}

/** A block with so much left beside it and above it that it is this large. */
export function grown<B extends Block>(block: B, w: number, h: number): B | Divided {
  if (block.w < w) return grown(longer(block, "x", w), w, h);
  return block.h < h ? longer(block, "y", h) : block;
}

function longer(block: Block, axis: "x" | "y", length: number): Divided {
  const size = axis === "x" ? { w: length, h: block.h } : { w: block.w, h: length };
  return { ...size, axis, blocks: !isPlaced(block) && block.axis === axis ? block.blocks : [block] };
}
