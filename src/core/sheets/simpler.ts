import { commonDivisor, type Problem } from "./problem";

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
    return turnable ? [{ problem: { ...problem, stock, parts: fixed }, fully }, whole] : [whole];
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

/**
 * Where all quantities have a common divisor, the job made so many times over: what is cut for one can be cut again for
 * each. So twice the parts never take more than twice the sheets.
 */
export function shares(problem: Problem): { problem: Problem; times: number }[] {
  const common = problem.parts.reduce((divisor, { quantity }) => commonDivisor(divisor, quantity), 0);
  return primeDivisors(common).map((times) => ({
    times,
    problem: {
      ...problem,
      parts: problem.parts.map((part) => ({ ...part, quantity: part.quantity / times })),
      stock: problem.stock.map((row) =>
        row.available === undefined ? row : { ...row, available: Math.floor(row.available / times) },
      ),
    },
  }));
}

function primeDivisors(n: number): number[] {
  const primes: number[] = [];
  for (let p = 2; n > 1; p++) {
    if (n % p > 0) continue;
    primes.push(p);
    while (n % p === 0) n /= p;
  }
  return primes;
}
