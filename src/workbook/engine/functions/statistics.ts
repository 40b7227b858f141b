import { spend } from "../budget";
import { toNumber } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { finite } from "../operators";
import { CellError, fail, isMatrix, Reference, type Scalar, type Value } from "../values";
import { unproven } from "../proven";
import { loneArea, numbersOf, overAll, overNumbers, sum } from "./aggregates";
import { scalarOf } from "./reading";

/** Means, spreads and places in an order. */
export const statistics: Record<string, Ordinary> = {
  AVERAGEA: overAll((numbers) => mean(numbers)),
  MAXA: overAll((numbers) => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0)),
  MINA: overAll((numbers) => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0)),

  MEDIAN: overNumbers((numbers) => {
    const sorted = ascending(numbers);
    const half = sorted.length >> 1;
    if (sorted.length === 0) return fail("#NUM!");
    return sorted.length % 2 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
  }),
  VAR: overNumbers((numbers) => variance(numbers, 1)),
  "VAR.S": overNumbers((numbers) => variance(numbers, 1)),
  VARP: overNumbers((numbers) => variance(numbers, 0)),
  "VAR.P": overNumbers((numbers) => variance(numbers, 0)),
  STDEV: overNumbers((numbers) => deviation(numbers, 1)),
  "STDEV.S": overNumbers((numbers) => deviation(numbers, 1)),
  STDEVP: overNumbers((numbers) => deviation(numbers, 0)),
  "STDEV.P": overNumbers((numbers) => deviation(numbers, 0)),
  AVEDEV: overNumbers((numbers) => {
    const center = mean(numbers);
    return typeof center === "number" ? mean(numbers.map((number) => Math.abs(number - center))) : fail("#NUM!");
  }),
  DEVSQ: overNumbers((numbers) => (numbers.length === 0 ? fail("#NUM!") : finite(squares(numbers)))),
  GEOMEAN: overNumbers((numbers) => {
    if (numbers.length === 0 || numbers.some((number) => number <= 0)) return fail("#NUM!");
    return Math.exp(sum(numbers.map(Math.log)) / numbers.length);
  }),

  LARGE: {
    signature: "RV",
    call: (args, evaluator) => inOrder(args, evaluator, (sorted, at) => sorted[sorted.length - at]),
  },
  SMALL: { signature: "RV", call: (args, evaluator) => inOrder(args, evaluator, (sorted, at) => sorted[at - 1]) },
  PERCENTILE: { signature: "RV", call: (args, evaluator) => portion(args, evaluator, (k) => k) },
  "PERCENTILE.INC": { signature: "RV", call: (args, evaluator) => portion(args, evaluator, (k) => k) },
  QUARTILE: {
    signature: "RV",
    call: (args, evaluator) => portion(args, evaluator, (k) => (k < 0 ? k : Math.trunc(k) / 4)),
  },
  "QUARTILE.INC": {
    signature: "RV",
    call: (args, evaluator) => portion(args, evaluator, (k) => (k < 0 ? k : Math.trunc(k) / 4)),
  },
};

/** How often numbers occur. */
export const frequencies: Record<string, Ordinary> = {
  MODE: overNumbers(mostFrequent),
  "MODE.SNGL": overNumbers(mostFrequent),

  /** How many numbers lie up to each bound and above the one before, and how many above them all. */
  FREQUENCY: {
    signature: "A",
    call([source, limits], evaluator) {
      const numbers = numbersOf([evaluator.matrix(source)], evaluator);
      const bounds = numbersOf([evaluator.matrix(limits)], evaluator);
      if (numbers instanceof CellError) return numbers;
      if (bounds instanceof CellError) return bounds;
      const sorted = bounds.map((bound, i) => ({ bound, i })).sort((a, b) => a.bound - b.bound || a.i - b.i);
      const counts = Array.from({ length: bounds.length + 1 }, () => [0]);
      for (const number of numbers) {
        const place = sorted.find(({ bound }) => number <= bound)?.i ?? bounds.length;
        counts[place]![0]!++;
      }
      return counts;
    },
  },
};

export function mean(numbers: readonly number[]): Scalar {
  return numbers.length === 0 ? fail("#DIV/0!") : finite(sum([...numbers]) / numbers.length);
}

/** `less` is 1 for a sample, 0 for all there is. */
export function variance(numbers: number[], less: number): Scalar {
  return numbers.length <= less ? fail("#DIV/0!") : finite(squares(numbers) / (numbers.length - less));
}

export function deviation(numbers: number[], less: number): Scalar {
  const found = variance(numbers, less);
  return typeof found === "number" ? Math.sqrt(found) : found;
}

function squares(numbers: number[]): number {
  const center = sum(numbers) / numbers.length;
  return sum(numbers.map((number) => (number - center) ** 2));
}

/** Of those that occur equally often, the one that comes first. */
function mostFrequent(numbers: number[]): Scalar {
  const counts = new Map<number, number>();
  for (const number of numbers) counts.set(number, (counts.get(number) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  return most < 2 ? fail("#N/A") : [...counts].find(([, count]) => count === most)![0];
}

function ascending(numbers: readonly number[]): number[] {
  spend(COST_OF_A_PLACE * numbers.length);
  return [...numbers].sort((a, b) => a - b);
}

/** Sorting goes through all several times. */
const COST_OF_A_PLACE = 16;

function inOrder(
  args: Value[],
  evaluator: Evaluator,
  of: (sorted: readonly number[], at: number) => number | undefined,
): Scalar {
  const [numbers, at] = read(args, evaluator);
  if (numbers instanceof CellError) return numbers;
  if (at instanceof CellError) return at;
  if (!Number.isInteger(at)) throw unproven("LARGE or SMALL", "a place that is no whole number");
  const place = at;
  return place < 1 || place > numbers.length ? fail("#NUM!") : of(numbers, place)!;
}

/** Between two neighbors, as far from the one to the other as the portion says. */
function portion(args: Value[], evaluator: Evaluator, of: (k: number) => number): Scalar {
  const [sorted, given] = read(args, evaluator);
  if (sorted instanceof CellError) return sorted;
  if (given instanceof CellError) return given;
  const k = of(given);
  if (sorted.length === 0 || k < 0 || k > 1) return fail("#NUM!");
  const at = k * (sorted.length - 1);
  const below = Math.floor(at);
  return finite(sorted[below]! + (at - below) * ((sorted[below + 1] ?? sorted[below]!) - sorted[below]!));
}

/** The numbers in their order, and the other argument. */
function read([source, k]: Value[], evaluator: Evaluator): [readonly number[] | CellError, number | CellError] {
  const given = source instanceof Reference || isMatrix(source) ? source : [[scalarOf(source)]];
  const inOrder = (): readonly number[] | CellError => {
    const numbers = numbersOf([given], evaluator);
    return numbers instanceof CellError ? numbers : ascending(numbers);
  };
  const area = loneArea(given);
  return [area ? evaluator.cells.once(area, ascending, inOrder) : inOrder(), toNumber(scalarOf(k))];
}
