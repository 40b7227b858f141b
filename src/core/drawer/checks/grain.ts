import { less, multiply, ratio, type Rational } from "../../length";
import { isPlywood, isSolidWood } from "../material";
import { endGrain } from "../plan/parts";
import type { Drawer, PlannedOpening } from "../plan/plan";
import { doubtful, isMoreThan, wrong, type Found } from "./finding";

/**
 * Whether the grain that was chosen for bottoms runs the way that carries. Held all round, that is the shorter span: of
 * a strip's stiffness its length counts with the fourth power, so that by half longer leaves it a fifth of the load.
 */
export function checkBottomGrain({ opening: { standards: s }, drawers }: PlannedOpening): Found[] {
  const { "bottom grain": grain, "bottom material": material } = s;
  if (grain === "any") return [];
  const along = grain === "front to back";
  if (isSolidWood(material)) return along ? [wrong("bottom.solidAlong", { material })] : [];
  const { insideWidth, insideDepth } = drawers[0]!.stock;
  const [long, short] = along ? [insideDepth.value, insideWidth.value] : [insideWidth.value, insideDepth.value];
  return isPlywood(material) && isMoreThan(long, multiply(short, ratio(3, 2)))
    ? [doubtful("bottom.weakWay", { material, long, short })]
    : [];
}

/** Whether sides and ends carry along their length: solid wood must, plywood had better. */
export function checkBoxGrain({ opening: { standards: s }, stock, sideHeight }: Drawer): Found[] {
  const material = s["side material"];
  const named = (is: (grain: string, length: Rational) => boolean): string =>
    [
      ...(is(s["box grain"], stock.sideLength.value) ? ["sides"] : []),
      ...(is(endGrain(s), stock.endLength.value) ? ["ends"] : []),
    ].join(" and ");
  if (isSolidWood(material)) {
    const parts = named((grain) => grain !== "horizontal");
    return parts ? [wrong("box.solidUpright", { material, parts })] : [];
  }
  const parts = named((grain, length) => grain === "vertical" && less(sideHeight.value, length));
  return parts && isPlywood(material) ? [doubtful("box.weakWay", { material, parts })] : [];
}
