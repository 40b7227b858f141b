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
export function solved(group: SheetGroup, cutting: Cutting): Solution {
  const key = keyOf(group, cutting);
  return layouts.of(`${cutting.halvings} ${key}`, () => searchedGroup(group, cutting, key).cut("neat"));
}

/**
 * What the layout of a group takes of each row of stock: how it is cut makes no difference. It pushes no whole layout
 * out of memory.
 */
export function usesOf(group: SheetGroup, cutting: Cutting): readonly StockUse[] {
  const key = keyOf(group, cutting);
  const asked = `${cutting.halvings} ${key}`;
  return takings.of(asked, () => stockUses(layouts.get(asked) ?? searchedGroup(group, cutting, key).cut("any")));
}

/** Of all but how many steps there are. */
const keyOf = (group: SheetGroup, { effort, halvings: _, ...cutting }: Cutting): string =>
  `${effort} ${keyOfProblem({ ...group, ...cutting })}`;

/** So often halved, steps are still enough for a quick search of the usual drawers. */
const OFTEN = 6;

/**
 * With how many steps it is asked makes no difference where a few were enough; so these are tried first, and take no
 * time beside the others where they were not. A part that was typed is named with its row.
 */
function searchedGroup(group: SheetGroup, { effort, halvings, ...cutting }: Cutting, key: string): Searched {
  const search = (times: number): Searched =>
    searches.of(`${times} ${key}`, () => searched({ ...group, ...cutting }, effort, Meter.halved(times)));
  if (effort === "quick" && halvings < OFTEN) {
    const found = orElse(
      () => search(OFTEN),
      () => undefined,
    );
    if (found?.isWhole) return found;
  }
  return orElse(
    () => search(halvings),
    (fault): never => {
      const part = "index" in fault.data ? group.parts[fault.data.index] : undefined;
      throw part && !part.planned ? fault.told({ row: part.place }) : fault;
    },
  );
}
