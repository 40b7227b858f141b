import { orElse, toDouble, total, type Rational } from "../../length";
import { tipping, type OpenDrawer } from "../../wood";
import type { Opening } from "../opening";
import { setbackOf } from "../plan/box-plan";
import { levelOf } from "../plan/outside";
import type { Drawer, PlannedOpening } from "../plan/plan";
import { carriedBy } from "./load";

/** Whether a cabinet stands with drawers open, and what an anchor at its top would have to hold. */
export interface Balance {
  /** The drawer that alone comes nearest to tipping it, the others shut and empty. */
  worst: Drawer;
  one: Tilt;
  all: Tilt;
}

/** The moment that holds over the moment that tips, and the pull on the anchor, in lb or kg, where it tips. */
interface Tilt {
  ratio: number;
  pull: number;
}

/**
 * A cabinet that stands on its front edge as on a hinge; one whose weight is not told is not judged. Drawers run out by
 * the whole length of their slides, full; what is shut holds by its own weight alone.
 */
export function balanceOf(openings: readonly PlannedOpening[]): Balance | undefined {
  const first = openings[0]?.opening;
  const weight = first?.standards["cabinet weight"];
  const drawers = openings.flatMap(({ drawers }) => drawers);
  if (!first || weight === undefined || drawers.length === 0) return undefined;
  const asked = first.standards["balance depth"];
  const depth = asked === "center" ? toDouble(depthOf(first)) / 2 : toDouble(asked);
  const height = heightOf(first);
  const levers = drawers.map(leverOf);
  const tilt = (isOut: (lever: Lever) => boolean): Tilt => {
    const carried = levers.map((lever) => (isOut(lever) ? lever.open : lever.shut));
    const ratio = orElse(
      () => tipping(weight, depth, carried),
      () => Infinity,
    );
    const tips = carried.reduce((sum, { weight: w, reach }) => sum + w * reach, 0) - weight * depth;
    return { ratio, pull: Math.max(0, tips) / height };
  };
  const alone = levers.map((own) => ({ worst: own.drawer, one: tilt((lever) => lever === own) }));
  const worst = alone.reduce((a, b) => (b.one.ratio < a.one.ratio ? b : a));
  return { ...worst, all: tilt(() => true) };
}

/** A drawer as it stands open and full, and as it stands shut and empty. */
interface Lever {
  drawer: Drawer;
  open: OpenDrawer;
  shut: OpenDrawer;
}

/** Centers of weight lie in the middle of the box, measured from the front of the carcase. */
function leverOf(drawer: Drawer): Lever {
  const { stock, opening } = drawer;
  const { box, total } = carriedBy(drawer);
  const back = toDouble(setbackOf(opening.standards)) + toDouble(stock.depth.value) / 2;
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
