import { Fault, orElse, ratio, type Rational } from "../length";
import { everything, gather, isFew, largestRest, neat, search, type Effort } from "./algorithms";
import { leastWeight } from "./bounds";
import { Meter } from "./meter";
import type { Draft } from "./model";
import { build } from "./build";
import { exact, type Exact, type Rectangle } from "./exact";
import { given } from "./given";
import type { Problem } from "./problem";
import { reduce, type Reduced } from "./reduce";
import { shares, simplerProblems } from "./simpler";
import type { CutSheet, Least, Solution } from "./solution";
import { tightened } from "./tighten";
import { checked } from "./verify";

/**
 * Cuts the parts from the stock at least cost, then from fewest sheets, then leaving the largest single offcut.
 * @param meter how many steps it may take
 * @param look whether the layout is one that somebody cuts; a price only asks what lies on which sheets
 * @throws Fault where something is wrong with the problem, or its stock does not suffice
 */
export const solve = (problem: Problem, effort: Effort, meter = new Meter(), look: Look = "neat"): Solution =>
  searched(problem, effort, meter).cut(look);

/** What a search came to, which can be cut in any way. */
export interface Searched {
  cut(look: Look): Solution;
  /** It had all the steps that its effort asks for: more would come to the same. */
  isWhole: boolean;
}

/** Searches as `solve` does. */
export function searched(problem: Problem, effort: Effort, meter: Meter): Searched {
  const sizes = exact(problem);
  const pieces = problem.parts.reduce((sum, { quantity }) => sum + quantity, 0);
  if (pieces === 0) {
    const nothing = {
      problem,
      exact: sizes,
      sheets: [],
      least: leastOf(problem, sizes, 0, 0),
      proven: true,
      isShort: false,
    };
    return { cut: () => nothing, isWhole: true };
  }
  const reduced = reduce(problem, sizes);
  const { model } = reduced;
  if (problem.parts.some(({ lies }) => lies)) return asGiven(problem, reduced, sizes);
  meter.shrink(1 / (1 + pieces / HEAVY));
  const bound = leastWeight(tightened(model), FUNCTIONS[meter.left < FEW_STEPS ? "quick" : effort]);
  // Before stock is said not to suffice, it is tried harder.
  const asked = { problem, reduced, sizes, effort, least: bound };
  const best = bestOf(asked, meter) ?? tryHarder(asked, meter);
  if (!best) throw new Fault("sheets.stockExhausted", { parts: problem.parts.map(({ name }) => name) });
  const least = best.least ?? bound;
  return {
    cut: (look) => finished(asked, best, least, meter.isShort && best.weight > least, look),
    isWhole: !meter.isShort,
  };
}

/** @param least a weight below which no answer lies */
export const finished = (
  { problem, reduced, sizes }: Pick<Asked, "problem" | "reduced" | "sizes">,
  best: Answer,
  least: number,
  isShort: boolean,
  look: Look,
): Solution =>
  checked({
    problem,
    exact: sizes,
    sheets: best.cut(look),
    least: leastOf(problem, sizes, least, reduced.model.pieces),
    proven: best.weight <= least,
    isShort,
  });

/** A layout that somebody found before is the answer, if it can be cut. */
function asGiven(problem: Problem, reduced: Reduced, sizes: Exact): Searched {
  const sheets = given(problem, sizes);
  const weight = sheets.reduce((sum, { stock }) => sum + reduced.model.sizes[stock]!.weight, 0);
  const bound = leastWeight(tightened(reduced.model), FUNCTIONS.standard);
  const found = finished({ problem, reduced, sizes }, { weight, offcut: 0, cut: () => sheets }, bound, false, "any");
  return { cut: () => found, isWhole: true };
}

/** With so many pieces a step takes twice as long: less of what it reads is at hand. */
const HEAVY = 600;

/** Dual feasible functions of each family that a bound tries. */
const FUNCTIONS: Record<Effort, number> = { quick: 12, standard: 60, thorough: 60 };

/** With so few steps to search in, a bound of all functions would take as long as the search. */
const FEW_STEPS = 2_000_000;

/** A problem on its way, and a weight below which no answer of it lies. */
interface Asked {
  problem: Problem;
  reduced: Reduced;
  sizes: Exact;
  effort: Effort;
  least: number;
}

function tryHarder(asked: Asked, meter: Meter): Answer | undefined {
  const { problem, sizes, effort } = asked;
  if (effort === "thorough" || !enough(problem, sizes)) return undefined;
  return bestOf({ ...asked, effort: effort === "quick" ? "standard" : "thorough" }, meter);
}

/** Whether the stock has at least the area of the parts. */
function enough({ parts, stock }: Problem, sizes: Exact): boolean {
  const area = ({ length, width }: Rectangle): number => length * width;
  const wanted = parts.reduce((sum, { quantity }, p) => sum + quantity * area(sizes.parts[p]!), 0);
  return stock.reduce((sum, row, s) => sum + (row.available ?? Infinity) * area(sizes.stock[s]!), 0) >= wanted;
}

/** An answer that is not cut up yet. */
interface Answer {
  weight: number;
  /** The area of the largest rest. */
  offcut: number;
  /** A weight below which no answer lies, where trying everything has shown one. */
  least?: number;
  cut: (look: Look) => CutSheet[];
}

export type Look = "neat" | "any";

/** Of a few pieces the best there is, which need not be tried for where a quick answer is as good. */
function bestOfFew({ reduced, sizes, effort, least }: Asked, meter: Meter): Answer | undefined {
  const quick = search(reduced.model, "quick", least, meter);
  if (quick.waiting === 0 && quick.weight <= least) return answerOf(quick, reduced, sizes, effort);
  const draft = everything(reduced.model);
  return draft && { ...answerOf(draft, reduced, sizes, effort), least: draft.weight };
}

export const answerOf = (draft: Draft, reduced: Reduced, sizes: Exact, effort: Effort): Answer => ({
  weight: draft.weight,
  offcut: largestRest(draft, reduced.model.kerf),
  cut(look) {
    const isNeat = look === "neat";
    const gathered = gather(reduced.model, draft, effort, !isNeat);
    return build(isNeat ? neat(reduced.model, gathered) : gathered, reduced, sizes);
  },
});

function bestOf(asked: Asked, meter: Meter): Answer | undefined {
  const { problem, sizes, effort, least } = asked;
  if (isFew(asked.reduced.model)) return bestOfFew(asked, meter);
  let best: Answer | undefined;
  const parts = shares(problem);
  const simpler = simplerProblems(problem);
  let left = meter.left * (parts.length > 0 ? WHOLE : 1);
  for (const [i, { problem: one, fully }] of simpler.entries()) {
    const reduced = reducedIfAny(one, sizes);
    if (!reduced) continue;
    // Each that is searched fully leaves as much for those that come after it.
    const share = fully ? left / simpler.slice(i).filter((other) => other.fully).length : left;
    const before = meter.left;
    const draft = meter.within(before > 0 ? Math.min(1, share / before) : 0, (part) =>
      search(reduced.model, fully ? effort : "quick", least, part, best?.weight),
    );
    left = Math.max(0, left - (before - meter.left));
    if (draft.waiting > 0) continue;
    best = better(answerOf(draft, reduced, sizes, effort), best);
    if (best.weight <= least) return best;
    if (left === 0 && !fully) {
      meter.isShort = true;
      break;
    }
  }
  for (const [i, { problem: share, times }] of parts.entries()) {
    if (meter.left === 0) {
      meter.isShort = true;
      break;
    }
    const answer = meter.within(1 / (parts.length - i), (part) => bestOfShare(share, sizes, effort, part));
    const made = repeated(asked.reduced, answer, times);
    if (made) best = better(made, best);
  }
  return best;
}

/** Of the steps, those for the whole problem, where it can also be made of equal shares. */
const WHOLE = 0.6;

function bestOfShare(share: Problem, sizes: Exact, effort: Effort, meter: Meter): Answer | undefined {
  const reduced = reducedIfAny(share, sizes);
  if (!reduced) return undefined;
  const least = leastWeight(tightened(reduced.model), FUNCTIONS[effort]);
  return bestOf({ problem: share, reduced, sizes, effort, least }, meter);
}

/** The same sheets so many times over. */
function repeated({ model }: Reduced, share: Answer | undefined, times: number): Answer | undefined {
  if (!share) return undefined;
  const once = share.cut("any");
  const weight = times * once.reduce((sum, { stock }) => sum + model.sizes[stock]!.weight, 0);
  const again = (sheets: CutSheet[]): CutSheet[] => Array.from({ length: times }, () => sheets).flat();
  return { weight, offcut: share.offcut, cut: (look) => again(look === "any" ? once : share.cut(look)) };
}

const better = (a: Answer, b: Answer | undefined): Answer =>
  !b || a.weight < b.weight || (a.weight === b.weight && a.offcut > b.offcut) ? a : b;

/** A simpler problem may have no answer where the whole problem has one. */
const reducedIfAny = (problem: Problem, sizes: Exact): Reduced | undefined =>
  orElse(
    () => reduce(problem, sizes),
    () => undefined,
  );

/** A weight is a cost, taken once more than there are pieces, and a number of sheets. */
function leastOf({ stock }: Problem, { priced, costScale, costStep }: Exact, weight: number, pieces: number): Least {
  const sheets = weight % (pieces + 1);
  if (stock.length === 1) return { measure: "sheets", value: ratio(sheets) };
  const cost: Rational = ratio(BigInt(Math.floor(weight / (pieces + 1))) * costStep, costScale);
  return { measure: priced ? "cost" : "area", value: cost };
}
