import { isPlaced, type Block, type Divided, type Draft, type DraftSheet, type Model } from "../model";

/**
 * Guillotine trees of all sheets in one array of whole numbers, so that a whole state is copied at once.
 *
 * A node is a piece, or a block whose children lie side by side along its axis, each as large as the block across it.
 * The order of children does not matter to what fits; so what is left of a block is always one rectangle, at its end.
 */
export class Forest {
  readonly data: Int32Array;
  /** Weight of the open sheets. */
  weight = 0;

  constructor(readonly model: Model) {
    this.data = new Int32Array(this.nodes(0) + (model.pieces * 12 + 64) * STRIDE);
    this.clear();
  }

  clear(): void {
    const { data, model } = this;
    data[TOP] = 0;
    data[FREE] = NONE;
    data[SHEETS] = 0;
    model.kinds.forEach((kind, k) => (data[HEADER + k] = kind.count));
    model.sizes.forEach((_, s) => (data[HEADER + model.kinds.length + s] = 0));
    this.weight = 0;
  }

  copy(from: Forest): void {
    this.data.set(from.data.subarray(0, from.end));
    this.weight = from.weight;
  }

  /** Where a node stands in the array. */
  nodes(index: number): number {
    return HEADER + this.model.kinds.length + this.model.sizes.length + index * STRIDE;
  }

  get end(): number {
    return this.nodes(this.data[TOP]!);
  }

  /** Blocks within blocks have taken up most of the room; one more round still finds enough. */
  get crowded(): boolean {
    return this.data[TOP]! > this.model.pieces * 8;
  }

  get sheets(): number {
    return this.data[SHEETS]!;
  }

  /** Pieces of a kind that lie on no sheet. */
  waiting(kind: number): number {
    return this.data[HEADER + kind]!;
  }

  opened(size: number): number {
    return this.data[HEADER + this.model.kinds.length + size]!;
  }

  open(size: number): number {
    const { w, h, weight } = this.model.sizes[size]!;
    const root = this.make(w, h, AXIS_X, size);
    this.data[root + PARENT] = NONE;
    this.data[SHEETS]!++;
    this.data[HEADER + this.model.kinds.length + size]!++;
    this.weight += weight;
    return root;
  }

  /**
   * Lays a piece into what is left of a block.
   * @param first the axis along which the piece is cut off first: across the whole rest of the other
   */
  insert(block: number, kind: number, turned: boolean, first: number): void {
    const { data } = this;
    const { w, h } = this.model.kinds[kind]!;
    const [pw, ph] = turned ? [h, w] : [w, h];
    const size = data[block + SIZE]!;
    if (data[block + CHILD] === NONE) data[block + AXIS] = first;
    const axis = data[block + AXIS]!;
    const used = data[block + USED]!;
    const restW = axis === AXIS_X ? data[block + W]! - used : data[block + W]!;
    const restH = axis === AXIS_X ? data[block + H]! : data[block + H]! - used;
    let host = block;
    if (axis !== first) {
      // The whole rest becomes a block of its own, divided along the other axis.
      host = this.make(restW, restH, first, size);
      this.link(block, host);
    }
    const across = first === AXIS_X ? restH : restW;
    const piece = this.make(pw, ph, AXIS_X, size);
    data[piece + KIND] = turned ? kind * 2 + 1 : kind * 2;
    data[HEADER + kind]!--;
    if ((first === AXIS_X ? ph : pw) === across) {
      this.link(host, piece);
      return;
    }
    const strip = first === AXIS_X ? this.make(pw, across, AXIS_Y, size) : this.make(across, ph, AXIS_X, size);
    this.link(strip, piece);
    this.link(host, strip);
  }

  /** Takes a node and all in it off its sheet; a sheet without pieces is closed. */
  remove(node: number): void {
    const { data } = this;
    const parent = data[node + PARENT]!;
    if (parent === NONE) {
      this.close(node);
      return;
    }
    this.unlink(node);
    this.free(node);
    if (data[parent + CHILD] === NONE) this.remove(parent);
    else this.tidy(parent);
  }

  /** One of the live nodes at or after a place, going round; there must be one. */
  liveFrom(index: number): number {
    const { data } = this;
    const top = data[TOP]!;
    for (let i = index; ; i = i + 1 === top ? 0 : i + 1) {
      const node = this.nodes(i);
      if (data[node + KIND] !== DEAD) return node;
    }
  }

  rootOf(node: number): number {
    const { data } = this;
    while (data[node + PARENT] !== NONE) node = data[node + PARENT]!;
    return node;
  }

  draft(): Draft {
    const sheets: DraftSheet[] = [];
    for (let node = this.nodes(0); node < this.end; node += STRIDE)
      if (this.data[node + KIND] === BLOCK && this.data[node + PARENT] === NONE)
        sheets.push({ size: this.data[node + SIZE]!, root: this.divided(node) });
    const waiting = this.model.kinds.reduce((area, { w, h }, k) => area + w * h * this.waiting(k), 0);
    return { weight: this.weight, waiting, sheets };
  }

  /** Takes over a draft's sheets. */
  load(draft: Draft): void {
    this.clear();
    for (const sheet of draft.sheets) this.loadSheet(sheet);
  }

  loadSheet(sheet: DraftSheet): void {
    const { axis, blocks } = sheet.root;
    const node = this.open(sheet.size);
    this.data[node + AXIS] = axis === "x" ? AXIS_X : AXIS_Y;
    for (const block of blocks) this.grow(node, block);
  }

  private grow(parent: number, block: Block): void {
    const size = this.data[parent + SIZE]!;
    if (isPlaced(block)) {
      const piece = this.make(block.w, block.h, AXIS_X, size);
      this.data[piece + KIND] = block.kind * 2 + (block.turned ? 1 : 0);
      this.data[HEADER + block.kind]!--;
      this.link(parent, piece);
      return;
    }
    const node = this.make(block.w, block.h, block.axis === "x" ? AXIS_X : AXIS_Y, size);
    for (const child of block.blocks) this.grow(node, child);
    this.link(parent, node);
  }

  private block(node: number): Block {
    const { data } = this;
    const [w, h, kind] = [data[node + W]!, data[node + H]!, data[node + KIND]!];
    return kind >= 0 ? { w, h, kind: kind >> 1, turned: (kind & 1) === 1 } : this.divided(node);
  }

  private divided(node: number): Divided {
    const { data } = this;
    const [w, h] = [data[node + W]!, data[node + H]!];
    const blocks: Block[] = [];
    for (let child = data[node + CHILD]!; child !== NONE; child = data[child + NEXT]!) blocks.push(this.block(child));
    return { w, h, axis: data[node + AXIS] === AXIS_X ? "x" : "y", blocks: blocks.reverse() };
  }

  private make(w: number, h: number, axis: number, size: number): number {
    const { data } = this;
    let node = data[FREE]!;
    if (node === NONE) {
      node = this.nodes(data[TOP]!++);
      if (node + STRIDE > data.length) throw new RangeError("The forest is full.");
    } else data[FREE] = data[node + NEXT]!;
    data[node + CHILD] = NONE;
    data[node + W] = w;
    data[node + H] = h;
    data[node + AXIS] = axis;
    data[node + USED] = 0;
    data[node + KIND] = BLOCK;
    data[node + SIZE] = size;
    return node;
  }

  private link(parent: number, node: number): void {
    const { data } = this;
    const head = data[parent + CHILD]!;
    data[node + PARENT] = parent;
    data[node + NEXT] = head;
    data[node + LAST] = NONE;
    if (head !== NONE) data[head + LAST] = node;
    data[parent + CHILD] = node;
    data[parent + USED]! += data[parent + AXIS] === AXIS_X ? data[node + W]! : data[node + H]!;
  }

  private unlink(node: number): void {
    const { data } = this;
    const [parent, next, last] = [data[node + PARENT]!, data[node + NEXT]!, data[node + LAST]!];
    if (last === NONE) data[parent + CHILD] = next;
    else data[last + NEXT] = next;
    if (next !== NONE) data[next + LAST] = last;
    data[parent + USED]! -= data[parent + AXIS] === AXIS_X ? data[node + W]! : data[node + H]!;
  }

  private close(root: number): void {
    const size = this.data[root + SIZE]!;
    this.free(root);
    this.data[SHEETS]!--;
    this.data[HEADER + this.model.kinds.length + size]!--;
    this.weight -= this.model.sizes[size]!.weight;
  }

  private free(node: number): void {
    const { data } = this;
    const kind = data[node + KIND]!;
    if (kind >= 0) data[HEADER + (kind >> 1)]!++;
    else
      for (let child = data[node + CHILD]!; child !== NONE;) {
        const next = data[child + NEXT]!;
        this.free(child);
        child = next;
      }
    this.bury(node);
  }

  private bury(node: number): void {
    this.data[node + KIND] = DEAD;
    this.data[node + NEXT] = this.data[FREE]!;
    this.data[FREE] = node;
  }

  /**
   * A block that holds one block of its own size is that block; its children join those of the block above. One that holds
   * a piece of its own size stays.
   */
  private tidy(node: number): void {
    const { data } = this;
    const only = data[node + CHILD]!;
    const parent = data[node + PARENT]!;
    if (data[only + NEXT] === NONE) {
      const length = data[node + AXIS] === AXIS_X ? data[node + W]! : data[node + H]!;
      if (data[node + USED] !== length || data[only + KIND]! >= 0) {
        this.shrink(node, parent);
        return;
      }
      const heir = parent === NONE ? node : parent;
      if (parent === NONE) {
        data[node + CHILD] = NONE;
        data[node + USED] = 0;
        data[node + AXIS] = data[only + AXIS]!;
      } else {
        this.unlink(node);
        this.bury(node);
      }
      for (let child = data[only + CHILD]!; child !== NONE;) {
        const next = data[child + NEXT]!;
        this.link(heir, child);
        child = next;
      }
      this.bury(only);
      this.tidy(heir);
      return;
    }
    this.shrink(node, parent);
  }

  /** Strips that are all longer than what lies in them give the excess back to the block above. */
  private shrink(node: number, parent: number): void {
    const { data } = this;
    if (parent === NONE) return;
    const across = data[node + AXIS] === AXIS_X ? H : W;
    const spare = this.spare(node, across);
    if (spare === 0) return;
    data[node + across]! -= spare;
    data[parent + USED]! -= spare;
    for (let child = data[node + CHILD]!; child !== NONE; child = data[child + NEXT]!) data[child + across]! -= spare;
  }

  /** How much all children of a block could do without, across it. */
  private spare(node: number, across: number): number {
    const { data } = this;
    let spare = data[node + across]!;
    for (let child = data[node + CHILD]!; child !== NONE; child = data[child + NEXT]!) {
      if (data[child + KIND]! >= 0) return 0;
      const rest = data[child + across]! - data[child + USED]!;
      if (rest < spare) spare = rest;
    }
    return spare;
  }

  /** The same pieces, with what is left of each strip of a sheet gathered in one strip along all of them. */
  tuck(root: number): void {
    const { data } = this;
    const axis = data[root + AXIS]!;
    const across = axis === AXIS_X ? H : W;
    const spare = this.spare(root, across);
    if (spare === 0) return;
    const block = this.make(data[root + W]!, data[root + H]!, axis, data[root + SIZE]!);
    data[block + across]! -= spare;
    for (let child = data[root + CHILD]!; child !== NONE;) {
      const next = data[child + NEXT]!;
      data[child + across]! -= spare;
      this.link(block, child);
      child = next;
    }
    data[root + CHILD] = NONE;
    data[root + USED] = 0;
    data[root + AXIS] = 1 - axis;
    this.link(root, block);
  }

  /** The same pieces, with what is left of a block given to the strips of one block in it. */
  give(block: number): void {
    const { data } = this;
    const parent = data[block + PARENT]!;
    if (parent === NONE || data[TOP]! > this.model.pieces * 4) return;
    const across = data[block + AXIS] === AXIS_X ? H : W;
    const rest = data[parent + across]! - data[parent + USED]!;
    if (rest === 0) return;
    data[block + across]! += rest;
    data[parent + USED]! += rest;
    for (let child = data[block + CHILD]!; child !== NONE;) {
      const next = data[child + NEXT]!;
      if (data[child + KIND]! < 0) data[child + across]! += rest;
      else {
        const strip = this.make(data[child + W]!, data[child + H]!, 1 - data[block + AXIS]!, data[block + SIZE]!);
        data[strip + across]! += rest;
        this.unlink(child);
        this.link(strip, child);
        this.link(block, strip);
      }
      child = next;
    }
    const only = data[parent + CHILD]!;
    if (data[only + NEXT] === NONE) this.tidy(parent);
  }
}

export const NONE = -1;
const TOP = 0;
const FREE = 1;
const SHEETS = 2;
const HEADER = 3;

/** Fields of a node. */
export const PARENT = 0;
export const CHILD = 1;
export const NEXT = 2;
const LAST = 3;
export const W = 4;
export const H = 5;
export const AXIS = 6;
export const USED = 7;
/** Twice the kind of a piece, and one more where it is turned. */
export const KIND = 8;
export const SIZE = 9;
export const STRIDE = 10;

export const BLOCK = -1;
export const DEAD = -2;

export const AXIS_X = 0;
export const AXIS_Y = 1;
