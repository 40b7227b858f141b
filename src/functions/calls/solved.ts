import { orElse } from "../../core/length";
import type { Cutting } from "../../core/money";
import {
  keyOfProblem,
  Meter,
  searched,
  stockUses,
  type Searched,
  type SheetGroup,
  type Solution,
  type StockUse,
} from "../../core/sheets";
import { Memo } from "./memo";

/** Whole layouts: as many as a workbook shows at once. */
const layouts = new Memo<Solution>(24);
/** What was searched for the one may be cut for another: a price asks before a layout, an alternate is the job itself. */
const searches = new Memo<Searched>(48);
/** What a layout takes of each row of stock, which is all that a price needs: enough for a grid of prices. */
const takings = new Memo<readonly StockUse[]>(1200);

/** The layout of a group. */
export const solved = (group: SheetGroup, cutting: Cutting): Solution =>
  layouts.of(keyOf(group, cutting), () => searchedGroup(group, cutting).cut("neat"));

/**
 * What the layout of a group takes of each row of stock: how it is cut makes no difference. It pushes no whole layout
 * out of memory.
 */
export function usesOf(group: SheetGroup, cutting: Cutting): readonly StockUse[] {
  const key = keyOf(group, cutting);
  return takings.of(key, () =>
    stockUses(layouts.get(key) ?? searchedGroup(group, cutting).cut("any")).map(({ largestOffcut: _, ...use }) => use),
  );
}

const keyOf = (group: SheetGroup, { effort, halvings, ...cutting }: Cutting): string =>
  `${effort} ${halvings} ${keyOfProblem({ ...group, ...cutting })}`;

/** So often halved, steps are still enough for a quick search of the usual drawers. */
const OFTEN = 6;

/**
 * With how many steps it is asked makes no difference where a few were enough; so these are tried first, and take no
 * time beside the others where they were not. A part that was typed is named with its row.
 */
function searchedGroup(group: SheetGroup, cutting: Cutting): Searched {
  const few = { ...cutting, halvings: OFTEN };
  if (cutting.effort === "quick" && cutting.halvings < OFTEN) {
    const found = orElse(
      () => searches.of(keyOf(group, few), () => search(group, few)),
      () => undefined,
    );
    if (found?.isWhole) return found;
  }
  return orElse(
    () => searches.of(keyOf(group, cutting), () => search(group, cutting)),
    (fault): never => {
      const part = "index" in fault.data ? group.parts[fault.data.index] : undefined;
      throw part && !part.planned ? fault.told({ row: part.place }) : fault;
    },
  );
}

const search = (group: SheetGroup, { effort, halvings, ...cutting }: Cutting): Searched =>
  searched({ ...group, ...cutting }, effort, Meter.halved(halvings));
