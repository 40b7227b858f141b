import type { Rational } from "../length";

/** Parts to be cut from stock of one material and thickness. All lengths in one unit, whichever it is. */
export interface Problem {
  parts: readonly Part[];
  stock: readonly Stock[];
  /** What the blade takes between neighbors. */
  kerf: Rational;
  /** Taken off each edge of a sheet first. */
  trim: Rational;
}

export interface Part {
  name: string;
  drawer?: string;
  quantity: number;
  length: Rational;
  width: Rational;
  /** Whether the part's length must lie along the sheet's, across it, or either way. */
  grain: "length" | "width" | "any";
  /**
   * Parts of one group are laid in one row along the sheet's length, in their order here; where all their quantities
   * have a common divisor, in so many such rows: an opening made twice has two runs of grain.
   */
  grainGroup?: string;
  /** Its group's row runs across the sheet: a stack of parts whose grain runs from side to side, as they hang. */
  grainRow?: "stacked";
  /** What lies between it and the next of its line at least, as waste: so far apart they hang, and the grain runs on. */
  grainGap?: Rational;
  /**
   * Which line of its group's row it is in, from 1, which is meant where not given: a row of several is a panel. Its
   * lines lie above one another, those of a stacked one from the left.
   */
  grainLine?: number;
  /** What lies between its line and the next at least, as waste. */
  lineGap?: Rational;
  /** The rows of `stock` that it may be cut from; all where not given. */
  from?: readonly number[];
  /** Where it lies, of a layout that is given: either all parts tell it, or none. */
  lies?: Lies;
}

/** A place on a sheet, from the lower left of the untrimmed sheet. */
interface Lies {
  /** Parts of one number lie on one sheet. */
  sheet: number;
  fromLeft: Rational;
  fromBottom: Rational;
  /** Its length lies across the sheet's. */
  turned: boolean;
}

export interface Stock {
  name: string;
  length: Rational;
  width: Rational;
  price?: Rational;
  /** As many as needed where not given. */
  available?: number;
  /** `none` frees every part to turn; the grain runs along the length where not given. */
  grain?: "length" | "none";
}

/** How many rows a grain group makes. */
export const rowsOf = (parts: readonly Part[], group: string): number =>
  parts.reduce(
    (common, { quantity, grainGroup }) => (grainGroup === group ? commonDivisor(common, quantity) : common),
    0,
  );

/** The lines of one row of a grain group, each the numbers of its parts in order. */
export function linesOf(parts: readonly Part[], group: string): number[][] {
  const rows = rowsOf(parts, group);
  const lines: number[][] = [];
  parts.forEach(({ quantity, grainGroup, grainLine = 1 }, index) => {
    if (grainGroup === group) for (let n = 0; n < quantity; n += rows) (lines[grainLine] ??= []).push(index);
  });
  // Numbers that no part has are holes.
  return lines.filter(Boolean);
}

/** Whether a group's row runs across the sheet; its first part says so for all. */
export const isStacked = (parts: readonly Part[], group: string): boolean =>
  parts.find(({ grainGroup }) => grainGroup === group)?.grainRow === "stacked";

export const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));
