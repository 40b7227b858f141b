import { half, roundDown, roundFigure, roundUp, share, times, type Rational } from "../../length";
import { everyFew } from "../hardware/screws";
import type { Drawer } from "../plan/plan";
import { plus, Size, sum } from "../size";
import { MOST_MOVING, movingOf, type Moving } from "./moving";

/** How a solid bottom is held that runs under the back, and moves there: one slot for each of its screws. */
export interface Slot {
  /** From the bottom's rear edge, where it is open, to its closed end. */
  length: Size;
  width: Rational;
  /** From either end of the bottom to the middles of the slots, up to the bottom's own middle. */
  places: readonly Rational[];
  moving: Moving;
}

/**
 * The slots of a drawer's bottom; none where plain screws, nails or grooves hold it. The bottom is fixed in the groove of
 * the box front, so that all of its movement is at the back; its screws stand in the middle of the back.
 * @source common practice: slots, and washers under the heads, where solid wood is screwed on across its grain; a bit of
 * 3/16 in (5 mm) clears a No. 8 (4 mm) screw
 */
export function slotOf({ opening, stock }: Drawer): Slot | undefined {
  const { standards: s, unit } = opening;
  if (s["bottom fit"] !== "under back") return undefined;
  const moving = movingOf(s["bottom material"], stock.bottomDepth.value, s, MOST_MOVING);
  const count = bottomScrewsOf({ opening, stock });
  if (!moving || count === 0) return undefined;
  const width = roundFigure("3/16", "5", unit);
  const exact = sum(
    plus("half of the back", half(stock.end)),
    plus("half of the bit", half(width)),
    plus("swelling", moving.swelling),
  );
  const step = roundFigure("1/16", "1", unit);
  const places = Array.from({ length: Math.ceil(count / 2) }, (_, i) => {
    const place = share(times(2 * i + 1, stock.bottomWidth.value), 2 * count);
    // One in the middle is there from both ends.
    return 2 * i + 1 === count ? place : roundDown(place, step);
  });
  const length = new Size(
    roundUp(exact.value, step),
    (write) => `${exact.how(write)} = ${write(exact.value)}, up to a multiple of ${write(step)}`,
  );
  return { length, width, places, moving };
}

/**
 * Screws up through a bottom that slides in under the back.
 * @source common practice: one to every 8 in (200 mm), at least two
 */
export function bottomScrewsOf({ opening: { standards: s, unit }, stock }: Pick<Drawer, "opening" | "stock">): number {
  const asked = s["bottom screws"];
  return asked === "auto" ? everyFew(stock.insideWidth.value, roundFigure("8", "200", unit), 2) : asked;
}
