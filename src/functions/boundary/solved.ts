import { Fault, keyOf, orElse, type Rational } from "../../core/length";
import { solve, stockUses, type Effort, type Solution, type StockUse } from "../../core/sheets";
import { Memo } from "./memo";
import type { SheetRows } from "./sheet-groups";

/** How sheets are cut. */
export interface Cutting {
  kerf: Rational;
  trim: Rational;
  effort: Effort;
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
    () => solve({ ...group, ...cutting }, cutting.effort),
    ({ code, data }): never => {
      const part = group.parts[data.index as number];
      throw new Fault(code, part && !part.planned ? { ...data, row: part.row } : data);
    },
  );

/** All that an answer depends on; what parts and stock are called does not matter to it. */
function keyOfProblem({ parts, stock }: SheetRows, { kerf, trim, effort }: Cutting): string {
  const groups = new Map<string, number>();
  const numberOf = (group: string): number => {
    if (!groups.has(group)) groups.set(group, groups.size);
    return groups.get(group)!;
  };
  return [
    effort,
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
