import type { SheetSize } from "../model";
import { commonDivisor } from "../problem";

/**
 * The least cost, and the least number, of sheets that together hold a demand. Exact for one size; for several the
 * best fraction of the next sheet, rounded up to what costs can add up to.
 */
export function leastCover(
  sizes: readonly SheetSize[],
  capacities: ArrayLike<number>,
  demand: number,
): { cost: number; sheets: number } {
  return { cost: leastCost(sizes, capacities, demand), sheets: fewest(sizes, capacities, demand) };
}

/** Doubles carry these sums and products to within far less; what they might have added is taken off again. */
const SLACK = 1e-9;

function fewest(sizes: readonly SheetSize[], capacities: ArrayLike<number>, demand: number): number {
  const order = sizes.map((_, s) => s).sort((a, b) => capacities[b]! - capacities[a]!);
  let [rest, count] = [demand * (1 - SLACK), 0];
  for (const s of order) {
    if (rest <= 0) return count;
    const capacity = capacities[s]!;
    if (capacity <= 0) return count;
    const taken = Math.min(sizes[s]!.available, Math.ceil(rest / capacity - SLACK));
    count += taken;
    rest -= taken * capacity;
  }
  return count;
}

function leastCost(sizes: readonly SheetSize[], capacities: ArrayLike<number>, demand: number): number {
  if (sizes.length === 1) return fewest(sizes, capacities, demand) * sizes[0]!.cost;
  const order = sizes
    .map((_, s) => s)
    .filter((s) => capacities[s]! > 0)
    .sort((a, b) => sizes[a]!.cost * capacities[b]! - sizes[b]!.cost * capacities[a]! || a - b);
  let [rest, cost] = [demand * (1 - SLACK), 0];
  for (const s of order) {
    if (rest <= 0) break;
    const { available, cost: each } = sizes[s]!;
    const taken = Math.min(available, rest / capacities[s]!);
    cost += taken * each;
    rest -= taken * capacities[s]!;
  }
  return roundUp(cost * (1 - SLACK), sizes);
}

/** Costs of sheets add up to multiples of what divides them all. */
function roundUp(cost: number, sizes: readonly SheetSize[]): number {
  const step = sizes.reduce((common, size) => commonDivisor(common, size.cost), 0);
  return step === 0 ? 0 : step * Math.ceil(cost / step - SLACK);
}
