import { orElse } from "../../core/length";
import type { Cutting } from "../../core/money";
import {
  keyOfProblem,
  Meter,
  solve,
  stockUses,
  type SheetGroup,
  type Look,
  type Solution,
  type StockUse,
} from "../../core/sheets";
import { Memo } from "./memo";

/** Whole layouts: as many as a workbook shows at once. */
const layouts = new Memo<Solution>(24);
/** What a layout takes of each row of stock, which is all that a price needs: enough for a grid of prices. */
const takings = new Memo<readonly StockUse[]>(1200);

/** The layout of a group. */
export const solved = (group: SheetGroup, cutting: Cutting): Solution =>
  layouts.of(keyOf(group, cutting), () => solveGroup(group, cutting, "neat"));

/**
 * What the layout of a group takes of each row of stock: how it is cut makes no difference. It pushes no whole layout
 * out of memory.
 */
export function usesOf(group: SheetGroup, cutting: Cutting): readonly StockUse[] {
  const key = keyOf(group, cutting);
  return takings.of(key, () =>
    stockUses(layouts.get(key) ?? solveGroup(group, cutting, "any")).map(({ largestOffcut: _, ...use }) => use),
  );
}

const keyOf = (group: SheetGroup, { effort, halvings, ...cutting }: Cutting): string =>
  `${effort} ${halvings} ${keyOfProblem({ ...group, ...cutting })}`;

/** A part that was typed is named with its row. */
const solveGroup = (group: SheetGroup, { effort, halvings, ...cutting }: Cutting, look: Look): Solution =>
  orElse(
    () => solve({ ...group, ...cutting }, effort, Meter.halved(halvings), look),
    (fault): never => {
      const part = "index" in fault.data ? group.parts[fault.data.index] : undefined;
      throw part && !part.planned ? fault.told({ row: part.place }) : fault;
    },
  );
