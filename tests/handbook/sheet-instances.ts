import { readFileSync } from "node:fs";

const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));

/**
 * Rectangles for one size of bin, with the best known bounds: `O` oriented, `R` rotatable; `G` guillotine, `F` free.
 * @source classes 1 to 6 Berkey and Wang (1987), classes 7 to 10 Martello and Vigo (1998); authors and years from memory
 */
export interface PackingInstance {
  id: string;
  c: number;
  n: number;
  i: number;
  W: number;
  H: number;
  lb: { area: number; O: number; R: number };
  ub: { OG: number; RG: number; OF: number; RF: number };
  /** Width, height. */
  items: [number, number][];
}

export const packingInstances = read("./rectangle-bin-packing.json") as PackingInstance[];

/**
 * Rectangles in numbers, from sheets of several prices, with the bound and the best known cost of cutting in two
 * stages.
 * @source the gcut instances of Beasley (1985; author and year from memory), with the demands and the sheets that the file gives them
 */
export interface PricedInstance {
  id: string;
  /** Width, height, price. */
  sheets: [number, number, number][];
  /** Width, height, demand. */
  parts: [number, number, number][];
  least_cost: { oriented: [number, number]; rotation: [number, number] };
}

export const pricedInstances = read("./priced-sheet-cutting.json") as PricedInstance[];
