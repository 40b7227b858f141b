import { divide, less, ratio, ZERO } from "../../length";
import { minus, plus, shared, Size, sum } from "../size";
import type { Drawer, PlannedOpening } from "./plan";
import { pullHeightOf, pullsOf } from "./pulls";

/** How one drawer is hung and its front is put on. Heights are measured up from the floor of the opening. */
export interface Mounting {
  drawer: Drawer;
  /** What stands between this box and the one below, or the floor, while the slides are set. */
  boxSpacer: Size;
  /** What the slide stands on while it is screwed on; undermount slides have none. */
  slideSpacer?: Size;
  /** How far the front reaches past the box; negative where the box reaches past it. */
  pastLeft: Size;
  pastRight: Size;
  below: Size;
  /** From the floor to the centers of the pulls; none where the front has none. */
  pullHeight?: Size;
  /** From the front's left edge to their centers. */
  pulls: Size[];
  frontScrews: number;
}

/**
 * The drawers of an opening from top to bottom, as they are mounted.
 * @throws Fault where pulls cannot stand on their lines
 */
export const mountingOf = ({ drawers }: PlannedOpening): Mounting[] =>
  drawers.map((drawer, i) => mounting(drawer, drawers[i + 1]));

function mounting(drawer: Drawer, below?: Drawer): Mounting {
  const { opening, face, front, boxBottom, slideCenterline } = drawer;
  const space = sideSpace(drawer);
  const pulls = pullsOf(drawer);
  const half = divide(opening.standards["slide height"], ratio(2));
  return {
    drawer,
    boxSpacer: sum(plus("box bottom", boxBottom), minus("top of the box below", below ? topOf(below) : ZERO)),
    ...(slideCenterline && {
      slideSpacer: sum(plus("slide centerline", slideCenterline), minus("half of slide height", half)),
    }),
    pastLeft: sum(plus("front past opening", face.left), plus("side space", space)),
    pastRight: sum(plus("front past opening", face.right), plus("side space", space)),
    below: sum(plus("box bottom", boxBottom), minus("front bottom", front.bottom)),
    ...(pulls.length > 0 && { pullHeight: pullHeightOf(drawer) }),
    pulls,
    frontScrews: frontScrewsOf(drawer),
  };
}

const topOf = ({ boxBottom, boxHeight }: Drawer): Size =>
  sum(plus("box bottom", boxBottom), plus("box height", boxHeight));

/** What a box leaves free at each side of its opening. */
export const sideSpace = ({ opening, stock }: Pick<Drawer, "opening" | "stock">): Size =>
  shared(sum(plus("opening width", opening.least.width), minus("box width", stock.width)), 2);

/** @source common practice: two screws hold a front to its box, four a wide one */
export function frontScrewsOf({ front, opening }: Drawer): number {
  const s = opening.standards;
  if (s["front screws"] !== "auto") return s["front screws"];
  return less(front.width.value, s["four screws from"]) ? 2 : 4;
}
