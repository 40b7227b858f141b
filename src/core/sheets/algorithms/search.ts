import { Meter, SUMS } from "../meter";
import { TURNED, UPRIGHT, type Draft, type Model } from "../model";
import { loosened, tightened } from "../tighten";
import { columns } from "./columns";
import { constructive } from "./constructive";
import { gatherOffcut } from "./offcut";
import { regroup, remainder } from "./regroup";
import { ruinAndRecreate } from "./ruin-recreate";
import { WarmedSearch, type Settling } from "./warmed-search";

export type Effort = "quick" | "standard" | "thorough";

/** Rectangles, or sums, that each algorithm may look at. */
const STEPS: Record<Effort, Steps> = {
  quick: { constructive: 10_000, ruin: 350_000, columns: 20_000_000, rounds: 4, enough: 150, offcut: 200 },
  standard: {
    constructive: 200_000,
    ruin: 11_000_000,
    columns: 400_000_000,
    rounds: 30,
    enough: 60_000,
    offcut: 20_000,
  },
  thorough: {
    constructive: 200_000,
    ruin: 90_000_000,
    columns: 1_500_000_000,
    rounds: 60,
    enough: 60_000,
    offcut: 100_000,
  },
};

interface Steps {
  constructive: number;
  ruin: number;
  columns: number;
  rounds: number;
  /** Steps of ruin for each pair of pieces, beyond which little more is found. */
  enough: number;
  offcut: number;
}

/** Steps that it takes to make ready for a piece, whatever is tried then. */
const PIECE = 50;

/** From so many pieces of a kind on, on average, fillings of sheets repeat. */
const MANY = 8;

/**
 * The portfolio: each algorithm starts from the best answer so far, and all stop at the bound.
 * @param least a weight below which no answer lies
 * @param meter how many steps there are
 * @param below the weight of an answer to another problem: a heavier one is of no use
 */
export function search(model: Model, effort: Effort, least: number, meter: Meter, below?: number): Draft {
  meter.take(PIECE * model.pieces);
  const { close, asGiven } = closeOf(model);
  return asGiven(lightest(close, effort, least, meter, below));
}

/**
 * A search that goes on for as long as it is asked to: it settles, is warmed, and settles elsewhere; where fillings
 * repeat, every other turn cuts a few sheets anew instead.
 */
export class LongSearch {
  private readonly close: Model;
  private readonly asGiven: (draft: Draft) => Draft;
  private readonly whole: WarmedSearch;
  private best: Draft;
  private turn = 0;

  constructor(
    model: Model,
    private readonly least: number,
  ) {
    const { close, asGiven } = closeOf(model);
    this.close = close;
    this.asGiven = asGiven;
    this.best = lightest(close, "quick", least, new Meter());
    this.whole = new WarmedSearch(close, this.best, 8, SETTLING);
  }

  /**
   * @param below the weight of an answer that is known otherwise
   * @returns a lighter answer than that, if these steps came to one
   */
  go(steps: number, below: number): Draft | undefined {
    const meter = new Meter(steps);
    this.whole.lower(Math.min(below, this.best.waiting === 0 ? this.best.weight : Infinity));
    const found =
      this.turn++ % 2 === 1 && this.best.waiting === 0 && repeats(this.close)
        ? this.recut(steps, meter)
        : this.whole.run(steps, this.least, meter);
    if (found.waiting > 0 || (this.best.waiting === 0 && found.weight >= this.best.weight)) return undefined;
    this.best = found;
    return found.weight < below ? this.asGiven(found) : undefined;
  }

  private recut(steps: number, meter: Meter): Draft {
    return regroup(this.close, this.best, {
      rounds: RECUTS,
      sheets: 12,
      least: this.least,
      seed: this.turn,
      recut: (part, from, round) =>
        ruinAndRecreate(part, from, { steps: steps / RECUTS, least: 0, seed: this.turn + round, meter }),
    });
  }
}

/** Found by trying on the published instances: warmer, slower or quicker settling finds fewer of the best known answers in a minute. */
const SETTLING: Settling = { memory: 1000, patience: 20, heat: 0.1 };
const RECUTS = 8;

/**
 * A model to search in, and what makes its answers those of the model itself.
 *
 * A size of which there is none makes no difference, not even to the order in which things are tried.
 */
function closeOf(model: Model): { close: Model; asGiven: (draft: Draft) => Draft } {
  const sizes = model.sizes.flatMap(({ available }, s) => (available > 0 ? [s] : []));
  return {
    close: tightened(withSizes(model, sizes)),
    asGiven: (draft) =>
      loosened(
        { ...draft, sheets: draft.sheets.map((sheet) => ({ ...sheet, size: sizes[sheet.size]! })) },
        model.sizes,
      ),
  };
}

const withSizes = (model: Model, sizes: readonly number[]): Model => ({
  ...model,
  sizes: sizes.map((s) => model.sizes[s]!),
  ways: Uint8Array.from(model.kinds.flatMap((_, k) => sizes.map((s) => model.ways[k * model.sizes.length + s]!))),
});

function lightest(model: Model, effort: Effort, least: number, meter: Meter, below?: number): Draft {
  const steps = stepsOf(model, effort);
  const start = constructive(model, { steps: meter.allow(steps.constructive), least, seed: 1, meter });
  if (start.waiting === 0 && start.weight <= least) return start;
  const many = repeats(model) ? mixed(model, effort, steps, meter) : undefined;
  if (!many || many.waiting > 0)
    return ruinAndRecreate(model, start, { steps: meter.allow(steps.ruin), least, below, seed: 7, meter });
  const ruin = meter.allow(steps.ruin);
  const best = start.waiting === 0 && start.weight <= many.weight ? start : many;
  return regroup(model, best, {
    rounds: steps.rounds,
    sheets: 12,
    least,
    seed: 3,
    recut: (part, from, round) =>
      ruinAndRecreate(part, from, { steps: ruin / steps.rounds, least: 0, seed: round + 11, meter }),
  });
}

/** A larger single offcut from the same sheets. */
export const gather = (model: Model, draft: Draft, effort: Effort, isPriced: boolean): Draft =>
  gatherOffcut(model, draft, STEPS[effort].offcut, isPriced);

const repeats = ({ kinds, pieces }: Model): boolean => pieces >= MANY * kinds.length;

/**
 * A choice of two ways for a piece takes longer to search, a few pieces are soon searched through, and where fillings
 * repeat there is little left to search.
 */
function stepsOf(model: Model, effort: Effort): Steps {
  const steps = STEPS[effort];
  const share = repeats(model) ? 0.5 : model.ways.includes(UPRIGHT | TURNED) ? 1.5 : 1;
  return { ...steps, ruin: Math.min(share * steps.ruin, steps.enough * model.pieces * model.pieces) };
}

/** Repeated fillings, and what they leave cut anew. */
function mixed(model: Model, effort: Effort, steps: Steps, meter: Meter): Draft | undefined {
  const sums = SUMS * meter.allow(steps.columns / SUMS, 0.5);
  const draft = columns(model, { steps: sums, stacks: effort !== "quick", meter });
  if (!draft || draft.waiting === 0) return draft;
  const left = remainder(model, draft.sheets);
  const start = constructive(left, { steps: meter.allow(steps.constructive), least: 0, seed: 1, meter });
  const rest = ruinAndRecreate(left, start, { steps: meter.allow(steps.ruin / 2, 0.5), least: 0, seed: 5, meter });
  return { weight: draft.weight + rest.weight, waiting: rest.waiting, sheets: [...draft.sheets, ...rest.sheets] };
}
