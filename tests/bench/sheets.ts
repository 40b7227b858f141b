import { ratio, toDouble } from "../../src/core/length";
import {
  flaws,
  searchOn,
  solve,
  type Effort,
  type Part,
  type Problem,
  type Solution,
  type Stock,
} from "../../src/core/sheets";
import {
  packingInstances,
  pricedInstances,
  type PackingInstance,
  type PricedInstance,
} from "../handbook/sheet-instances";
import { benchReference } from "./reference";

const EFFORTS: readonly Effort[] = ["quick", "standard", "thorough"];

/**
 * Totals, times and proofs on published instances and on a shop's own sizes. Arguments: efforts, names of sets
 * (`packing`, `copies`, `priced`, `shop`), and `every=N` for each Nth instance; none is everything. `reference` is another
 * packer's totals on the instances of `packing`, and stands before these. `longer` searches those that thorough leaves
 * above the best known for `seconds=60` of processor time each, and names those that stay above or come below it.
 */
export function benchSheets(args: readonly string[] = []): void {
  const efforts = EFFORTS.filter((effort) => args.includes(effort));
  const asked = Object.keys(SETS).filter((set) => args.includes(set));
  const sets = asked.length || args.includes("reference") || args.includes("longer") ? asked : Object.keys(SETS);
  const every = Number(args.find((arg) => arg.startsWith("every="))?.slice(6) ?? 1);
  if (sets.length > 0) first();
  const seconds = Number(args.find((arg) => arg.startsWith("seconds="))?.slice(8) ?? 60);
  if (args.includes("longer")) for (const turning of [false, true]) longer(seconds, every, turning);
  if (sets.includes("packing") || args.includes("reference")) benchReference(every);
  for (const set of sets) for (const effort of efforts.length ? efforts : EFFORTS) SETS[set]!(effort, every);
}

const SETS: Record<string, (effort: Effort, every: number) => void> = {
  packing: (effort, every) => {
    for (const turning of [false, true]) packing("packing", packingInstances, effort, every, turning);
  },
  copies: (effort, every) => {
    for (const [name, change] of Object.entries(COPIES))
      for (const turning of [false, true]) packing(name, packingInstances.map(change), effort, every, turning);
  },
  priced: (effort) => {
    for (const turning of [false, true]) priced(effort, turning);
  },
  shop: (effort) => {
    for (const [pieces, kinds] of [
      [100, 30],
      [300, 40],
      [2000, 60],
    ] as const)
      shop(effort, pieces, kinds);
  },
};

/** A process that has just begun compiles what it runs: its first answers say little of those that follow. */
function first(): void {
  for (const which of ["the first answer of this process", "the second"]) {
    const tally = new Tally();
    tally.solve(shopProblem(101, 31), "quick");
    tally.print(which, "101 parts of 31 sizes quick");
  }
  for (let i = 0; i < 20; i++) solve(shopProblem(40 + i, 20 + i), "quick");
}

function packing(name: string, all: readonly PackingInstance[], effort: Effort, every: number, turning: boolean): void {
  const instances = all.filter((_, i) => i % every === 0);
  const tally = new Tally();
  let [sheets, best] = [0, 0];
  for (const instance of instances) {
    const solution = tally.solve(packingProblem(instance, turning), effort);
    if (solution.sheets.length < (turning ? instance.lb.R : instance.lb.O))
      throw new Error(`${instance.id} is too good.`);
    sheets += solution.sheets.length;
    best += turning ? instance.ub.RG : instance.ub.OG;
  }
  const way = turning ? "turning" : "oriented";
  tally.print(`${name} ${effort} ${way}`, `${sheets} sheets of ${instances.length} (best known ${best})`);
}

function longer(seconds: number, every: number, turning: boolean): void {
  const told = { above: [] as string[], below: [] as string[] };
  let [sheets, best, slowest] = [0, 0, 0];
  for (const instance of packingInstances.filter((_, i) => i % every === 0)) {
    const known = turning ? instance.ub.RG : instance.ub.OG;
    const start = process.cpuUsage().user;
    const spent = (): number => (process.cpuUsage().user - start) / 1e6;
    let found: Solution | undefined;
    for (found of searchOn(packingProblem(instance, turning)))
      if (found.sheets.length <= known || spent() > seconds) break;
    const [flaw] = flaws(found!);
    if (flaw) throw new Error(flaw);
    slowest = Math.max(slowest, spent());
    sheets += found!.sheets.length;
    best += known;
    const over = found!.sheets.length - known;
    if (over !== 0) told[over > 0 ? "above" : "below"].push(instance.id);
  }
  const way = turning ? "turning" : "oriented";
  console.log(
    `longer ${way}: ${sheets} sheets (best known ${best}); at most ${slowest.toFixed(0)} s; above: ${told.above.join(" ") || "none"}; below: ${told.below.join(" ") || "none"}`,
  );
}

function priced(effort: Effort, turning: boolean): void {
  for (const instance of pricedInstances) {
    const tally = new Tally();
    const solution = tally.solve(pricedProblem(instance, turning), effort);
    const cost = solution.sheets.reduce((sum, { stock }) => sum + instance.sheets[stock]![2], 0);
    const [, best] = turning ? instance.least_cost.rotation : instance.least_cost.oriented;
    const over = (100 * (cost - best)) / best;
    const least = toDouble(solution.least.value);
    const way = turning ? "turning" : "oriented";
    tally.print(
      `${instance.id} ${effort} ${way}`,
      `cost ${cost}, ${over.toFixed(2)} % over best known; at least ${least}`,
    );
  }
}

function shop(effort: Effort, pieces: number, kinds: number): void {
  const tally = new Tally();
  const { sheets, least } = tally.solve(shopProblem(pieces, kinds), effort);
  tally.print(
    `${pieces} parts of ${kinds} sizes ${effort}`,
    `${sheets.length} sheets, at least ${toDouble(least.value)}`,
  );
}

/** Runs, times and checks answers. */
class Tally {
  private readonly times: number[] = [];
  private proven = 0;

  solve(problem: Problem, effort: Effort): Solution {
    const start = performance.now();
    const solution = solve(problem, effort);
    this.times.push(performance.now() - start);
    const [flaw] = flaws(solution);
    if (flaw) throw new Error(flaw);
    if (solution.proven) this.proven++;
    return solution;
  }

  print(what: string, result: string): void {
    const total = this.times.reduce((sum, time) => sum + time, 0);
    const worst = Math.max(...this.times);
    const proofs = `${this.proven} of ${this.times.length} proven`;
    console.log(`${what}: ${result}; ${total.toFixed(0)} ms, worst ${worst.toFixed(0)} ms; ${proofs}`);
  }
}

const part = (name: string, quantity: number, length: number, width: number, turning: boolean): Part => ({
  name,
  quantity,
  length: ratio(length),
  width: ratio(width),
  grain: turning ? "any" : "length",
});

const sheet = (length: number, width: number): Stock => ({
  name: `${length} × ${width}`,
  length: ratio(length),
  width: ratio(width),
});

function packingProblem({ W, H, items }: PackingInstance, turning: boolean): Problem {
  const parts = items.map(([w, h], i) => part(`${i + 1}`, 1, w, h, turning));
  return { parts, stock: [sheet(W, H)], kerf: ratio(0), trim: ratio(0) };
}

function pricedProblem({ sheets, parts }: PricedInstance, turning: boolean): Problem {
  return {
    parts: parts.map(([w, h, demand], i) => part(`${i + 1}`, demand, w, h, turning)),
    stock: sheets.map(([w, h, price]) => ({ ...sheet(w, h), price: ratio(price) })),
    kerf: ratio(0),
    trim: ratio(0),
  };
}

/** Drawer parts of every size that a shop cuts from 48 × 96 in sheets, the saw's kerf 1/8 in; half may turn. */
function shopProblem(pieces: number, kinds: number): Problem {
  const parts = Array.from({ length: kinds }, (_, k) => {
    const quantity = Math.floor(((k + 1) * pieces) / kinds) - Math.floor((k * pieces) / kinds);
    const size = (least: number, spread: number, step: number) => ratio(16 * least + ((k * step) % (16 * spread)), 16);
    return { ...part(`${k + 1}`, quantity, 1, 1, k % 2 === 0), length: size(10, 20, 53), width: size(3, 14, 37) };
  });
  return { parts, stock: [sheet(96, 48)], kerf: ratio(1, 8), trim: ratio(0) };
}

/** The same instances in another order, turned over, and in another measure. */
const COPIES: Record<string, (instance: PackingInstance) => PackingInstance> = {
  shuffled: (instance) => ({ ...instance, items: shuffled(instance.items) }),
  mirrored: (instance) => ({
    ...instance,
    W: instance.H,
    H: instance.W,
    items: instance.items.map(([w, h]): [number, number] => [h, w]),
  }),
  rescaled: (instance) => ({
    ...instance,
    W: instance.W * 7,
    H: instance.H * 7,
    items: instance.items.map(([w, h]): [number, number] => [w * 7, h * 7]),
  }),
};

/** Every other one from the front, then the rest from the back. */
const shuffled = <T>(items: readonly T[]): T[] => [
  ...items.filter((_, i) => i % 2 === 1),
  ...items.filter((_, i) => i % 2 === 0).reverse(),
];
