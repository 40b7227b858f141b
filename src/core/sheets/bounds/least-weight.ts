import { TURNED, UPRIGHT, type Model } from "../model";
import { sideFunctions } from "./dual-feasible";
import { leastCover } from "./cover";

/**
 * A weight below which no answer lies: the best over all pairs of dual feasible functions. A piece that may turn counts
 * the less of its two ways, one that may not counts its own; every sheet counts the product of its own sides' values.
 * What a sheet holds is covered at least cost (`leastCover`), and at least by so many sheets.
 *
 * Ignores that every cut runs edge to edge, and how often each kind can lie on one sheet.
 */
export function leastWeight(model: Model, most = 40): number {
  const { kinds, sizes, ways } = model;
  if (model.pieces === 0) return 0;
  const usable = sizes.filter(({ available }) => available > 0);
  const [wholeW, wholeH] = [Math.max(...usable.map(({ w }) => w)), Math.max(...usable.map(({ h }) => h))];
  const lying = kinds.map((_, k) => {
    let way = 0;
    for (let s = 0; s < sizes.length; s++) way |= ways[k * sizes.length + s]!;
    return way;
  });
  const upright = kinds.filter((_, k) => lying[k]! & UPRIGHT);
  const turned = kinds.filter((_, k) => lying[k]! & TURNED);
  const fs = sideFunctions(wholeW, [...upright.map(({ w }) => w), ...turned.map(({ h }) => h)], most);
  const gs = sideFunctions(wholeH, [...upright.map(({ h }) => h), ...turned.map(({ w }) => w)], most);
  const counts = Float64Array.from(kinds, ({ count }) => count);
  // What each function makes of each kind's two sides, worked out once.
  const fw = fs.map((f) => Float64Array.from(kinds, ({ w }) => f(Math.min(w, wholeW))));
  const fh = fs.map((f) => Float64Array.from(kinds, ({ h }) => f(Math.min(h, wholeW))));
  const gw = gs.map((g) => Float64Array.from(kinds, ({ w }) => g(Math.min(w, wholeH))));
  const gh = gs.map((g) => Float64Array.from(kinds, ({ h }) => g(Math.min(h, wholeH))));
  const fSizes = fs.map((f) => usable.map(({ w }) => f(w)));
  const gSizes = gs.map((g) => usable.map(({ h }) => g(h)));
  const demandOf = (i: number, j: number): number => {
    const [up1, up2, across1, across2] = [fw[i]!, gh[j]!, fh[i]!, gw[j]!];
    let demand = 0;
    for (let k = 0; k < kinds.length; k++) {
      const way = lying[k]!;
      const up = up1[k]! * up2[k]!;
      const across = across1[k]! * across2[k]!;
      demand += counts[k]! * (way === UPRIGHT || (way !== TURNED && up < across) ? up : across);
    }
    return demand;
  };
  const capacities = new Float64Array(usable.length);
  let [cost, sheets, fullest] = [0, 0, 0];
  for (let i = 0; i < fs.length; i++)
    for (let j = 0; j < gs.length; j++) {
      const demand = demandOf(i, j);
      for (let s = 0; s < usable.length; s++) capacities[s] = fSizes[i]![s]! * gSizes[j]![s]!;
      // With one size only a fuller cover than any before can raise the bound.
      if (usable.length === 1 && demand <= fullest * capacities[0]!) continue;
      fullest = demand / capacities[0]!;
      const cover = leastCover(usable, capacities, demand);
      if (cover.cost > cost) cost = cover.cost;
      if (cover.sheets > sheets) sheets = cover.sheets;
    }
  // Weights count each cost once for every piece and one more, and a sheet as one.
  return cost * (model.pieces + 1) + sheets;
}
