import { add, isPositive, ratio, roundFigure, subtract, times, total, ZERO, type Rational } from "../../length";
import { endInset } from "../plan/box-plan";
import { frontScrewsOf } from "../plan/mounting";
import type { Drawer } from "../plan/plan";
import { pullsOf } from "../plan/pulls";
import type { Item } from "./item";
import { lengthOrRule, longestScrew, screwThrough, shortestScrew, skin } from "./screws";

/** Screws from inside the box into its front. @source common practice: they stay 1/8 in (3 mm) inside the front */
export function frontItems({ opening, stock, ...drawer }: Drawer): Item[] {
  const { standards: s, unit } = opening;
  const front = s["front thickness"];
  const behind = add(stock.end, endInset(s));
  return [
    {
      name: "front screw",
      size: lengthOrRule(s["front screw length"], () => screwThrough(s, behind, front, unit)),
      quantity: ratio(frontScrewsOf({ opening, stock, ...drawer })),
      unit: "each",
      purpose: "front",
      most: add(behind, front),
    },
    ...bandItems({ opening, stock, ...drawer }),
  ];
}

/** Edge band all round each front, without what its trimming takes. */
function bandItems({ opening, front }: Drawer): Item[] {
  const s = opening.standards;
  if (!isPositive(s["edge band"])) return [];
  const round = times(2, add(front.width.value, front.height.value));
  return [
    {
      name: "edge band",
      size: s["edge band"],
      quantity: round,
      unit: "length",
      purpose: "none",
      detail: s["front thickness"],
    },
  ];
}

/**
 * Pulls, and their screws from inside the box: through box and front into a bought pull, or on through the strip
 * into the plate of a shop-made one.
 * @source common practice: one screw a hole, 1/4 in (6 mm) into a bought pull
 */
export function pullItems(drawer: Drawer): Item[] {
  const { opening, stock } = drawer;
  const { standards: s, unit } = opening;
  const pulls = pullsOf(drawer).length;
  if (pulls === 0) return [];
  const spacing = s["pull spacing"];
  const holes = isPositive(spacing) ? 2 : 1;
  const through = total([stock.end, endInset(s), s["front thickness"]]);
  const common = { quantity: ratio(pulls), unit: "each", purpose: "none" } as const;
  const screw = { name: "pull screw", quantity: ratio(pulls * holes), unit: "each" } as const;
  const asked = s["pull screw length"];
  if (s["pull kind"] === "bought") {
    const least = add(through, roundFigure("1/4", "6", unit));
    return [
      { name: "pull", ...common, ...(holes === 2 && { size: spacing }) },
      { ...screw, size: lengthOrRule(asked, () => shortestScrew(s, least)), purpose: "pull" },
    ];
  }
  const most = total([through, s["pull standoff"], s["front thickness"]]);
  return [
    { name: "shop-made pull", ...common, size: s["pull length"] },
    {
      ...screw,
      size: lengthOrRule(asked, () => longestScrew(s, subtract(most, skin(unit)))),
      purpose: "plate",
      most,
    },
  ];
}

/** Glue between plate, strip and front of shop-made pulls. */
export const pullGlue = (drawer: Drawer): Rational => {
  const s = drawer.opening.standards;
  return s["pull kind"] === "bought" ? ZERO : times(2 * pullsOf(drawer).length, s["pull length"]);
};
