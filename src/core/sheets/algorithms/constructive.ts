import { Forest } from "./forest";
import type { Meter } from "../meter";
import type { Draft, Model } from "../model";
import { Places } from "./places";
import { Random } from "./random";

/**
 * Lays one piece after another where least is spoilt, in many orders: by area, by either side, by both together, and
 * these disturbed; the sheet sizes in several orders too. Keeps the lightest answer.
 *
 * Limits: a piece once laid stays. Ignores what comes after it. Where stock is limited the answer may be incomplete,
 * and then holds the most area that any order placed.
 */
export function constructive(
  model: Model,
  options: { steps: number; least: number; seed: number; meter?: Meter },
): Draft {
  const random = new Random(options.seed);
  const forest = new Forest(model);
  const places = new Places(forest, random, 0);
  const sizeOrders = sizeOrdersOf(model);
  let best: Draft | undefined;
  for (let run = 0; run === 0 || places.steps < options.steps; run++) {
    forest.clear();
    places.find();
    places.goal = best && best.waiting === 0 ? best.weight - 1 : Infinity;
    places.sizeOrder = sizeOrders[run % sizeOrders.length]!;
    // To put the pieces in order is work, too, and all there is to a run that soon weighs too much.
    places.steps += model.pieces / 2;
    const order = orderOf(model, Math.floor(run / sizeOrders.length), random);
    let waiting = 0;
    for (const kind of order) {
      if (places.lay(kind)) continue;
      waiting += model.kinds[kind]!.w * model.kinds[kind]!.h;
      // Above a complete answer's weight there is nothing to find.
      if (best && best.waiting === 0) break;
    }
    if (!best || waiting < best.waiting || (waiting === 0 && forest.weight < best.weight))
      best = { ...forest.draft(), waiting };
    if (best.waiting === 0 && best.weight <= options.least) break;
  }
  options.meter?.take(LAID * places.steps);
  return best!;
}

/** A meter's steps for each here, where nearly all of them end with a piece that is laid. */
const LAID = 4;

/** All pieces, the largest by some measure first. */
function orderOf({ kinds }: Model, run: number, random: Random): number[] {
  const measures = [
    (k: number) => kinds[k]!.w * kinds[k]!.h,
    (k: number) => Math.max(kinds[k]!.w, kinds[k]!.h) * 65536 + Math.min(kinds[k]!.w, kinds[k]!.h) / 65536,
    (k: number) => kinds[k]!.h * 65536 + kinds[k]!.w / 65536,
    (k: number) => kinds[k]!.w * 65536 + kinds[k]!.h / 65536,
    (k: number) => kinds[k]!.w + kinds[k]!.h,
  ];
  const measure = measures[run % measures.length]!;
  // The first round is undisturbed; later ones raise each measure by up to a half.
  const keys = kinds.map((_, k) => measure(k) * (run < measures.length ? 1 : 64 + random.below(32)));
  const pieces: number[] = [];
  const wanted = kinds.flatMap(({ count }, k) => (count > 0 ? [k] : []));
  for (const k of wanted.sort((a, b) => keys[b]! - keys[a]! || a - b))
    for (let copies = kinds[k]!.count; copies > 0; copies--) pieces.push(k);
  return pieces;
}

/** Free offcuts come first in all but one: the best for its cost, the largest, the cheapest, each size first in turn. */
function sizeOrdersOf({ sizes }: Model): number[][] {
  const all = sizes.map((_, s) => s);
  if (all.length === 1) return [all];
  const area = (s: number): number => sizes[s]!.w * sizes[s]!.h;
  const weight = (s: number): number => sizes[s]!.weight;
  const byRatio = [...all].sort((a, b) => weight(a) * area(b) - weight(b) * area(a) || a - b);
  return [
    byRatio,
    [...all].sort((a, b) => area(b) - area(a) || a - b),
    [...all].sort((a, b) => weight(a) - weight(b) || a - b),
    ...byRatio.map((first) => [first, ...byRatio.filter((s) => s !== first)]),
  ];
}
