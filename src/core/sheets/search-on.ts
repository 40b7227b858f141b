import { LongSearch } from "./algorithms";
import { exact } from "./exact";
import { leastWeight } from "./bounds";
import { Meter } from "./meter";
import type { Problem } from "./problem";
import { reduce } from "./reduce";
import type { Solution } from "./solution";
import { answerOf, finished, solve } from "./solve";
import { tightened } from "./tighten";

/**
 * Searches for as long as somebody waits: the answers of every effort first, then better ones, if there are any.
 * @param steps of each turn, between two answers
 * @yields the best answer so far, again and again, the same one where nothing better was found; ends where none can be better
 * @throws Fault where something is wrong with the problem, or its stock does not suffice
 */
export function* searchOn(problem: Problem, steps = SLICE): Generator<Solution, void> {
  const sizes = exact(problem);
  let best = solve(problem, "quick");
  yield best;
  if (best.proven) return;
  const reduced = reduce(problem, sizes);
  const weightOf = ({ sheets }: Solution): number =>
    sheets.reduce((sum, { stock }) => sum + reduced.model.sizes[stock]!.weight, 0);
  for (const effort of ["standard", "thorough"] as const) {
    const next = solve(problem, effort, new Meter(PATIENT));
    if (weightOf(next) <= weightOf(best)) best = next;
    yield best;
    if (best.proven) return;
  }
  const least = leastWeight(tightened(reduced.model), FUNCTIONS);
  const search = new LongSearch(reduced.model, least);
  while (!best.proven) {
    const draft = search.go(steps, weightOf(best));
    if (draft)
      best = finished({ problem, reduced, sizes }, answerOf(draft, reduced, sizes, "thorough"), least, false, "neat");
    yield best;
  }
}

/** Steps of an effort: more than a cell takes, whose host waits. */
const PATIENT = 200_000_000;
/** Dual feasible functions of each family for the bound. */
const FUNCTIONS = 60;
/** About half a second. */
const SLICE = 15_000_000;
