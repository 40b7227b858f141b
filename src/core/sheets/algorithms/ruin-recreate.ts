import { BLOCK, CHILD, DEAD, Forest, KIND, NEXT, NONE, PARENT, SIZE, STRIDE } from "./forest";
import type { Meter } from "../meter";
import type { Draft, Model } from "../model";
import { Places } from "./places";
import { Random } from "./random";

/**
 * Ruin and recreate on guillotine trees, driven by a goal: the weight of the sheets must stay below that of the best
 * known answer, and pieces that then find no place wait outside. Each round takes subtrees off a few sheets, lets what
 * is left of a sheet be divided otherwise, and lays the waiting pieces where least is spoilt; late acceptance lets it
 * pass through worse states. A state in which nothing waits is a better answer, and sets the next goal.
 *
 * Method: after Gardeyn and Wauters, "A goal-driven ruin and recreate heuristic for the 2D variable-sized bin packing
 * problem with guillotine constraints", European Journal of Operational Research 301 (2022); cited from memory.
 * Limits: no answer is worse than the one it starts from; it proves nothing. Ignores the largest offcut.
 */
export function ruinAndRecreate(
  model: Model,
  start: Draft,
  options: { steps: number; least: number; below?: number; seed: number; meter: Meter },
): Draft {
  const search = new RuinAndRecreate(model, start, options.seed, memoryOf(options.steps), options.below);
  return search.run(options.steps, options.least, options.meter);
}

/** Ways looked at, on average, until one is passed over. */
const BLINK = 100;
/** The longer the search, the more slowly it may settle. */
const memoryOf = (steps: number): number => Math.ceil(Math.sqrt(steps) / 50);
/** Of a hundred rounds, those that ruin a few sheets only; and of how many sheets and how many nodes of each. */
const LOCAL = 95;
const SHEETS = 4;
const NODES = 4;
/** Of a hundred ruined sheets, those whose rests are gathered along them, and those with one rest given to a block. */
const TUCK = 30;
const GIVE = 20;
/** Of a hundred rounds, those that lay pieces in any order, and those by their longer sides; others go by area. */
const SHUFFLED = 10;
const BY_SIDE = 20;
/** In sheets: what a waiting piece counts beside its area, and what the squares of free areas count. */
const PIECE = 0.05;
const FREE = 0.1;

/** A meter's steps for a round, beside the rectangles that it looks at: small sheets have few of these, and many rounds. */
const ROUND = 50;

/** The same as a search that can be gone on with: what one run has found, the next starts from. */
export class RuinAndRecreate {
  private readonly random: Random;
  private readonly current: Forest;
  private readonly kept: Forest;
  private readonly places: Places;
  protected best: Draft;
  private readonly areas: Float64Array;
  private readonly unit: number;
  /** Nodes of the sheet in hand. */
  private readonly nodes: Int32Array;
  private count = 0;
  /** Waiting kinds, and what they are laid by. */
  private readonly order: Int32Array;
  private readonly keys: Float64Array;
  /** What the latest rounds came to, and the round in hand. */
  protected readonly history: Float64Array;
  protected round = 0;
  protected now = NaN;

  /**
   * @param memory rounds that a state is compared across: the more, the more slowly it settles
   * @param below the weight of an answer that is known otherwise: none but a lighter one is looked for
   */
  constructor(
    private readonly model: Model,
    start: Draft,
    seed: number,
    memory: number,
    protected below = Infinity,
  ) {
    this.random = new Random(seed);
    this.current = new Forest(model);
    this.kept = new Forest(model);
    this.places = new Places(this.current, this.random, BLINK);
    this.best = start;
    this.areas = Float64Array.from(model.kinds, ({ w, h }) => w * h);
    this.unit = model.sizes.reduce((most, { w, h }) => Math.max(most, w * h), 0);
    this.nodes = new Int32Array(this.current.data.length / STRIDE);
    this.order = new Int32Array(model.pieces);
    this.keys = new Float64Array(model.pieces);
    this.history = new Float64Array(memory);
    this.current.load(start);
  }

  run(steps: number, least: number, meter: Meter): Draft {
    const { current, kept, places, history } = this;
    const until = places.steps + steps;
    const before = places.steps;
    const first = this.round;
    const most = meter.left;
    if (Number.isNaN(this.now)) this.begin();
    for (; places.steps < until; this.round++) {
      if (places.steps - before + ROUND * (this.round - first) > most) {
        meter.isShort = true;
        break;
      }
      if (this.complete()) {
        this.best = current.draft();
        if (this.best.weight <= least) break;
        this.begin();
        continue;
      }
      if (current.crowded) {
        // Rare: begins again where there is room.
        current.load(this.best);
        this.begin();
      }
      this.ruin();
      this.recreate();
      const value = this.value();
      const late = this.round % history.length;
      if (value <= this.now || value <= history[late]!) {
        this.now = value;
        kept.copy(current);
      } else current.copy(kept);
      if (this.now < history[late]!) history[late] = this.now;
      this.settled?.(value);
    }
    meter.take(places.steps - before + ROUND * (this.round - first));
    return this.best;
  }

  /** Hears what each round came to. */
  protected settled?(value: number): void;

  /** Sets the goal below the best answer, and meets it. */
  protected begin(): void {
    const { best, current, kept, places } = this;
    if (best.waiting === 0) places.goal = Math.min(best.weight, this.below) - 1;
    while (current.weight > places.goal) current.remove(this.emptiest());
    this.recreate();
    this.now = this.value();
    this.history.fill(this.now);
    kept.copy(current);
  }

  private complete(): boolean {
    for (let kind = 0; kind < this.areas.length; kind++) if (this.current.waiting(kind) > 0) return false;
    return true;
  }

  /** The sheet that holds least for its weight. */
  private emptiest(): number {
    const { current, model } = this;
    const { data, end } = current;
    let worst = NONE;
    let least = Infinity;
    for (let node = current.nodes(0); node < end; node += STRIDE) {
      if (data[node + KIND] !== BLOCK || data[node + PARENT] !== NONE) continue;
      const filled = this.filled(node) / model.sizes[data[node + SIZE]!]!.weight;
      if (filled < least) {
        worst = node;
        least = filled;
      }
    }
    return worst;
  }

  private filled(node: number): number {
    const { data } = this.current;
    const kind = data[node + KIND]!;
    if (kind >= 0) return this.areas[kind >> 1]!;
    let area = 0;
    for (let child = data[node + CHILD]!; child !== NONE; child = data[child + NEXT]!) area += this.filled(child);
    return area;
  }

  /** Takes subtrees off one to a few sheets; seldom, off sheets everywhere. */
  private ruin(): void {
    const { current, random } = this;
    if (random.below(100) >= LOCAL) {
      for (let count = 1 + random.below(5); count > 0 && current.sheets > 0; count--) current.remove(this.anyNode());
      return;
    }
    for (let sheets = 1 + random.below(SHEETS); sheets > 0 && current.sheets > 0; sheets--) {
      const root = current.rootOf(this.anyNode());
      if (this.ruinSheet(root)) this.redivide(root);
    }
  }

  private anyNode(): number {
    const { current, random } = this;
    return current.liveFrom(random.below((current.end - current.nodes(0)) / STRIDE));
  }

  /** False where nothing is left of the sheet. */
  private ruinSheet(root: number): boolean {
    const { current, random } = this;
    this.gather(root);
    for (let count = 1 + random.below(NODES); count > 0; count--) {
      const node = this.nodes[random.below(this.count)]!;
      if (current.data[node + KIND] === DEAD) continue;
      current.remove(node);
      if (current.data[root + KIND] === DEAD) return false;
    }
    return true;
  }

  /** The same pieces on the sheet, and another division of what is left. */
  private redivide(root: number): void {
    const { current, random } = this;
    const coin = random.below(100);
    if (coin < TUCK) current.tuck(root);
    else if (coin < TUCK + GIVE) {
      this.gather(root);
      const node = this.nodes[random.below(this.count)]!;
      if (current.data[node + KIND] === BLOCK) current.give(node);
    }
  }

  private gather(root: number): void {
    this.count = 0;
    this.collect(root);
  }

  private collect(node: number): void {
    const { data } = this.current;
    this.nodes[this.count++] = node;
    if (data[node + KIND] !== BLOCK) return;
    for (let child = data[node + CHILD]!; child !== NONE; child = data[child + NEXT]!) this.collect(child);
  }

  private recreate(): void {
    const { current, places, random, model } = this;
    places.find();
    if (model.sizes.length > 1) places.sizeOrder = this.shuffledSizes();
    const rule = random.below(100);
    const { order, keys } = this;
    let waiting = 0;
    for (let kind = 0; kind < model.kinds.length; kind++) {
      for (let copies = current.waiting(kind); copies > 0; copies--) {
        const { w, h } = model.kinds[kind]!;
        const key = rule < SHUFFLED ? random.below(1024) : rule < SHUFFLED + BY_SIDE ? Math.max(w, h) : w * h;
        let at = waiting++;
        for (; at > 0 && keys[at - 1]! < key; at--) {
          order[at] = order[at - 1]!;
          keys[at] = keys[at - 1]!;
        }
        order[at] = kind;
        keys[at] = key;
      }
    }
    places.layAll(order, waiting);
  }

  private shuffledSizes(): number[] {
    const order = this.model.sizes.map((_, s) => s);
    for (let i = order.length - 1; i > 0; i--) {
      const j = this.random.below(i + 1);
      [order[i], order[j]] = [order[j]!, order[i]!];
    }
    return order;
  }

  /** Area that waits counts, each waiting piece a little more; free areas count the better, the larger they are. */
  private value(): number {
    let waiting = 0;
    for (let kind = 0; kind < this.areas.length; kind++) {
      const count = this.current.waiting(kind);
      if (count > 0) waiting += count * (this.areas[kind]! / this.unit + PIECE);
    }
    return waiting - FREE * this.places.squares(this.unit);
  }
}
