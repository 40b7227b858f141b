import { PARTS_BENCH } from "../worked/plans";
import { builtFunctions } from "./built";

const STOCK = [
  ["Thickness", "Length", "Width", "Price"],
  ["1/4", 96, 48, 32],
  ["1/2", 96, 48, 58],
  ["3/4", 96, 48, 84],
];
const RATES = [
  ["labor rate", 65],
  ["box minutes", 45],
  ["front minutes", 20],
  ["fitting minutes", 25],
  ["slide price", 18.4],
  ["pull price", 6.25],
  ["screw price", 0.06],
  ["margin", 30],
  ["tax", 7],
];
const RUNS = 5;

/**
 * A what-if grid of PRICE over the three-opening bench, counts down and widths across, through the built bundle. Of a
 * busy machine the processor time tells more than the clock does.
 */
export function benchMoney(): void {
  const functions = builtFunctions();
  const price = functions.get("PRICE")!;
  console.log(
    "milliseconds a grid, every cell a job that no run before has had: median, least, most; processor, median",
  );
  print("PRICE, 12 × 12, at first", [timed(() => grid(price, 12, RUNS))]);
  const [small, large] = [6, 12].map((size) => {
    const fresh = Array.from({ length: RUNS }, (_, run) => timed(() => grid(price, size, run)));
    const again = Array.from({ length: RUNS }, () => timed(() => grid(price, size, RUNS - 1)));
    print(`PRICE, ${size} × ${size}`, fresh);
    print("the same grid again", again);
    return median(fresh.map(({ processor }) => processor));
  }) as [number, number];
  console.log(`  four times the cells take ${(large / small).toFixed(1)} times the processor's time`);
  const quote = functions.get("QUOTE")!;
  const quotes = Array.from({ length: 20 }, (_, i) =>
    timed(() => quote(openings(i / 4, 0.125), PARTS_BENCH.standards, STOCK, RATES)),
  );
  print("QUOTE of the bench", quotes);
}

/** Both sizes reach over the same counts and widths, so that their cells are alike. */
function grid(price: (...args: unknown[]) => unknown, size: number, run: number): void {
  const steps = Array.from({ length: size }, (_, i) => (i * 11) / (size - 1));
  const prices = steps.flatMap((down) =>
    steps.map((across) => {
      const count = 1 + Math.round(down);
      return price(openings(across, run / 16 + size / 256), PARTS_BENCH.standards, STOCK, RATES, count) as number;
    }),
  );
  if (!prices.every((price) => price > 0)) throw new Error("A cell of the grid has no price.");
}

/** The bench, so much wider, and high enough for twelve drawers. */
const openings = (wider: number, more: number): unknown[][] =>
  PARTS_BENCH.openings.map((row, r) =>
    r === 0
      ? row
      : row.map((cell, c) =>
          c === 1 ? (cell as number) + Math.round(wider * 4) / 4 + more : c === 2 ? "34 1/2" : cell,
        ),
  );

interface Time {
  clock: number;
  processor: number;
}

function timed(work: () => unknown): Time {
  const [start, before] = [performance.now(), process.cpuUsage()];
  work();
  const { user, system } = process.cpuUsage(before);
  return { clock: performance.now() - start, processor: (user + system) / 1000 };
}

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[times.length >> 1]!;

function print(name: string, times: readonly Time[]): void {
  const clock = times.map((time) => time.clock);
  const figures = [median(clock), Math.min(...clock), Math.max(...clock), median(times.map((time) => time.processor))];
  console.log(`  ${name.padEnd(26)}${figures.map((ms) => ms.toFixed(1).padStart(9)).join("")}`);
}
