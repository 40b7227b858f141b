import { once } from "../once";
import { add, compare, divide, Fault, isPositive, less, ratio, subtract, total, type Rational } from "../../length";
import { widthOf } from "../opening";
import { minus, plus, shared, sum, type Size } from "../size";
import { partitionRightOf } from "./face";
import type { Drawer } from "./plan";

/**
 * Where the pulls of a front stand: their centers from its left edge, left to right.
 * @source common practice: one pull in the middle, two at the quarters of a wide front
 * @throws Fault `pull.lineUnknown` behind a face frame, `pull.lineMany` where more than two lines fall on a front
 */
export function pullsOf(drawer: Drawer): Size[] {
  const { front, opening } = drawer;
  const s = opening.standards;
  const asked = s["pulls per front"];
  if (asked === 0) return [];
  if (s["pull line"] !== "none") return onLines(drawer, s["pull line"]);
  const count = asked === "auto" ? (less(front.width.value, s["two pulls from"]) ? 1 : 2) : asked;
  const width = sum(plus("front width", front.width));
  if (count === 1) return [shared(width, 2)];
  return [shared(width, 4), shared(sum(plus("front width", front.width, 3)), 4)];
}

/** From the floor of the opening to the pulls' centers. */
export function pullHeightOf({ front, opening }: Drawer): Size {
  const height = opening.standards["pull height"];
  const half = divide(front.height.value, ratio(2));
  if (height === "center") return sum(plus("front bottom", front.bottom), plus("half of front height", half));
  return sum(plus("upper edge of the front", front.top), minus("pull height", height));
}

/** The centers of the holes of a front's pulls, from its left edge; a pull without spacing has one. */
export const pullHolesOf = once((drawer: Drawer): readonly Rational[] => {
  const half = divide(drawer.opening.standards["pull spacing"], ratio(2));
  return pullsOf(drawer).flatMap(({ value }) =>
    isPositive(half) ? [subtract(value, half), add(value, half)] : [value],
  );
});

/** Lines run up the whole cabinet, so that pulls of wide and narrow fronts stand over one another. */
function onLines(drawer: Drawer, lines: readonly Rational[]): Size[] {
  const { front, opening } = drawer;
  const left = leftEdge(drawer);
  const right = add(left.value, front.width.value);
  const falling = lines.filter((line) => less(left.value, line) && less(line, right)).sort(compare);
  if (falling.length > MOST_PULLS) {
    throw new Fault("pull.lineMany", { count: falling.length, most: MOST_PULLS, opening: opening.label });
  }
  return falling.map((line) => sum(plus("pull line", line), minus("left edge of the front", left)));
}

/** A table of fronts has room for so many. */
const MOST_PULLS = 2;

/** From the cabinet's left outer edge to the front's. The stiles of a face frame are not among the openings. */
function leftEdge({ opening, cabinet, face }: Drawer): Size {
  const s = opening.standards;
  if (s.construction === "face frame") throw new Fault("pull.lineUnknown", {});
  const before = cabinet.openings.slice(0, cabinet.openings.indexOf(opening));
  return sum(
    plus("cabinet thickness", s["cabinet thickness"]),
    plus("openings to the left", total(before.map(widthOf))),
    plus("their partitions", total(before.map(partitionRightOf))),
    minus("front past opening left", face.left),
  );
}
