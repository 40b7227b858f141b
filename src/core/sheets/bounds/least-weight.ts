import { TURNED, UPRIGHT, type Model } from "../model";
import { leastCover } from "./cover";
import { sideFunctions, type SideFunction } from "./dual-feasible";

/**
 * A weight below which no answer lies: the best over all pairs of dual feasible functions. A piece that may turn counts
 * the less of its two ways, one that may not counts its own; every sheet counts the product of its own sides' values.
 * What a sheet holds is covered at least cost (`leastCover`), and at least by so many sheets.
 *
 * Ignores that every cut runs edge to edge, and how often each kind can lie on one sheet.
 */
export function leastWeight(model: Model, most = 40): number {
  const { kinds, ways } = model;
  const sizes = model.sizes.filter(({ available }) => available > 0);
  const lying = kinds.map((_, k) => {
    let way = 0;
    for (let s = 0; s < model.sizes.length; s++) way |= ways[k * model.sizes.length + s]!;
    return way;
  });
  const sides = kinds.map(({ w, h }, k) => ({ w, h, way: lying[k]! }));
  const across = measures(
    sides,
    sizes.map(({ w }) => w),
    most,
  );
  const up = measures(
    sides.map(({ w, h, way }) => ({ w: h, h: w, way })),
    sizes.map(({ h }) => h),
    most,
  );
  const counts = Float64Array.from(kinds, ({ count }) => count);
  const capacities = new Float64Array(sizes.length);
  let [cost, sheets, fullest] = [0, 0, 0];
  for (const f of across)
    for (const g of up) {
      const demand = demandOf(f, g, lying, counts);
      for (let s = 0; s < sizes.length; s++) capacities[s] = f.sheets[s]! * g.sheets[s]!;
      // With one size only a fuller cover than any before can raise the bound.
      if (sizes.length === 1 && demand <= fullest * capacities[0]!) continue;
      fullest = demand / capacities[0]!;
      const cover = leastCover(sizes, capacities, demand);
      if (cover.cost > cost) cost = cover.cost;
      if (cover.sheets > sheets) sheets = cover.sheets;
    }
  // Weights count each cost once for every piece and one more, and a sheet as one.
  return cost * (model.pieces + 1) + sheets;
}

/** What a function makes of one side of every kind, as it lies upright and turned, and of every sheet. */
interface Measure {
  upright: Float64Array;
  turned: Float64Array;
  sheets: readonly number[];
}

interface Sides {
  w: number;
  h: number;
  way: number;
}

function measures(kinds: readonly Sides[], sheets: readonly number[], most: number): Measure[] {
  const whole = Math.max(...sheets);
  const upright = kinds.flatMap(({ w, way }) => (way & UPRIGHT ? [w] : []));
  const turned = kinds.flatMap(({ h, way }) => (way & TURNED ? [h] : []));
  const of = (f: SideFunction, side: "w" | "h"): Float64Array =>
    Float64Array.from(kinds, (kind) => f(Math.min(kind[side], whole)));
  const all = sideFunctions(whole, [...upright, ...turned], most).map((f) => {
    const values = of(f, "w");
    return { upright: values, turned: turned.length > 0 ? of(f, "h") : values, sheets: sheets.map(f) };
  });
  return sheets.length === 1 ? strongest(all) : all;
}

/** On one size of sheet, a function that makes no more of any kind than another does is of no use beside it. */
function strongest(all: readonly Measure[]): Measure[] {
  const kept: Measure[] = [];
  for (const measure of all) {
    if (measure.sheets[0] === 0 || kept.some((other) => noMore(measure, other))) continue;
    const left = kept.filter((other) => !noMore(other, measure));
    kept.splice(0, kept.length, ...left, measure);
  }
  return kept;
}

function noMore(a: Measure, b: Measure): boolean {
  const [x, y] = [a.sheets[0]!, b.sheets[0]!];
  for (let k = 0; k < a.upright.length; k++)
    if (a.upright[k]! * y > b.upright[k]! * x || a.turned[k]! * y > b.turned[k]! * x) return false;
  return true;
}

function demandOf(f: Measure, g: Measure, lying: readonly number[], counts: Float64Array): number {
  let demand = 0;
  for (let k = 0; k < counts.length; k++) {
    const way = lying[k]!;
    const up = f.upright[k]! * g.upright[k]!;
    const across = f.turned[k]! * g.turned[k]!;
    demand += counts[k]! * (way === UPRIGHT || (way !== TURNED && up < across) ? up : across);
  }
  return demand;
}
