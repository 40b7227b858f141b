import { add, isPositive, ratio, roundFigure, subtract, times, total, ZERO, type Rational } from "../../length";
import { bandsOf, UPRIGHT } from "../bands";
import { dividersOf } from "../dividers";
import { isJoined } from "../joined-front";
import { isSolidWood } from "../material";
import { endInset } from "../plan/box-plan";
import { frontScrewsOf, screwsOfFront } from "../plan/mounting";
import type { Drawer, Hung } from "../plan/plan";
import { throughBox } from "../plan/pull-holes";
import { pullsOf } from "../plan/pulls";
import type { Standards } from "../standards";
import type { Item } from "./item";
import { lengthOrRule, longestScrew, screwThrough, shortestScrew, skin } from "./screws";

/** Screws from inside the box into its front. @source common practice: they stay 1/8 in (3 mm) inside the front */
export function frontItems(drawer: Drawer): Item[] {
  const { opening, stock } = drawer;
  const { standards: s, unit } = opening;
  const front = s["front thickness"];
  const behind = add(stock.end, endInset(s));
  return [
    {
      name: "front screw",
      size: lengthOrRule(s["front screw length"], () => screwThrough(s, behind, front, unit)),
      quantity: ratio(frontScrewsOf(drawer)),
      unit: "each",
      purpose: isSolidWood(s["front material"]) ? "frontSolid" : "front",
      // A dado sets the box front in from the sides' ends, on which the front lies: what is between is packed.
      ...(isPositive(endInset(s)) && { detail: endInset(s) }),
      most: add(behind, front),
      through: behind,
    },
    ...bandItems(drawer),
  ];
}

/** What holds a front without a box: screws through cleats as thick as the case. */
export function falseFrontItems(hung: Hung): Item[] {
  const { standards: s, unit } = hung.opening;
  const [cleat, front] = [s["cabinet thickness"], s["front thickness"]];
  return [
    {
      name: "front screw",
      size: lengthOrRule(s["front screw length"], () => screwThrough(s, cleat, front, unit)),
      quantity: ratio(screwsOfFront(hung)),
      unit: "each",
      purpose: "falseFront",
      most: add(cleat, front),
      through: cleat,
    },
    ...frontBands(hung),
  ];
}

function frontBands({ opening: { standards: s }, front }: Hung): Item[] {
  return bandsOf("Front", s).map(({ edge, thickness }) =>
    band(s, thickness, (UPRIGHT.includes(edge) ? front.width : front.height).value, 1, s["front thickness"]),
  );
}

/** By its thickness and that of the stock, with what trimming takes. */
const band = (s: Standards, size: Rational, edge: Rational, count: number, detail: Rational): Item => ({
  name: "edge band",
  size,
  quantity: times(count, add(edge, s["edge band allowance"])),
  unit: "length",
  purpose: "none",
  detail,
});

/** The bands of each front and box. */
function bandItems(drawer: Drawer): Item[] {
  const { stock } = drawer;
  const s = drawer.opening.standards;
  const dividers = dividersOf(drawer);
  const ofBox = bandsOf("Side", s).flatMap(({ thickness }) => [
    band(s, thickness, stock.sideLength.value, 2, stock.side),
    band(s, thickness, stock.endLength.value, isJoined(s) ? 1 : 2, stock.end),
    ...(dividers ? [band(s, thickness, dividers.length.value, dividers.count, s["divider thickness"])] : []),
  ]);
  return [...frontBands(drawer), ...ofBox];
}

/**
 * Pulls, and their screws: from inside the box through box and front, or through the front alone where that stands past
 * its box, into a bought pull, or on through the strip into the plate of a shop-made one.
 * @source common practice: one screw a hole, 1/4 in (6 mm) into a bought pull
 */
export function pullItems(drawer: Drawer): Item[] {
  const s = drawer.opening.standards;
  const pulls = pullsOf(drawer).length;
  if (pulls === 0) return [];
  const common = { quantity: ratio(pulls), unit: "each", purpose: "none" } as const;
  const spacing = s["pull spacing"];
  const pull: Item =
    s["pull kind"] === "bought"
      ? { name: "pull", ...common, ...(isPositive(spacing) && { size: spacing }) }
      : { name: "shop-made pull", ...common, size: s["pull length"] };
  const behind = throughBox(drawer);
  return [pull, ...[true, false].map((box) => pullScrews(drawer, box, behind.filter((one) => one === box).length))];
}

function pullScrews({ opening, stock }: Drawer, box: boolean, count: number): Item {
  const { standards: s, unit } = opening;
  const through = total([...(box ? [stock.end, endInset(s)] : []), s["front thickness"]]);
  const asked = s["pull screw length"];
  const packer = box && isPositive(endInset(s)) && { detail: endInset(s) };
  const screw = { name: "pull screw", quantity: ratio(count), unit: "each", ...packer } as const;
  if (s["pull kind"] === "bought") {
    const rule = (): Rational | undefined => shortestScrew(s, add(through, roundFigure("1/4", "6", unit)));
    return { ...screw, size: lengthOrRule(asked, rule), purpose: box ? "pull" : "pullFront", through };
  }
  const strip = add(through, s["pull standoff"]);
  const most = add(strip, s["front thickness"]);
  const rule = (): Rational | undefined => longestScrew(s, subtract(most, skin(unit)));
  return { ...screw, size: lengthOrRule(asked, rule), purpose: box ? "plate" : "plateFront", most, through: strip };
}

/** Glue between plate, strip and front of shop-made pulls. */
export const pullGlue = (drawer: Drawer): Rational => {
  const s = drawer.opening.standards;
  return s["pull kind"] === "bought" ? ZERO : times(2 * pullsOf(drawer).length, s["pull length"]);
};
