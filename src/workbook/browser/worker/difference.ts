import { sameArea } from "../../address";
import type { Scalar } from "../../engine/index";
import type { Results, Spill } from "./results";

/** What is new or other in results, and what is no longer there. */
export type Difference = { [K in keyof Results]: { set: Results[K]; gone: string[] } };

/** Small edits change little, and no more than that goes from the worker to the page. */
export const difference = (before: Results, now: Results): Difference => ({
  values: changed(before.values, now.values, sameScalar),
  filled: changed(before.filled, now.filled, sameScalar),
  spills: changed(before.spills, now.spills, sameSpill),
  messages: changed(before.messages, now.messages, Object.is),
  formats: changed(before.formats, now.formats, Object.is),
});

/** Makes results that stand at `before` stand at what they differed from it by. */
export function apply(results: Results, { values, filled, spills, messages, formats }: Difference): void {
  merge(results.values, values);
  merge(results.filled, filled);
  merge(results.spills, spills);
  merge(results.messages, messages);
  merge(results.formats, formats);
}

function changed<T>(before: Map<string, T>, now: Map<string, T>, same: (a: T, b: T) => boolean) {
  const set = new Map<string, T>();
  for (const [at, value] of now) if (!before.has(at) || !same(before.get(at)!, value)) set.set(at, value);
  return { set, gone: [...before.keys()].filter((at) => !now.has(at)) };
}

function merge<T>(into: Map<string, T>, { set, gone }: { set: Map<string, T>; gone: readonly string[] }): void {
  for (const at of gone) into.delete(at);
  for (const [at, value] of set) into.set(at, value);
}

function sameScalar(a: Scalar, b: Scalar): boolean {
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return Object.is(a, b);
  return a.code === b.code && a.message === b.message;
}

/** The same values in the same cells. */
export const sameSpill = (a: Pick<Spill, "area" | "values">, b: Pick<Spill, "area" | "values">): boolean =>
  sameArea(a.area, b.area) &&
  a.values.every((line, y) => line.every((value, x) => sameScalar(value, b.values[y]![x]!)));
