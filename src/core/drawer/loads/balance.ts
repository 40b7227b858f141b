import { isPositive, roundFigure, toDouble, total, type Rational } from "../../length";
import { moments, type Body } from "../../wood";
import type { Opening } from "../opening";
import { boxStartOf } from "../plan/box-plan";
import { levelOf } from "../plan/outside";
import type { Drawer, PlannedOpening } from "../plan/plan";
import { carriedBy } from "./load";

/** Whether a cabinet stands with drawers open, and what an anchor at its top would have to hold. */
export interface Balance {
  /** Each drawer with what comes of it where it alone is out, and the others are shut and empty. */
  each: readonly { drawer: Drawer; one: Tilt }[];
  all: Tilt;
}

/** The moments about the tipping line, what holds over what tips, and the pull on the anchor, in lb or kg, where it tips. */
export interface Tilt {
  holds: number;
  tips: number;
  ratio: number;
  pull: number;
}

/**
 * A cabinet that stands on its tipping line as on a hinge; one whose weight is not told is not judged. Drawers run out by
 * the whole length of their slides, full; what is shut holds by its own weight alone.
 */
export function balanceOf(openings: readonly PlannedOpening[]): Balance | undefined {
  const first = openings[0]?.opening;
  const weight = first?.standards["cabinet weight"];
  const drawers = openings.flatMap(({ drawers }) => drawers);
  if (!first || weight === undefined || drawers.length === 0) return undefined;
  const recess = recessOf(first);
  const asked = first.standards["balance depth"];
  const cabinet = { weight, reach: asked === "center" ? recess - toDouble(depthOf(first)) / 2 : -toDouble(asked) };
  const height = heightOf(first);
  const levers = drawers.map((drawer) => leverOf(drawer, recess));
  const tilt = (isOut: (lever: Lever) => boolean): Tilt => {
    const { holds, tips } = moments([cabinet, ...levers.map((lever) => (isOut(lever) ? lever.open : lever.shut))]);
    return { holds, tips, ratio: tips === 0 ? Infinity : holds / tips, pull: Math.max(0, tips - holds) / height };
  };
  return {
    each: levers.map((own) => ({ drawer: own.drawer, one: tilt((lever) => lever === own) })),
    all: tilt(() => true),
  };
}

/** @source common practice: a toe kick stands 3 in | 75 mm back */
function recessOf({ standards, carcase, unit }: Opening): number {
  const asked = standards["toe recess"];
  if (asked !== "auto") return toDouble(asked);
  return carcase && isPositive(carcase.toeKick) ? toDouble(roundFigure("3", "75", unit)) : 0;
}

/** A drawer as it stands open and full, and as it stands shut and empty. */
interface Lever {
  drawer: Drawer;
  open: Body;
  shut: Body;
}

/** Centers of weight lie in the middle of the box. */
function leverOf(drawer: Drawer, recess: number): Lever {
  const { stock, opening } = drawer;
  const { box, total } = carriedBy(drawer);
  const back = toDouble(boxStartOf(opening.standards)) + toDouble(stock.depth.value) / 2 - recess;
  return {
    drawer,
    open: { weight: total, reach: toDouble(stock.slide.value) - back },
    shut: { weight: box, reach: -back },
  };
}

const depthOf = ({ least, carcase }: Opening): Rational =>
  carcase ? total([least.depth, carcase.back, carcase.backInset]) : least.depth;

const heightOf = (opening: Opening): number =>
  toDouble(opening.least.height) +
  2 * toDouble(levelOf(opening)) +
  (opening.carcase ? toDouble(opening.carcase.toeKick) : 0);
