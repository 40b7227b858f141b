import { add, greaterOf, half, isPositive, less, lesserOf, roundFigure, ZERO, type Rational } from "../../length";
import { cutoutOf } from "../cutout";
import type { Drawer } from "../plan/plan";
import type { Size } from "../size";
import { doubtful, wrong, type Found } from "./finding";

/** What a cutout leaves of its box, which nothing else tells. Limit: common practice. */
export function checkCutout(drawer: Drawer): Found[] {
  const cutout = cutoutOf(drawer);
  if (!cutout) return [];
  const { standards: s, unit } = drawer.opening;
  const [left, right, front] = [roomOf(cutout.left), roomOf(cutout.right), roomOf(cutout.front)];
  const least = lesserOf(front, lesserOf(left, right));
  const narrow = less(least, roundFigure("2", "50", unit));
  const data = { width: cutout.width, depth: s["cutout depth"], left, right, front, narrow };
  const middle = half(drawer.stock.width.value);
  const isUnder = less(cutout.from.value, middle) && less(middle, add(cutout.from.value, cutout.width));
  return [
    (isPositive(least) ? doubtful : wrong)("cutout.leaves", data),
    ...(s.slide === "center-mount" && isUnder ? [wrong("cutout.meetsSlide", {})] : []),
  ];
}

/** What would be less than nothing is nothing. */
const roomOf = ({ value }: Size): Rational => greaterOf(ZERO, value);
