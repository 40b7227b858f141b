import { add, less, subtract, times, type Rational } from "../../length";
import type { Opening } from "../opening";
import { betweenOf } from "../plan/outside";
import { isLipped } from "../joined-front";
import { endStileOf, gapBeside, stileRightOf } from "../plan/face";
import { isMoreThan, doubtful, wrong, type Found } from "./finding";

/** Fronts of two openings side by side overlay the stile between them from both sides, and keep their gap on it. */
export function checkStile(left: Opening, right: Opening): Found[] {
  if (isLipped(left.standards)) return checkLips(left, right);
  if (!isOverlaid(left)) return [];
  const [a, b] = [left.standards["frame overlay"], right.standards["frame overlay"]];
  const [stile, gap] = [stileRightOf(left), gapBeside(left, right)];
  const room = subtract(stile, add(a, b));
  return less(room, gap) ? [wrong("overlay.stile", { stile, a, b, room, gap })] : [];
}

/** Lipped fronts lap what is between them from both sides, with or without a face frame. */
function checkLips(left: Opening, right: Opening): Found[] {
  const [a, b] = [left, right].map(({ standards: s }) => subtract(s.lip, s["inset gap"])) as [Rational, Rational];
  const [width, gap] = [betweenOf(left), gapBeside(left, right)];
  const room = subtract(width, add(a, b));
  return less(room, gap) ? [wrong("lip.meets", { width, a, b, room, gap })] : [];
}

/**
 * Fronts on the rails that they share with openings above and below, and on the frame's own at the cabinet's ends,
 * its top and its bottom.
 */
export function checkFrame(opening: Opening, ends: { left: boolean; right: boolean }): Found[] {
  if (!isOverlaid(opening)) return [];
  const s = opening.standards;
  const [overlay, gap] = [s["frame overlay"], s["front gap"]];
  const shared = (["rail above", "rail below"] as const).flatMap((name): Found[] => {
    const rail = s[name];
    if (rail === "none") return [];
    const room = subtract(rail, times(2, overlay));
    return less(room, gap) ? [wrong("overlay.rail", { name, rail, overlay, room, gap })] : [];
  });
  const outer: (readonly [side: string, part: string, width: Rational, there: boolean])[] = [
    ["left", "stile", endStileOf(opening), ends.left],
    ["right", "stile", endStileOf(opening), ends.right],
    ["top", "rail", s["rail width"], s["rail above"] === "none"],
    ["bottom", "rail", s["rail width"], s["rail below"] === "none"],
  ];
  const past = outer
    .filter(([, , width, there]) => there && isMoreThan(overlay, width))
    .map(([side, part, width]) =>
      doubtful("overlay.past", { overlay, side, part, width, by: subtract(overlay, width) }),
    );
  return [...shared, ...past];
}

const isOverlaid = ({ standards: s }: Opening): boolean =>
  s.construction === "face frame" && s["front style"] === "overlay";
