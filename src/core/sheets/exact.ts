import { commonDenominator, Fault, isNegative, isPositive, ratio, terms, type Rational } from "../length";
import { commonDivisor, type Problem } from "./problem";

/** A problem's lengths and costs as whole numbers of one small unit each. */
export interface Exact {
  /** How many of the small unit make one of the problem's. */
  scale: bigint;
  kerf: number;
  trim: number;
  parts: readonly Rectangle[];
  /** Of each part how far the next of its grain line lies from it, and the next line: a kerf, or more. */
  gaps: readonly number[];
  lineGaps: readonly number[];
  /** Where each part lies, of a layout that is given. */
  places: readonly ({ x: number; y: number } | undefined)[];
  stock: readonly (Rectangle & { cost: number })[];
  /** Whether costs are prices; else they are areas. */
  priced: boolean;
  /** A cost of 1 is `costStep / costScale`. */
  costScale: bigint;
  costStep: bigint;
}

export interface Rectangle {
  length: number;
  width: number;
}

/** Sizes up to here leave room for their sums in 32 bits. */
const LARGEST = 2 ** 28;

/**
 * @throws Fault where a size, quantity or price is not what it must be, or the sizes have no common measure that is
 * coarse enough to count in.
 */
export function exact(problem: Problem): Exact {
  checkSizes(problem);
  const { parts, stock } = problem;
  const lengths = [
    problem.kerf,
    problem.trim,
    ...parts.flatMap(({ length, width, grainGap, lineGap, lies }) =>
      [length, width, grainGap, lineGap, lies?.fromLeft, lies?.fromBottom].flatMap((size) => size ?? []),
    ),
    ...stock.flatMap(({ length, width }) => [length, width]),
  ];
  const scale = commonDenominator(lengths);
  const whole = (length: Rational): number => small(length, scale, LARGEST);
  const atLeast = (gap = problem.kerf): number => Math.max(whole(problem.kerf), whole(gap));
  const rectangle = (r: { length: Rational; width: Rational }): Rectangle => ({
    length: whole(r.length),
    width: whole(r.width),
  });
  const sheets = stock.map(rectangle);
  const priced = stock.some(({ price }) => price !== undefined);
  const costScale = priced ? commonDenominator(stock.map((row) => row.price ?? ratio(0))) : scale * scale;
  const pieces = parts.reduce((sum, { quantity }) => sum + quantity, 0);
  const most = Number.MAX_SAFE_INTEGER / ((pieces + 1) * (pieces + 1));
  const costs = stock.map((row, i) =>
    priced ? small(priceOf(row), costScale, Number.MAX_SAFE_INTEGER) : sheets[i]!.length * sheets[i]!.width,
  );
  const costStep = costs.reduce(commonDivisor, 0) || 1;
  if (costs.some((cost) => cost > Number.MAX_SAFE_INTEGER || cost / costStep > most))
    throw new Fault("sheets.tooFine", {});
  return {
    scale,
    kerf: whole(problem.kerf),
    trim: whole(problem.trim),
    parts: parts.map(rectangle),
    gaps: parts.map(({ grainGap }) => atLeast(grainGap)),
    lineGaps: parts.map(({ lineGap }) => atLeast(lineGap)),
    places: parts.map(({ lies }) => lies && { x: whole(lies.fromLeft), y: whole(lies.fromBottom) }),
    stock: sheets.map((sheet, i) => ({ ...sheet, cost: costs[i]! / costStep })),
    priced,
    costScale,
    costStep: BigInt(costStep),
  };
}

/** A whole number of small units, back in the problem's unit. */
export const lengthOf = (units: number, { scale }: { scale: bigint }): Rational => ratio(BigInt(units), scale);

function checkSizes({ parts, stock, kerf, trim }: Problem): void {
  for (const [argument, received] of Object.entries({ kerf, trim }))
    if (isNegative(received)) throw new Fault("length.negative", { argument, received });
  for (const { name, drawer, quantity, length, width } of parts) {
    if (!Number.isInteger(quantity) || quantity < 0)
      throw new Fault("sheets.quantityNotWhole", { part: name, drawer, received: quantity });
    checkSize(name, { length, width });
  }
  for (const { name, length, width, price, available } of stock) {
    if (available !== undefined && (!Number.isInteger(available) || available < 0))
      throw new Fault("sheets.availableNotWhole", { stock: name, received: available });
    if (price && isNegative(price)) throw new Fault("sheets.priceNegative", { stock: name, received: price });
    checkSize(name, { length, width });
  }
}

function checkSize(name: string, sides: Record<"length" | "width", Rational>): void {
  for (const [side, received] of Object.entries(sides))
    if (!isPositive(received)) throw new Fault("length.notPositive", { argument: `${name}, ${side}`, received });
}

/** Beside priced rows, a row without a price is free where its number is limited: an offcut. */
function priceOf({ name, price, available }: Problem["stock"][number]): Rational {
  if (price) return price;
  if (available === undefined) throw new Fault("sheets.priceMissing", { stock: name });
  return ratio(0);
}

function small(value: Rational, scale: bigint, most: number): number {
  const { numerator, denominator } = terms(value);
  const units = (numerator * scale) / denominator;
  if (units > BigInt(Math.floor(most))) throw new Fault("sheets.tooFine", { received: value });
  return Number(units);
}
