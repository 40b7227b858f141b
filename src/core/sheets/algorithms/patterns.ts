import { isPlaced, TURNED, UPRIGHT, type Block, type Divided, type DraftSheet, type Model } from "../model";

/** One filling of one sheet size. */
export interface Pattern {
  size: number;
  /** Pieces of each kind. */
  counts: Int32Array;
  root: Divided;
}

/** A piece as it may lie on a size, with what it is worth. `along` a strip and `across` it. */
interface Lying {
  kind: number;
  turned: boolean;
  along: number;
  across: number;
  worth: number;
}

/** Positions along a side are counted in at most so many steps; pieces are rounded up to them. */
const FINEST = 1536;

/**
 * The filling of a size whose pieces are worth most, by knapsacks: strips across the sheet, each as wide as its widest
 * pieces, filled along with pieces or with stacks of equal pieces. Both directions of strips are tried.
 *
 * Limits: three stages, stacks of one kind only. Ignores how many pieces of a kind are wanted.
 */
export class Patterns {
  /** Sums looked at, which is what effort is counted in. */
  steps = 0;

  constructor(private readonly model: Model) {}

  best(size: number, worth: ArrayLike<number>, stacks: boolean): { worth: number; pattern: Pattern } | undefined {
    const rows = this.strips(size, worth, stacks, "y");
    const columns = this.strips(size, worth, stacks, "x");
    const better = rows.worth >= columns.worth ? rows : columns;
    if (better.worth <= 0) return undefined;
    const root = better.build();
    const counts = new Int32Array(this.model.kinds.length);
    count(root, counts);
    return { worth: better.worth, pattern: { size, counts, root } };
  }

  /** As many of one kind as lie on a size in straight rows, the way that holds more: enough to begin a mix with. */
  alone(size: number, kind: number): { worth: number; pattern: Pattern } | undefined {
    const { w, h } = this.model.sizes[size]!;
    const grids = this.waysOf(size, kind).map((turned) => {
      const { w: upright, h: high } = this.model.kinds[kind]!;
      const [across, up] = turned ? [high, upright] : [upright, high];
      return { piece: { w: across, h: up, kind, turned }, columns: Math.floor(w / across), rows: Math.floor(h / up) };
    });
    this.steps += grids.length;
    const most = Math.max(0, ...grids.map(({ columns, rows }) => columns * rows));
    const grid = grids.find(({ columns, rows }) => columns * rows === most);
    if (!grid || most === 0) return undefined;
    const { piece, columns, rows } = grid;
    const row: Block = { w, h: piece.h, axis: "x", blocks: Array<Block>(columns).fill(piece) };
    const counts = new Int32Array(this.model.kinds.length);
    counts[kind] = most;
    const root: Divided = { w, h, axis: "y", blocks: Array<Block>(rows).fill(row) };
    return { worth: most, pattern: { size, counts, root } };
  }

  private waysOf(size: number, kind: number): boolean[] {
    const { sizes, ways } = this.model;
    const way = ways[kind * sizes.length + size]!;
    return [false, true].filter((turned) => way & (turned ? TURNED : UPRIGHT));
  }

  private strips(
    size: number,
    worth: ArrayLike<number>,
    stacks: boolean,
    axis: "x" | "y",
  ): { worth: number; build: () => Divided } {
    const { w, h } = this.model.sizes[size]!;
    const [long, wide] = axis === "y" ? [w, h] : [h, w];
    const pieces = this.lying(size, worth, axis);
    const strips: { across: number; worth: number }[] = [];
    const knapsack = new Knapsack(long);
    for (let p = 0; p < pieces.length; p++) {
      const { across } = pieces[p]!;
      if (stacks && (p === 0 || pieces[p - 1]!.across < across)) knapsack.clear();
      if (stacks && p + 1 < pieces.length && pieces[p + 1]!.across === across) continue;
      if (stacks)
        for (const q of pieces.slice(0, p + 1)) knapsack.add(q.along, q.worth * Math.floor(across / q.across));
      else knapsack.add(pieces[p]!.along, pieces[p]!.worth);
      if (p + 1 === pieces.length || pieces[p + 1]!.across > across) strips.push({ across, worth: knapsack.total });
    }
    const whole = new Knapsack(wide, true);
    strips.forEach((strip) => whole.add(strip.across, strip.worth));
    this.steps += knapsack.steps + whole.steps;
    return {
      worth: whole.total,
      build: () => ({
        w,
        h,
        axis,
        blocks: whole.chosen().map((s) => this.strip(strips[s]!.across, long, pieces, stacks, axis)),
      }),
    };
  }

  /** One strip, worked out again with its choices. */
  private strip(across: number, long: number, pieces: readonly Lying[], stacks: boolean, axis: "x" | "y"): Block {
    const knapsack = new Knapsack(long, true);
    const fitting = pieces.filter((piece) => piece.across <= across);
    const high = (piece: Lying): number => (stacks ? Math.floor(across / piece.across) : 1);
    fitting.forEach((piece) => knapsack.add(piece.along, piece.worth * high(piece)));
    const blocks = knapsack.chosen().map((p) => stack(fitting[p]!, high(fitting[p]!), across, axis));
    return axis === "y" ? { w: long, h: across, axis: "x", blocks } : { w: across, h: long, axis: "y", blocks };
  }

  /** All that may lie on a size, the narrowest across first. */
  private lying(size: number, worth: ArrayLike<number>, axis: "x" | "y"): Lying[] {
    const list: Lying[] = [];
    this.model.kinds.forEach(({ w, h, count: wanted }, kind) => {
      if (wanted === 0 || worth[kind]! <= 0) return;
      for (const turned of this.waysOf(size, kind)) {
        const flat = turned === (axis === "x");
        list.push({ kind, turned, along: flat ? w : h, across: flat ? h : w, worth: worth[kind]! });
      }
    });
    return list.sort((a, b) => a.across - b.across || a.along - b.along || a.kind - b.kind);
  }
}

function stack({ kind, turned, along, across: each }: Lying, high: number, across: number, axis: "x" | "y"): Block {
  const [w, h] = axis === "y" ? [along, each] : [each, along];
  const piece = { w, h, kind, turned };
  if (high === 1 && each === across) return piece;
  const blocks = Array<Block>(high).fill(piece);
  return axis === "y" ? { w: along, h: across, axis: "y", blocks } : { w: across, h: along, axis: "x", blocks };
}

/** Adds the pieces of a block to the counts of their kinds. */
export function count(block: Block, counts: Int32Array, each = 1): void {
  if (isPlaced(block)) counts[block.kind]! += each;
  else for (const child of block.blocks) count(child, counts, each);
}

/** How many of each kind lie on a sheet. */
export function countsOn({ kinds }: Model, { root }: DraftSheet): Int32Array {
  const counts = new Int32Array(kinds.length);
  count(root, counts);
  return counts;
}

/** The area of so many of each kind. */
export const areaOf = ({ kinds }: Model, counts: Int32Array): number =>
  counts.reduce((sum, n, k) => sum + n * kinds[k]!.w * kinds[k]!.h, 0);

/** The most that a length can hold of things that may be taken any number of times. */
class Knapsack {
  steps = 0;
  private readonly room: number;
  private readonly worths: Float64Array;
  private readonly choices: Int32Array | undefined;
  private readonly lengths: number[] = [];

  constructor(
    private readonly whole: number,
    remember = false,
  ) {
    this.room = Math.min(whole, FINEST);
    this.worths = new Float64Array(this.room + 1);
    this.steps = this.room;
    this.choices = remember ? new Int32Array(this.room + 1).fill(-1) : undefined;
  }

  get total(): number {
    return this.worths[this.room]!;
  }

  clear(): void {
    this.worths.fill(0);
  }

  /** `worths[x]` is the most that a length x holds, be it filled or not. */
  add(length: number, worth: number): void {
    const { worths, room, choices } = this;
    const steps = Math.ceil((length * room) / this.whole);
    const item = this.lengths.push(steps) - 1;
    this.steps += Math.max(0, room - steps) + 1;
    for (let x = steps; x <= room; x++) {
      const value = worths[x - steps]! + worth;
      if (value > worths[x]!) {
        worths[x] = value;
        if (choices) choices[x] = item;
      }
    }
  }

  /** The things taken. Needs a knapsack that remembers. */
  chosen(): number[] {
    const taken: number[] = [];
    for (let x = this.room; this.choices![x]! >= 0;) {
      const item = this.choices![x]!;
      taken.push(item);
      x -= this.lengths[item]!;
    }
    return taken;
  }
}

/** A filling with no more of any kind than are left, which it takes; none where nothing is left for it. */
export function take(block: Divided, left: Int32Array): Divided | undefined;
export function take(block: Block, left: Int32Array): Block | undefined;
export function take(block: Block, left: Int32Array): Block | undefined {
  if (isPlaced(block)) {
    if (left[block.kind]! === 0) return undefined;
    left[block.kind]!--;
    return block;
  }
  const blocks = block.blocks.flatMap((child) => take(child, left) ?? []);
  return blocks.length > 0 ? { ...block, blocks } : undefined;
}
