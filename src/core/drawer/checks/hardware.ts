import { add, half, isNegative, isPositive, isZero, less, roundFigure, subtract } from "../../length";
import { itemsOf } from "../hardware";
import type { Drawer } from "../plan/plan";
import { behindHoles, type Behind } from "../plan/pull-holes";
import { pullHeightOf, pullHolesOf, pullsOf } from "../plan/pulls";
import { doubtful, isMoreThan, wrong, type Found } from "./finding";

/** Screws that come out on the other side, or that nobody sells. */
export const checkScrews = (drawer: Drawer): Found[] =>
  itemsOf(drawer).flatMap(({ name, size, most, through, quantity, stock }): Found[] => {
    if (!/screw|nail/.test(name) || isZero(quantity)) return [];
    if (!size) return [doubtful("screw.none", { name })];
    if (through && !isMoreThan(size, through)) return [wrong("screw.short", { name, size, through })];
    if (name === "pocket screw" && most && isMoreThan(size, most))
      return [wrong("screw.pocket", { size, most, stock })];
    return most && isMoreThan(size, most) ? [wrong("screw.through", { name, size, most })] : [];
  });

/** Pulls that miss their front. */
export function checkPull(drawer: Drawer): Found[] {
  const { opening, front } = drawer;
  const s = opening.standards;
  const pulls = pullsOf(drawer);
  if (pulls.length === 0) return s["pulls per front"] === 0 ? [] : [doubtful("pull.noLine", {})];
  const width = front.width.value;
  const height = pullHeightOf(drawer).value;
  const pastSide = pullHolesOf(drawer).some((hole) => isNegative(hole) || isMoreThan(hole, width));
  const pastEdge = isMoreThan(front.bottom.value, height) || isMoreThan(height, front.top);
  return [
    ...(pastSide ? [doubtful("pull.pastSide", { width })] : []),
    ...(pastEdge ? [doubtful("pull.pastEdge", { height: front.height.value, down: s["pull height"] })] : []),
    ...(pastSide || pastEdge ? [] : checkHoles(drawer)),
    ...(s["pull kind"] === "shop-made" ? checkPlate(drawer) : []),
  ];
}

/** Holes behind which there is no box, or what no screw goes into. */
function checkHoles(drawer: Drawer): Found[] {
  const behind = behindHoles(drawer);
  const found = (where: Behind, finding: Found): Found[] => (behind.includes(where) ? [finding] : []);
  return [
    ...found("cabinet", wrong("pull.meetsCabinet", {})),
    ...found("side", wrong("pull.meetsSide", {})),
    ...found("beside", doubtful("pull.pastBox", { where: "beside" })),
    ...found("above", doubtful("pull.pastBox", { where: "above" })),
    ...found("below", doubtful("pull.pastBox", { where: "below" })),
  ];
}

/** A shop-made pull holds its screws well inside its ends, and stays on its front. Limit: common practice. */
function checkPlate(drawer: Drawer): Found[] {
  const { standards: s, unit } = drawer.opening;
  const { "pull length": length, "pull spacing": spacing } = s;
  const width = drawer.front.width.value;
  const left = half(subtract(length, spacing));
  const near = roundFigure("1/2", "12", unit);
  const reach = half(length);
  const past = pullsOf(drawer).some(({ value }) => isMoreThan(reach, value) || isMoreThan(add(value, reach), width));
  return [
    ...(isPositive(left)
      ? less(left, near)
        ? [doubtful("pull.holesNearEnd", { length, left })]
        : []
      : [wrong("pull.holesOff", { length, spacing })]),
    ...(past ? [doubtful("pull.platePast", { length, width })] : []),
  ];
}
