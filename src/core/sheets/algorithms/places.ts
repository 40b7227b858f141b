import { AXIS, AXIS_X, AXIS_Y, BLOCK, CHILD, H, KIND, NONE, SIZE, STRIDE, USED, W, type Forest } from "./forest";
import { TURNED, UPRIGHT, type Model } from "../model";
import type { Random } from "./random";

/**
 * The free rectangles of a forest, and how a piece is laid into the one where least is spoilt: where the squares of the
 * free areas lose least, so that a piece goes into the closest hole and leaves one large rest rather than two middling.
 */
export class Places {
  /** Rectangles looked at, which is what effort is counted in. */
  steps = 0;
  /** No sheet is opened that would take the forest's weight above it. */
  goal = Infinity;
  /** The order in which sizes are tried for a new sheet. */
  sizeOrder: readonly number[];

  private count = 0;
  private readonly nodes: Int32Array;
  private readonly widths: Int32Array;
  private readonly heights: Int32Array;
  /** Squares of the areas. */
  private readonly wholes: Float64Array;
  private readonly sizes: Int32Array;
  private readonly model: Model;
  /** The thinnest piece: what is thinner than it is of no use. */
  private readonly thinnest: number;
  /** Kinds that may lie turned on some size. */
  private readonly turns: Uint8Array;
  /** The weight of the lightest size. */
  private readonly lightest: number;
  /** The place found, how a piece is to lie in it and be cut off, and what that spoils. */
  private slot = NONE;
  private turned = false;
  private first = AXIS_X;
  private least = Infinity;
  /** Ways still to be looked at until one is passed over unseen. */
  private untilBlink = Infinity;

  /** @param blink how many ways, on average, are looked at before one is passed over; none is where it is 0 */
  constructor(
    readonly forest: Forest,
    private readonly random: Random,
    private readonly blink: number,
  ) {
    const { model } = forest;
    const room = forest.data.length / STRIDE;
    this.model = model;
    this.nodes = new Int32Array(room);
    this.widths = new Int32Array(room);
    this.heights = new Int32Array(room);
    this.wholes = new Float64Array(room);
    this.turns = Uint8Array.from(model.kinds, (_, k) =>
      model.sizes.some((_size, s) => model.ways[k * model.sizes.length + s]! & TURNED) ? 1 : 0,
    );
    this.sizes = new Int32Array(room);
    this.thinnest = model.kinds.reduce((least, { w, h }) => Math.min(least, w, h), Infinity);
    this.lightest = model.sizes.reduce((least, { weight }) => Math.min(least, weight), Infinity);
    this.sizeOrder = model.sizes.map((_, s) => s);
    if (blink > 0) this.untilBlink = 1 + random.below(2 * blink);
  }

  /** Looks for the free rectangles anew. */
  find(): void {
    const { forest } = this;
    const { data, end } = forest;
    this.count = 0;
    const { thinnest } = this;
    for (let node = forest.nodes(0); node < end; node += STRIDE) {
      if (data[node + KIND] !== BLOCK) continue;
      const used = data[node + USED]!;
      const alongX = data[node + AXIS] === AXIS_X;
      const w = data[node + W]! - (alongX ? used : 0);
      const h = data[node + H]! - (alongX ? 0 : used);
      if (((w - thinnest) | (h - thinnest)) >= 0) this.add(node, w, h);
    }
    this.steps += (end - forest.nodes(0)) / (4 * STRIDE);
  }

  /** Whether a sheet may be opened: most of the time none. */
  private get mayOpen(): boolean {
    return this.forest.weight + this.lightest <= this.goal;
  }

  /** Lays one piece after another. Those that wait when nothing more can be laid count as if each had been tried. */
  layAll(kinds: Int32Array, count: number): void {
    for (let i = 0; i < count; i++) {
      if (this.count === 0 && !this.mayOpen) {
        this.steps += LAY * (count - i);
        return;
      }
      this.lay(kinds[i]!);
    }
  }

  /** Lays a piece where least is spoilt, or on a new sheet; false where neither can be. */
  lay(kind: number): boolean {
    const { w, h } = this.model.kinds[kind]!;
    this.slot = NONE;
    this.least = Infinity;
    this.look(kind, w, h, false);
    if (w !== h && this.turns[kind]) this.look(kind, h, w, true);
    this.steps += this.count + LAY;
    const { slot } = this;
    if (slot < 0) return this.layOnNew(kind);
    const node = this.nodes[slot]!;
    this.drop(slot);
    this.put(node, kind, this.turned, this.first);
    return true;
  }

  private look(kind: number, pw: number, ph: number, turned: boolean): void {
    const { widths, heights, wholes, sizes, count } = this;
    const { ways } = this.model;
    const row = kind * this.model.sizes.length;
    const way = turned ? TURNED : UPRIGHT;
    let { least, untilBlink } = this;
    for (let s = 0; s < count; s++) {
      const lw = widths[s]!;
      const lh = heights[s]!;
      const beside = lw - pw;
      const above = lh - ph;
      // Few places are large enough: one test for both sides is guessed right most of the time.
      if ((beside | above) < 0 || !(ways[row + sizes[s]!]! & way)) continue;
      if (--untilBlink === 0) {
        untilBlink = 1 + this.random.below(2 * this.blink);
        continue;
      }
      // The better of the two ways to divide the rest, without working out both.
      const acrossX = beside * (lh + ph) >= above * (lw + pw);
      const large = acrossX ? beside * lh : above * lw;
      const small = acrossX ? pw * above : ph * beside;
      const spoilt = wholes[s]! - large * large - small * small;
      if (spoilt < least) {
        this.slot = s;
        this.first = acrossX ? AXIS_X : AXIS_Y;
        this.turned = turned;
        least = spoilt;
      }
    }
    this.least = least;
    this.untilBlink = untilBlink;
  }

  /** The sum of the squares of what is free, in areas of `unit`. */
  squares(unit: number): number {
    let sum = 0;
    for (let s = 0; s < this.count; s++) sum += this.wholes[s]!;
    return sum / (unit * unit);
  }

  private layOnNew(kind: number): boolean {
    const { forest, model, random } = this;
    if (!this.mayOpen) return false;
    const { w: kw, h: kh } = model.kinds[kind]!;
    for (const size of this.sizeOrder) {
      const { w, h, weight, available } = model.sizes[size]!;
      const way = model.ways[kind * model.sizes.length + size]!;
      if (way === 0 || forest.weight + weight > this.goal || forest.opened(size) >= available) continue;
      const turned = way === TURNED || (way !== UPRIGHT && this.blink > 0 && random.below(2) === 1);
      const [pw, ph] = turned ? [kh, kw] : [kw, kh];
      const x = (w - pw) * h * ((w - pw) * h) + pw * (h - ph) * (pw * (h - ph));
      const y = w * (h - ph) * (w * (h - ph)) + (w - pw) * ph * ((w - pw) * ph);
      this.put(forest.open(size), kind, turned, x >= y ? AXIS_X : AXIS_Y);
      return true;
    }
    return false;
  }

  private put(block: number, kind: number, turned: boolean, first: number): void {
    const { forest } = this;
    const { data } = forest;
    forest.insert(block, kind, turned, first);
    this.offer(block);
    // The strip, or the new block and the strip in it, are the latest children.
    const newest = data[block + CHILD]!;
    if (data[newest + KIND] !== BLOCK) return;
    this.offer(newest);
    const inner = data[newest + CHILD]!;
    if (data[inner + KIND] === BLOCK) this.offer(inner);
  }

  private offer(block: number): void {
    const { data } = this.forest;
    let w = data[block + W]!;
    let h = data[block + H]!;
    if (data[block + AXIS] === AXIS_X) w -= data[block + USED]!;
    else h -= data[block + USED]!;
    if (w >= this.thinnest && h >= this.thinnest) this.add(block, w, h);
  }

  private add(block: number, w: number, h: number): void {
    const slot = this.count++;
    this.nodes[slot] = block;
    this.widths[slot] = w;
    this.heights[slot] = h;
    this.wholes[slot] = w * h * (w * h);
    this.sizes[slot] = this.forest.data[block + SIZE]!;
  }

  private drop(slot: number): void {
    const last = --this.count;
    this.nodes[slot] = this.nodes[last]!;
    this.widths[slot] = this.widths[last]!;
    this.heights[slot] = this.heights[last]!;
    this.wholes[slot] = this.wholes[last]!;
    this.sizes[slot] = this.sizes[last]!;
  }
}

/** Steps of laying a piece, beside the rectangles that are looked at for it. */
const LAY = 4;
