import { weightOf, withCounts, type Draft, type DraftSheet, type Model } from "../model";
import { Random } from "./random";
import { areaOf, count, countsOn } from "./patterns";

/**
 * Improves a large answer a few sheets at a time: takes those that hold least, and others at random, lets another
 * algorithm cut what lies on them anew, and keeps what is lighter.
 *
 * Limits: sees no gain that needs more sheets at once. Ignores the rest of the answer while it works on a part.
 */
export function regroup(model: Model, start: Draft, options: Options): Draft {
  const random = new Random(options.seed);
  let best = start;
  for (let round = 0; round < options.rounds && best.weight > options.least; round++) {
    const [some, rest] = choose(model, best, options.sheets, random);
    const answer = options.recut(
      remainder(model, rest),
      { weight: weightOf(model, some), waiting: 0, sheets: some },
      round,
    );
    best = { weight: weightOf(model, rest) + answer.weight, waiting: 0, sheets: [...rest, ...answer.sheets] };
  }
  return best;
}

export interface Options {
  rounds: number;
  /** Sheets taken at a time. */
  sheets: number;
  least: number;
  seed: number;
  /** Gives no worse than it starts from. */
  recut: (part: Model, start: Draft, round: number) => Draft;
}

/** The same kinds and sizes, without the pieces that lie on these sheets and without the sheets themselves. */
export function remainder(model: Model, rest: readonly DraftSheet[]): Model {
  const counts = Int32Array.from(model.kinds, (kind) => kind.count);
  for (const { root } of rest) count(root, counts, -1);
  const used = model.sizes.map((_, s) => rest.filter(({ size }) => size === s).length);
  return {
    ...withCounts(model, counts),
    sizes: model.sizes.map((size, s) => ({ ...size, available: Math.max(0, size.available - used[s]!) })),
  };
}

/** Two in three of those chosen are chance; the rest are the emptiest for their weight. */
function choose(model: Model, { sheets }: Draft, most: number, random: Random): [DraftSheet[], DraftSheet[]] {
  const filled = (sheet: DraftSheet): number => areaOf(model, countsOn(model, sheet)) / model.sizes[sheet.size]!.weight;
  const order = sheets.map((sheet) => ({ sheet, filled: filled(sheet) })).sort((a, b) => a.filled - b.filled);
  const some = order.splice(0, Math.ceil(most / 3));
  while (some.length < most && order.length > 0) some.push(...order.splice(random.below(order.length), 1));
  return [some.map(({ sheet }) => sheet), order.map(({ sheet }) => sheet)];
}
