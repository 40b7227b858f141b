import { add, less, lesserOf, ratio, roundFigure, times, total, ZERO, type Rational, type Unit } from "../../length";
import { bottomScrewsOf, slotOf } from "../loads";
import type { Drawer } from "../plan/plan";
import type { Standards } from "../standards";
import type { Item } from "./item";
import { everyFew, lengthOrRule, longestScrew, pocketScrew, scaled, screwThrough, shortestScrew } from "./screws";

/**
 * What holds the corners besides glue: pocket screws in butt joints, nails in rabbets and dadoes, nothing in joints
 * that lock.
 * @source common practice: one to every 4 in (100 mm) of a corner's height, at least two; through a side into an end
 * two and a half times the side's thickness
 */
export function cornerItems({ opening, stock, sideHeight, backHeight }: Drawer): Item[] {
  const { standards: s, unit } = opening;
  const fastening = fasteningOf(s);
  if (fastening === "none") return [];
  const each = (height: Rational): number =>
    s["corner screws"] === "auto" ? everyFew(height, roundFigure("4", "100", unit), 2) : s["corner screws"];
  const quantity = ratio(2 * each(sideHeight.value) + 2 * each(backHeight.value));
  const asked = s["corner screw length"];
  if (fastening === "pocket screws") {
    const thinner = lesserOf(stock.side, stock.end);
    const usual = pocketScrew(thinner, unit);
    return [
      {
        name: "pocket screw",
        size: lengthOrRule(asked, () => usual),
        quantity,
        unit: "each",
        purpose: "ends",
        most: usual ?? ZERO,
        stock: thinner,
        wood: s["side material"],
      },
    ];
  }
  return [
    {
      name: fastening === "nails" ? "corner nail" : "corner screw",
      size: lengthOrRule(asked, () => longestScrew(s, scaled(stock.side, 5, 2))),
      quantity,
      unit: "each",
      purpose: "corners",
      stock: stock.end,
      most: add(stock.side, stock.endLength.value),
    },
  ];
}

export function fasteningOf(s: Standards): "pocket screws" | "screws" | "nails" | "none" {
  if (s["corner fastening"] !== "auto") return s["corner fastening"];
  switch (s["corner joint"]) {
    case "butt":
      return "pocket screws";
    case "rabbet":
    case "dado":
      return "nails";
    default:
      return "none";
  }
}

/**
 * Nails round an applied bottom; screws up into the back over a bottom that slides in under it, in slots where that is
 * of solid wood.
 * @source common practice: three times as long as the bottom is thick
 */
export function bottomItems(drawer: Drawer): Item[] {
  const { opening, stock, sideHeight, backHeight } = drawer;
  const { standards: s, unit } = opening;
  const bottom = s["bottom thickness"];
  const into = s["bottom fit"] === "applied" ? sideHeight.value : backHeight.value;
  const common = {
    size: lengthOrRule(s["bottom screw length"], () => bottomScrew(s, bottom, into, unit)),
    unit: "each",
    most: add(bottom, into),
    stock: s["bottom fit"] === "applied" ? stock.side : stock.end,
  } as const;
  if (s["bottom fit"] === "applied") {
    const edges = [stock.width, stock.depth].map(({ value }) => everyFew(value, s["nail spacing"], 1));
    const quantity = ratio(2 * (edges[0]! + edges[1]!));
    return [{ name: "bottom nail", ...common, quantity, purpose: "bottom" }];
  }
  if (s["bottom fit"] === "grooved") return [];
  const quantity = ratio(bottomScrewsOf(drawer));
  const slot = slotOf(drawer);
  if (!slot) return [{ name: "bottom screw", ...common, quantity, purpose: "back" }];
  return [
    { name: "bottom screw", ...common, quantity, purpose: "slots", detail: slot.length.value, wood: slot.moving.wood },
    { name: "washer", quantity, unit: "each", purpose: "slots", stock: stock.end },
  ];
}

function bottomScrew(s: Standards, bottom: Rational, into: Rational, unit: Unit): Rational | undefined {
  const usual = shortestScrew(s, times(3, bottom));
  return usual && !less(add(bottom, into), usual) ? usual : screwThrough(s, bottom, into, unit);
}

/**
 * A bead of glue along every corner, and round an applied bottom. A bottom in grooves is not glued.
 * @source common practice
 */
export function glueItems({ opening, stock, sideHeight, backHeight }: Drawer, pulls: Rational): Item[] {
  if (opening.standards.glue === "none") return [];
  const corners = times(2, add(sideHeight.value, backHeight.value));
  const around = times(2, add(stock.width.value, stock.depth.value));
  const bottom = opening.standards["bottom fit"] === "applied" ? around : ZERO;
  return [{ name: "glue", quantity: total([corners, bottom, pulls]), unit: "length", purpose: "joints" }];
}
