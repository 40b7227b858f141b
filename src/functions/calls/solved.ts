import { Fault, keyOf, orElse, type Rational } from "../../core/length";
import { Meter, solve, stockUses, type Effort, type Solution, type StockUse } from "../../core/sheets";
import { Memo } from "./memo";
import type { SheetRows } from "./sheet-groups";

/** How sheets are cut. */
export interface Cutting {
  kerf: Rational;
  trim: Rational;
  effort: Effort;
  /** Of the steps that one call may take, those for this group: a half so many times over. */
  halvings: number;
}

/**
 * How often the steps of one call are halved for each of its groups, by their pieces; so that all together take no longer
 * than one may. By halves, so that a group whose neighbors change a little is the same problem as before.
 * @param times how often the call cuts such groups
 */
export function halvingsOf(groups: readonly SheetRows[], times = 1): number[] {
  const pieces = groups.map(({ parts }) => parts.reduce((sum, { quantity }) => sum + quantity, 0));
  const all = times * pieces.reduce((sum, n) => sum + n, 0);
  return pieces.map((own) => {
    let halvings = 0;
    while (own > 0 && own * 2 ** halvings < all) halvings++;
    return halvings;
  });
}

/** Whole layouts: as many as a workbook shows at once. */
const layouts = new Memo<Solution>(24);
/** What a layout takes of each row of stock, which is all that a price needs: enough for a grid of prices. */
const takings = new Memo<readonly StockUse[]>(1200);

/** The layout of a group. */
export const solved = (group: SheetRows, cutting: Cutting): Solution => {
  const key = keyOfProblem(group, cutting);
  return layouts.of(key, () => solveRows(group, cutting));
};

/** What the layout of a group takes of each row of stock. It pushes no whole layout out of memory. */
export function usesOf(group: SheetRows, cutting: Cutting): readonly StockUse[] {
  const key = keyOfProblem(group, cutting);
  return takings.of(key, () =>
    stockUses(layouts.get(key) ?? solveRows(group, cutting)).map(({ largestOffcut: _, ...use }) => use),
  );
}

/** A part that was typed is named with its row. */
const solveRows = (group: SheetRows, cutting: Cutting): Solution =>
  orElse(
    () => solve({ ...group, ...cutting }, cutting.effort, Meter.halved(cutting.halvings)),
    ({ code, data }): never => {
      const part = group.parts[data.index as number];
      throw new Fault(code, part && !part.planned ? { ...data, row: part.row } : data);
    },
  );

/** All that an answer depends on; what parts and stock are called does not matter to it. */
function keyOfProblem({ parts, stock }: SheetRows, { kerf, trim, effort, halvings }: Cutting): string {
  const groups = new Map<string, number>();
  const numberOf = (group: string): number => {
    if (!groups.has(group)) groups.set(group, groups.size);
    return groups.get(group)!;
  };
  return [
    effort,
    halvings,
    keyOf(kerf),
    keyOf(trim),
    ...stock.map((row) =>
      [keyOf(row.length), keyOf(row.width), row.price && keyOf(row.price), row.available, row.grain].join(" "),
    ),
    "",
    ...parts.map(({ quantity, length, width, grain, grainGroup, from }) =>
      [quantity, keyOf(length), keyOf(width), grain, grainGroup === undefined ? "" : numberOf(grainGroup), from].join(
        " ",
      ),
    ),
  ].join(";");
}
