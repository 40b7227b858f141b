import { add, half, isPositive, less, lesserOf, multiply, ratio, roundFigure, subtract } from "../../length";
import { isWithin } from "../joined-front";
import { endOf } from "../plan/outside";
import type { Drawer, PlannedOpening } from "../plan/plan";
import { hangsAtSide } from "../runner";
import { isUndermount } from "../undermount";
import { doubtful, isMoreThan, wrong, type Found } from "./finding";

/** A tall narrow box that only its slides keep upright. Limits: common practice. */
export function checkRacking({ opening, stock, boxHeight }: Drawer): Found[] {
  const [width, height, depth] = [stock.width.value, boxHeight.value, stock.depth.value];
  const racks = isMoreThan(depth, multiply(width, ratio(2))) && isMoreThan(height, width);
  return racks && hangsAtSide(opening.standards) ? [doubtful("box.racks", { width, height, depth })] : [];
}

/** What fronts keep from the ends of their cabinet, where a handle, a door or a wall wants room. */
export function checkEnds({ opening, face }: PlannedOpening, ends: { left: boolean; right: boolean }): Found[] {
  const asked = opening.standards["end clearance"];
  return (["left", "right"] as const).flatMap((side): Found[] => {
    const room = subtract(endOf(opening), face[side].value);
    return ends[side] && isPositive(asked) && less(room, asked)
      ? [wrong("end.meets", { side, room, asked, by: subtract(asked, room) })]
      : [];
  });
}

/**
 * A drawer behind a door, so high that it does not pass a hinge on the open door's stile. How far a hinge reaches up and
 * down from its center: common practice.
 */
export function checkHinges({ opening, stock, boxBottom, boxHeight, front }: Drawer): Found[] {
  const { standards: s, least, unit } = opening;
  const hinges = s["door hinges"];
  if (hinges === "none") return [];
  const [reach, asked] = [roundFigure("1", "25", unit), s["hinge room"]];
  const beside = half(subtract(least.width, stock.width.value));
  const [from, to, room] = isWithin(s)
    ? [front.bottom.value, front.top, lesserOf(beside, s["inset gap"])]
    : [boxBottom.value, add(boxBottom.value, boxHeight.value), beside];
  const hinge = hinges.find((up) => less(from, add(up, reach)) && less(subtract(up, reach), to));
  return hinge && less(room, asked) ? [wrong("hinge.meets", { from, to, room, hinge, asked })] : [];
}

/** A box that no slide brings out whole. Limit: common practice. */
export function checkExtension({ opening, drawers }: PlannedOpening): Found[] {
  const { behind, slide } = drawers[0]!.stock;
  const by = subtract(behind.value, slide.value);
  const least = roundFigure("1", "25", opening.unit);
  // Undermount slides are held against their data sheet.
  return /mount$/.test(opening.standards.slide) && !isUndermount(opening.standards) && isMoreThan(by, least)
    ? [doubtful("slide.staysIn", { depth: behind.value, slide: slide.value, by })]
    : [];
}
