import { isNegative, isZero } from "../../length";
import { itemsOf } from "../hardware";
import type { Drawer } from "../plan/plan";
import { pullHeightOf, pullHolesOf, pullsOf } from "../plan/pulls";
import { isMoreThan, doubtful, wrong, type Found } from "./finding";

/** Screws that come out on the other side, or that nobody sells. */
export const checkScrews = (drawer: Drawer): Found[] =>
  itemsOf(drawer).flatMap(({ name, size, most, quantity }): Found[] => {
    if (!/screw|nail/.test(name) || isZero(quantity)) return [];
    if (!size) return [doubtful("screw.none", { name })];
    return most && isMoreThan(size, most) ? [wrong("screw.through", { name, size, most })] : [];
  });

/** Pulls that miss their front. */
export function checkPull(drawer: Drawer): Found[] {
  const { opening, front } = drawer;
  const s = opening.standards;
  const pulls = pullsOf(drawer);
  if (pulls.length === 0) return s["pulls per front"] === 0 ? [] : [doubtful("pull.noLine")];
  const width = front.width.value;
  const height = pullHeightOf(drawer).value;
  const pastSide = pullHolesOf(drawer).some((hole) => isNegative(hole) || isMoreThan(hole, width));
  const pastEdge = isMoreThan(front.bottom.value, height) || isMoreThan(height, front.top);
  return [
    ...(pastSide ? [doubtful("pull.pastSide", { width })] : []),
    ...(pastEdge ? [doubtful("pull.pastEdge", { height: front.height.value, down: s["pull height"] })] : []),
  ];
}
