import { add, less, lesserOf, ratio, roundFigure, times, total, ZERO, type Rational, type Unit } from "../../length";
import { filesOf } from "../files";
import { bottomScrewsOf, slotOf } from "../loads";
import type { Drawer } from "../plan/plan";
import { isJoined } from "../joined-front";
import type { Standards } from "../standards";
import type { Item } from "./item";
import { everyFew, lengthOrRule, longestScrew, pocketScrew, scaled, screwThrough, shortestScrew } from "./screws";

/**
 * What holds the corners besides glue: pocket screws in butt joints, nails in rabbets and dadoes, nothing in joints
 * that lock.
 * @source common practice: one to every 4 in (100 mm) of a corner's height, at least two; through a side into an end
 * two and a half times the side's thickness
 */
export function cornerItems(drawer: Drawer): Item[] {
  const s = drawer.opening.standards;
  const { sideHeight, backHeight } = drawer;
  if (!isJoined(s)) return fasteners(drawer, fasteningOf(s), [sideHeight.value, backHeight.value]);
  return [
    ...fasteners(drawer, frontFastening(s), [sideHeight.value]),
    ...fasteners(drawer, fasteningOf(s), [backHeight.value]),
  ];
}

/** At both ends of each of these heights. */
function fasteners({ opening, stock }: Drawer, fastening: Fastening, heights: readonly Rational[]): Item[] {
  const { standards: s, unit } = opening;
  if (fastening === "none") return [];
  const each = (height: Rational): number =>
    s["corner screws"] === "auto" ? everyFew(height, roundFigure("4", "100", unit), 2) : s["corner screws"];
  const quantity = ratio(heights.reduce((sum, height) => sum + 2 * each(height), 0));
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

/** Through the sides into a front that they lie in a rabbet of; joints that lock want nothing. */
function frontFastening(s: Standards): Fastening {
  if (s["front joint"] !== "rabbet") return "none";
  const asked = s["corner fastening"];
  return asked === "auto" || asked === "pocket screws" ? "nails" : asked;
}

type Fastening = "pocket screws" | "screws" | "nails" | "none";

export function fasteningOf(s: Standards): Fastening {
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
    const [across, along] = [stock.width, stock.behind].map(({ value }) => everyFew(value, s["nail spacing"], 1));
    // A front that is the box's own does not stand on its bottom.
    const quantity = ratio((isJoined(s) ? 1 : 2) * across! + 2 * along!);
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

/** What folders hang from. */
export function railItems(drawer: Drawer): Item[] {
  const { rails, folder, kind } = filesOf(drawer) ?? {};
  if (!rails) return [];
  const purpose = rails.along === "depth" ? "filesDepth" : "filesWidth";
  return [
    {
      name: "file rail",
      size: rails.length,
      quantity: ratio(rails.count),
      unit: "each",
      purpose,
      detail: folder,
      wood: kind,
    },
  ];
}

/**
 * A bead of glue along every corner, and round an applied bottom. A bottom in grooves is not glued.
 * @source common practice
 */
export function glueItems({ opening, stock, sideHeight, backHeight }: Drawer, pulls: Rational): Item[] {
  if (opening.standards.glue === "none") return [];
  const corners = times(2, add(sideHeight.value, backHeight.value));
  const around = times(2, add(stock.width.value, stock.behind.value));
  const bottom = opening.standards["bottom fit"] === "applied" ? around : ZERO;
  return [{ name: "glue", quantity: total([corners, bottom, pulls]), unit: "length", purpose: "joints" }];
}
