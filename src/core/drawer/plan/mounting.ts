import { less, share } from "../../length";
import { isJoined } from "../joined-front";
import { runnerGrooveWidth, runnerOf, stripThickness } from "../runner";
import { isFramed } from "../opening";
import { minus, plus, shared, Size, sum } from "../size";
import type { Drawer, Hung, PlannedOpening } from "./plan";
import { FLOORS } from "./box-plan";
import { pullHeightOf, pullsOf } from "./pulls";

/** How one drawer is hung and its front is put on. Heights are measured up from the floor of the opening. */
export interface Mounting {
  drawer: Drawer;
  /** What stands between this box and the one below, or the floor, while the slides are set. */
  boxSpacer: Size;
  /** What slides at the side, or runners, stand on while they are screwed on. */
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
  /** What stands on the case's floor, where that lies below the top edge of a face frame's rail. */
  fromFloor?: { box?: Size; slide?: Size };
}

/**
 * The drawers of an opening from top to bottom, as they are mounted.
 * @throws Fault where pulls cannot stand on their lines
 */
export const mountingOf = ({ drawers }: PlannedOpening): Mounting[] =>
  drawers.map((drawer, i) => mounting(drawer, drawers[i + 1]));

function mounting(drawer: Drawer, below?: Drawer): Mounting {
  const { face, front, boxBottom } = drawer;
  const space = sideSpace(drawer);
  const pulls = pullsOf(drawer);
  const slideSpacer = slideSpacerOf(drawer);
  return {
    drawer,
    boxSpacer: below
      ? sum(plus("box bottom", boxBottom), minus("top of the box below", topOf(below)))
      : sum(plus(`box bottom above the ${isFramed(drawer.opening) ? FLOORS.framed : FLOORS.bare}`, boxBottom)),
    ...(slideSpacer && { slideSpacer }),
    pastLeft: sum(plus("front past opening", face.left), plus("side space", space)),
    pastRight: sum(plus("front past opening", face.right), plus("side space", space)),
    below: sum(plus("box bottom", boxBottom), minus("front bottom", front.bottom)),
    ...(pulls.length > 0 && { pullHeight: pullHeightOf(drawer) }),
    pulls,
    frontScrews: frontScrewsOf(drawer),
    ...fromFloor(drawer, below === undefined, slideSpacer),
  };
}

/**
 * From the floor to the lower edge of a slide or strip. The box lies on the strips of wood runners: in a groove, its
 * upper cheek lies on the strip.
 */
function slideSpacerOf({ opening, boxBottom, slideCenterline }: Drawer): Size | undefined {
  const s = opening.standards;
  if (runnerOf(s) === "under") return sum(plus("box bottom", boxBottom), minus("runner thickness", stripThickness(s)));
  if (!slideCenterline) return undefined;
  const from = plus("slide centerline", slideCenterline);
  if (!runnerOf(s)) return sum(from, minus("half of slide height", share(s["slide height"], 2)));
  const half = share(runnerGrooveWidth(s).value, 2);
  return sum(from, plus("half of the runner groove", half), minus("runner thickness", stripThickness(s)));
}

function fromFloor({ opening, boxBottom }: Drawer, lowest: boolean, slide?: Size): Pick<Mounting, "fromFloor"> {
  const offset = opening.standards["floor offset"];
  if (!isFramed(opening) || !offset) return {};
  const deeper = plus("floor offset", offset);
  return {
    fromFloor: {
      ...(lowest && { box: sum(plus("box bottom", boxBottom), deeper) }),
      ...(slide && { slide: sum(plus("slide spacer", slide), deeper) }),
    },
  };
}

const topOf = ({ boxBottom, boxHeight }: Drawer): Size =>
  sum(plus("box bottom", boxBottom), plus("box height", boxHeight));

/** What a box leaves free at each side of its opening. */
export const sideSpace = ({ opening, stock }: Pick<Drawer, "opening" | "stock">): Size =>
  shared(sum(plus("opening width", opening.least.width), minus("box width", stock.width)), 2);

/** @source common practice: two screws hold a front to its box, four a wide one */
export const frontScrewsOf = (drawer: Drawer): number =>
  isJoined(drawer.opening.standards) ? 0 : screwsOfFront(drawer);

export function screwsOfFront({ front, opening }: Hung): number {
  const s = opening.standards;
  if (s["front screws"] !== "auto") return s["front screws"];
  return less(front.width.value, s["four screws from"]) ? 2 : 4;
}
