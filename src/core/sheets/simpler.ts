import type { Problem } from "./problem";

/** A problem any answer of which is an answer of the whole problem. */
export interface Simpler {
  problem: Problem;
  /** Searched as thoroughly as the whole problem; else quickly. */
  fully: boolean;
}

/**
 * The problem itself, and simpler ones: with every part that may turn left as it lies, with its offcuts unused, with
 * one size alone. A search that also tries these does not do worse for having a choice.
 * Rows of stock keep their numbers; those that are left out are none available.
 */
export function simplerProblems(problem: Problem): Simpler[] {
  const turnable = problem.parts.some(({ grain, grainGroup }) => grain === "any" && grainGroup === undefined);
  const fixed = problem.parts.map((part) => (part.grain === "any" ? { ...part, grain: "length" as const } : part));
  return [problem.stock, ...simplerStocks(problem)].flatMap((stock) => {
    const fully = stock === problem.stock;
    const whole = { problem: { ...problem, stock }, fully };
    return turnable ? [whole, { problem: { ...problem, stock, parts: fixed }, fully }] : [whole];
  });
}

function simplerStocks({ stock }: Problem): Problem["stock"][] {
  if (stock.length < 2) return [];
  const only = (kept: (row: Problem["stock"][number]) => boolean): Problem["stock"] =>
    stock.map((row) => (kept(row) ? row : { ...row, available: 0 }));
  const unlimited = stock.filter(({ available }) => available === undefined);
  if (unlimited.length === 0) return [];
  const singles = unlimited.map((row) => only((other) => other === row));
  if (unlimited.length === stock.length) return singles;
  return [only(({ available }) => available === undefined), ...(unlimited.length > 1 ? singles : [])];
}
