/**
 * The problem as the algorithms see it: whole numbers, one kerf added to every size, equal pieces counted together.
 *
 * Adding the kerf to each piece and once to each sheet makes kerf-free cutting of what is cut with a kerf: n pieces in
 * a row take n sizes and n − 1 kerfs, which fit a sheet exactly where n enlarged pieces fit the enlarged sheet.
 */
export interface Model {
  kinds: readonly Kind[];
  sizes: readonly SheetSize[];
  /** How each kind may lie on each size, at `kind * sizes.length + size`: `UPRIGHT`, `TURNED`, both or neither. */
  ways: Uint8Array;
  /** All pieces together. */
  pieces: number;
  kerf: number;
}

/** Pieces that no cut can tell apart. */
export interface Kind {
  /** Along the sheet's length where upright. */
  w: number;
  h: number;
  count: number;
}

export interface SheetSize {
  w: number;
  h: number;
  /** What one costs, and one more for being a sheet: least weight is least cost, then fewest sheets. */
  weight: number;
  cost: number;
  available: number;
}

export const UPRIGHT = 1;
export const TURNED = 2;

/** Sheets as an algorithm leaves them, in the model's enlarged sizes. */
export interface Draft {
  weight: number;
  /** Area of the pieces that found no sheet, where stock is limited. */
  waiting: number;
  sheets: readonly DraftSheet[];
}

export interface DraftSheet {
  size: number;
  root: Divided;
}

/** Blocks side by side (`x`) or one above another (`y`) from the lower left; what they leave is left over. */
export interface Divided {
  w: number;
  h: number;
  axis: "x" | "y";
  blocks: readonly Block[];
}

export interface Placed {
  w: number;
  h: number;
  kind: number;
  turned: boolean;
}

export type Block = Divided | Placed;

export const isPlaced = (block: Block): block is Placed => "kind" in block;

/** What the blocks of a block take of it along its axis. */
export const usedOf = ({ axis, blocks }: Divided): number =>
  blocks.reduce((sum, block) => sum + (axis === "x" ? block.w : block.h), 0);

/** The same kinds, each so many times. */
export const withCounts = (model: Model, counts: Int32Array): Model => ({
  ...model,
  kinds: model.kinds.map((kind, k) => ({ ...kind, count: counts[k]! })),
  pieces: counts.reduce((sum, count) => sum + count, 0),
});

export const weightOf = ({ sizes }: Model, sheets: readonly DraftSheet[]): number =>
  sheets.reduce((sum, { size }) => sum + sizes[size]!.weight, 0);
