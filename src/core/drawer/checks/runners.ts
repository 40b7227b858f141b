import { add, half, isNegative, isPositive, less, roundFigure, subtract, type Rational } from "../../length";
import { sideSpace } from "../plan/mounting";
import type { Drawer, PlannedOpening } from "../plan/plan";
import { runnerGrooveOf, stripOfRunner, type RunnerGroove } from "../plan/strip";
import { runnerGrooveDepth, runnerOf } from "../runner";
import { doubtful, isMoreThan, wrong, type Found } from "./finding";

/** Strips of wood runners that find no room below their box, or grooves that their side does not take. */
export function checkRunner(drawer: Drawer): Found[] {
  const strip = stripOfRunner(drawer);
  const s = drawer.opening.standards;
  const groove = runnerGrooveOf(drawer);
  if (groove) return checkGroove(drawer, groove);
  if (!strip || !isMoreThan(strip.thickness, s["space below"])) return [];
  return [wrong("runner.noRoom", { height: strip.thickness, below: s["space below"] })];
}

/** What is doubtful about the runners of all boxes of an opening. */
export function checkRunners({ opening, drawers }: PlannedOpening): Found[] {
  const drawer = drawers[0]!;
  const { side } = drawer.stock;
  const strip = stripOfRunner(drawer);
  if (!strip) return [];
  if (runnerOf(opening.standards) === "side groove") {
    const depth = runnerGrooveDepth(opening.standards);
    return isMoreThan(depth, half(side)) ? [doubtful("runner.grooveDeep", { depth, side })] : [];
  }
  const reach = subtract(strip.width.value, sideSpace(drawer).value);
  if (!isPositive(reach)) return [wrong("runner.misses", { width: strip.width.value })];
  return less(reach, side) ? [doubtful("runner.narrow", { reach, side })] : [];
}

function checkGroove(drawer: Drawer, { width, depth, offset }: RunnerGroove): Found[] {
  const s = drawer.opening.standards;
  const [low, high] = [offset.value, add(offset.value, width.value)];
  const edges = [
    ["lower", low],
    ["upper", subtract(drawer.sideHeight.value, high)],
  ] as const;
  const least = roundFigure("1/4", "6", drawer.opening.unit);
  const found = edges.flatMap(([edge, left]): Found[] => {
    if (isNegative(left)) return [wrong("runner.pastSide", { edge })];
    return less(left, least)
      ? [doubtful("runner.nearEdge", { left, where: edge === "lower" ? "below" : "above" })]
      : [];
  });
  if (s["bottom fit"] === "applied") return found;
  const bottom: [Rational, Rational] = [s["groove offset"], add(s["groove offset"], s["bottom thickness"])];
  const meets =
    less(low, bottom[1]) && less(bottom[0], high) && !less(add(depth, s["groove depth"]), drawer.stock.side);
  const data = { depth, bottom: s["groove depth"], side: drawer.stock.side };
  return meets ? [...found, wrong("runner.meetsBottom", data)] : found;
}
