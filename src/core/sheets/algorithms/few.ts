import { isPlaced, TURNED, UPRIGHT, type Block, type Divided, type Draft, type DraftSheet, type Model } from "../model";
import { grown, onSheet } from "../tighten";

/** From more pieces than these on, everything is too much to try. */
const FEW = 6;

export const isFew = ({ pieces }: Model): boolean => pieces <= FEW;

/**
 * The lightest answer for a few pieces, proven by trying everything: for each set of pieces and each width the least
 * height that they can be cut from, edge to edge; then every way to share the pieces out among sheets.
 *
 * Method: a least height is that of two sets one above the other, or of two side by side at the widths that pieces laid
 * end to end can reach. Of equal weights the one that leaves most of one sheet. Limits: so few pieces only. Ignores
 * how what is left lies together.
 * @param model of few pieces, as `isFew` tells
 * @returns nothing where limited stock does not suffice
 */
export function everything(model: Model): Draft | undefined {
  const pieces = model.kinds.flatMap(({ count }, kind) => Array.from({ length: count }, () => kind));
  const all = (1 << pieces.length) - 1;
  const heights = model.sizes.map((_, size) => new LeastHeights(model, size, pieces));
  const fits = (set: number, size: number): boolean => {
    const { w, h } = model.sizes[size]!;
    return freeOf({ set, size }) >= 0 && heights[size]!.of(set, w) <= h;
  };
  const used = model.sizes.map(() => 0);
  let best: Share | undefined;
  share(all, 0, []);
  if (!best) return undefined;
  const sheets = best.sets.map(({ set, size }): DraftSheet => ({ size, root: heights[size]!.sheet(set) }));
  return { weight: best.weight, waiting: 0, sheets };

  function freeOf({ set, size }: Share["sets"][number]): number {
    const area = pieces.reduce((sum, k, i) => (set & (1 << i) ? sum + model.kinds[k]!.w * model.kinds[k]!.h : sum), 0);
    return model.sizes[size]!.w * model.sizes[size]!.h - area;
  }

  /** The lowest piece that is left goes with each set of others, on each size. */
  function share(left: number, weight: number, sets: Share["sets"]): void {
    if (left === 0) {
      const free = Math.max(...sets.map(freeOf));
      if (!best || weight < best.weight || free > best.free) best = { weight, free, sets };
      return;
    }
    const lowest = left & -left;
    for (let with_ = left ^ lowest; ; with_ = (with_ - 1) & (left ^ lowest)) {
      const set = lowest | with_;
      model.sizes.forEach((size, s) => {
        const sum = weight + size.weight;
        if ((best && sum > best.weight) || used[s]! >= size.available || !fits(set, s)) return;
        used[s]!++;
        share(left ^ set, sum, [...sets, { set, size: s }]);
        used[s]!--;
      });
      if (with_ === 0) return;
    }
  }
}

interface Share {
  weight: number;
  /** The most that is left of one sheet. */
  free: number;
  sets: { set: number; size: number }[];
}

/** How a set comes by its least height at a width. */
interface Way {
  height: number;
  /** One part of the set, and along which axis it lies before the other; none where the set is one piece. */
  first?: number;
  axis?: "x" | "y";
  /** The width of the first part, where they lie side by side. */
  at?: number;
  turned?: boolean;
}

class LeastHeights {
  private readonly known = new Map<number, Way>();
  private readonly widths = new Map<number, number[]>();

  constructor(
    private readonly model: Model,
    private readonly size: number,
    private readonly pieces: readonly number[],
  ) {}

  of(set: number, width: number): number {
    return this.way(set, width).height;
  }

  private way(set: number, width: number): Way {
    const taken = this.taken(set, width);
    const key = set * 2 ** 32 + taken;
    let way = this.known.get(key);
    if (!way) {
      way = (set & (set - 1)) === 0 ? this.alone(set, taken) : this.apart(set, taken);
      this.known.set(key, way);
    }
    return way;
  }

  /** What a set can make use of, of a width. */
  private taken(set: number, width: number): number {
    const sums = this.reaches(set);
    let [low, high] = [0, sums.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sums[middle]! <= width) low = middle + 1;
      else high = middle;
    }
    return low === 0 ? 0 : sums[low - 1]!;
  }

  private alone(set: number, width: number): Way {
    const kind = this.pieces[31 - Math.clz32(set)]!;
    const { w, h } = this.model.kinds[kind]!;
    const ways = this.model.ways[kind * this.model.sizes.length + this.size]!;
    const upright = ways & UPRIGHT && w <= width ? h : Infinity;
    const turned = ways & TURNED && h <= width ? w : Infinity;
    return { height: Math.min(upright, turned), turned: turned < upright };
  }

  private apart(set: number, width: number): Way {
    let best: Way = { height: Infinity };
    if (width === 0) return best;
    const lowest = set & -set;
    for (let first = (set - 1) & set; first > 0; first = (first - 1) & set) {
      const second = set ^ first;
      // Which of two parts lies below makes no difference.
      if (first & lowest) {
        const height = this.of(first, width) + this.of(second, width);
        if (height < best.height) best = { height, first, axis: "y" };
      }
      for (const at of this.reaches(first)) {
        if (at >= width) break;
        const height = this.of(first, at);
        if (height >= best.height) continue;
        const beside = Math.max(height, this.of(second, width - at));
        if (beside < best.height) best = { height: beside, first, axis: "x", at };
      }
    }
    return best;
  }

  /** The widths that pieces of a set laid end to end can reach, from the least. */
  private reaches(set: number): number[] {
    let sums = this.widths.get(set);
    if (!sums) {
      const found = new Set([0]);
      this.pieces.forEach((kind, i) => {
        if (!(set & (1 << i))) return;
        const { w, h } = this.model.kinds[kind]!;
        const ways = this.model.ways[kind * this.model.sizes.length + this.size]!;
        for (const sum of [...found]) {
          if (ways & UPRIGHT) found.add(sum + w);
          if (ways & TURNED) found.add(sum + h);
        }
      });
      found.delete(0);
      this.widths.set(set, (sums = [...found].sort((a, b) => a - b)));
    }
    return sums;
  }

  /** A whole sheet with a set of pieces. */
  sheet(set: number): Divided {
    const size = this.model.sizes[this.size]!;
    return onSheet(this.block(set, size.w), size);
  }

  /** A set of pieces within a width, in a block as large as they need. */
  private block(set: number, width: number): Block {
    const taken = this.taken(set, width);
    const { first, axis, at, turned } = this.way(set, taken);
    if (first === undefined) return this.piece(set, turned!);
    const along = axis === "x";
    const pair = [this.block(first, along ? at! : taken), this.block(set ^ first, along ? taken - at! : taken)];
    const [w, h] = along ? [sum(pair, "w"), most(pair, "h")] : [most(pair, "w"), sum(pair, "h")];
    const blocks = pair.flatMap((part) => {
      const whole = along ? grown(part, part.w, h) : grown(part, w, part.h);
      return !isPlaced(whole) && whole.axis === axis ? whole.blocks : [whole];
    });
    return { w, h, axis: axis!, blocks };
  }

  private piece(set: number, turned: boolean): Block {
    const kind = this.pieces[31 - Math.clz32(set)]!;
    const { w, h } = this.model.kinds[kind]!;
    return turned ? { w: h, h: w, kind, turned } : { w, h, kind, turned };
  }
}

const sum = (blocks: readonly Block[], side: "w" | "h"): number => blocks.reduce((all, block) => all + block[side], 0);
const most = (blocks: readonly Block[], side: "w" | "h"): number => Math.max(...blocks.map((block) => block[side]));
