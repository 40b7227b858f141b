import { SUMS, type Meter } from "../meter";
import { weightOf, type Draft, type DraftSheet, type Model } from "../model";
import { areaOf, Patterns, take, type Pattern } from "./patterns";
import { Simplex } from "./simplex";

/**
 * Column generation for many equal parts: a linear program mixes fillings of sheets, knapsacks find the filling that
 * is worth most at its prices, and so on until none is worth more than it costs. Whole numbers of each filling are
 * kept; what the fractions held is returned as waiting, for another algorithm to lay.
 *
 * Method: Gilmore and Gomory (1965), cited from memory. Limits: fillings of up to three stages; sizes that are limited in number are not
 * used. Ignores kinds of which so few are wanted that no filling repeats.
 * @returns nothing where every size is limited, or some kind fits none of the others
 */
export function columns(model: Model, options: { steps: number; stacks: boolean; meter: Meter }): Draft | undefined {
  const mix = new Mix(model);
  const draft = mix.possible ? mix.solve(options) : undefined;
  options.meter.take(mix.steps / SUMS);
  return draft;
}

/** A filling must be worth so much more than its cost. */
const GAIN = 1e-7;

class Mix {
  readonly possible: boolean;
  private readonly patterns: Pattern[];
  private readonly sizes: number[];
  private readonly wanted: number[];
  private readonly source: Patterns;
  private turns = 0;

  constructor(private readonly model: Model) {
    const { kinds, sizes, pieces } = model;
    this.source = new Patterns(model);
    this.sizes = sizes.map((_, s) => s).filter((s) => sizes[s]!.available >= pieces);
    this.wanted = kinds.map((_, k) => k).filter((k) => kinds[k]!.count > 0);
    const alone = this.wanted.map((k) => this.alone(k));
    this.possible = alone.every((pattern) => pattern !== undefined);
    this.patterns = this.possible ? (alone as Pattern[]) : [];
  }

  /** Sums looked at, in knapsacks and in the program, whose every turn goes through the square of its rows. */
  get steps(): number {
    return this.source.steps + this.turns * 2 * this.wanted.length ** 2;
  }

  solve({ steps, stacks }: { steps: number; stacks: boolean }): Draft {
    const { model, patterns, wanted } = this;
    const simplex = new Simplex(
      patterns.map((pattern, r) => pattern.counts[wanted[r]!]!),
      wanted.map((k) => model.kinds[k]!.count),
      patterns.map(({ size }) => this.cost(size)),
    );
    const worth = new Float64Array(model.kinds.length);
    let stacking = false;
    for (; this.steps < steps; this.turns++) {
      const prices = simplex.prices();
      wanted.forEach((k, r) => (worth[k] = prices[r]!));
      if (this.enterSurplus(simplex, prices) || this.enterBest(simplex, worth, stacking)) continue;
      if (stacking || !stacks) break;
      stacking = true;
    }
    return this.whole(simplex);
  }

  /** Doubles lose nothing in weights of ordinary costs; a unit near that of a sheet keeps tolerances meaningful. */
  private cost(size: number): number {
    return this.model.sizes[size]!.weight / this.model.sizes[this.sizes[0]!]!.weight;
  }

  /** A kind by itself, on the size where one costs least. */
  private alone(kind: number): Pattern | undefined {
    let best: Pattern | undefined;
    let least = Infinity;
    for (const size of this.sizes) {
      const found = this.source.alone(size, kind);
      if (!found || this.cost(size) / found.worth >= least) continue;
      best = found.pattern;
      least = this.cost(size) / found.worth;
    }
    return best;
  }

  /** A kind with a price below 0 is better made too often: a column that takes one away, at no cost. */
  private enterSurplus(simplex: Simplex, prices: Float64Array): boolean {
    const row = prices.findIndex((price) => price < -GAIN);
    if (row < 0) return false;
    const entries = new Float64Array(prices.length);
    entries[row] = -1;
    return simplex.enter(-1, entries, 0);
  }

  private enterBest(simplex: Simplex, worth: Float64Array, stacks: boolean): boolean {
    for (const size of this.sizes) {
      const found = this.source.best(size, worth, stacks);
      if (!found || found.worth <= this.cost(size) * (1 + GAIN)) continue;
      const entries = Float64Array.from(this.wanted, (k) => found.pattern.counts[k]!);
      this.patterns.push(found.pattern);
      return simplex.enter(this.patterns.length - 1, entries, this.cost(size));
    }
    return false;
  }

  private whole(simplex: Simplex): Draft {
    const { model, patterns } = this;
    const left = Int32Array.from(model.kinds, ({ count }) => count);
    const sheets = simplex.basis.flatMap((column, b): DraftSheet[] => {
      if (column < 0) return [];
      const { size, root } = patterns[column]!;
      const times = Math.floor(simplex.amounts[b]! + GAIN);
      const roots = Array.from({ length: times }, () => take(root, left)).filter((taken) => taken !== undefined);
      return roots.map((taken) => ({ size, root: taken }));
    });
    return { weight: weightOf(model, sheets), waiting: areaOf(model, left), sheets };
  }
}
