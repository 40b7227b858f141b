import { once } from "../once";
import { add, isNegative, less, lesserOf, subtract, ZERO } from "../../length";
import { isJoined } from "../joined-front";
import { sideSpace } from "./mounting";
import type { Drawer } from "./plan";
import { pullHeightOf, pullHolesOf } from "./pulls";

/**
 * What lies behind a hole of a front: its box, the end of a box's side, nothing (beside the box, or above or below it),
 * or the cabinet, which a screw's head meets before the drawer is shut.
 */
export type Behind = "box" | "side" | "beside" | "above" | "below" | "cabinet";

/** What lies behind each hole of a front's pulls, left to right. */
export function behindHoles(drawer: Drawer): Behind[] {
  const { opening, face, front, stock, boxBottom, boxHeight, sideHeight } = drawer;
  const y = pullHeightOf(drawer).value;
  const top = add(boxBottom.value, boxHeight.value);
  const bottom = subtract(top, sideHeight.value);
  const width = front.width.value;
  const space = sideSpace(drawer).value;
  const pastOpening = isNegative(y) || less(opening.least.height, y);
  return pullHolesOf(drawer).map((x) => {
    // How far the hole lies inside the opening's side: the nearer one.
    const inside = lesserOf(subtract(x, face.left.value), subtract(subtract(width, face.right.value), x));
    if (pastOpening || less(inside, ZERO)) return "cabinet";
    if (!less(y, top)) return "above";
    if (!less(bottom, y)) return "below";
    if (less(inside, space)) return "beside";
    return less(inside, add(space, stock.side)) ? "side" : "box";
  });
}

/** Whether a screw there goes through the box's front as well. */
const isThroughBox = (behind: Behind): boolean => behind === "box" || behind === "side";

/** Whether each screw of a front's pulls goes through a box front too: one that is its box's own has none behind it. */
export const throughBox = once((drawer: Drawer): readonly boolean[] =>
  behindHoles(drawer).map((behind) => !isJoined(drawer.opening.standards) && isThroughBox(behind)),
);
