import { add, divide, Fault, isPositive, less, lesserOf, ratio, subtract, ZERO, type Rational } from "../../length";
import { bottomDepth, bottomWidth } from "../bottom";
import { boxHeight, boxWidth } from "../box";
import { endLength, insideDepth, insideWidth, sideLength } from "../corner";
import { given, greater, lesser, minus, plus, Size, sum } from "../size";
import { checkRunner } from "../runner";
import { SIDE_CLEARANCE } from "../side-clearance";
import { isJoined, isLipped, isWithin, lapOf, lipOf } from "../joined-front";
import { longestWithin, slideLength } from "../slide";
import { isFramed, type Opening } from "../opening";
import { depthDifference } from "../undermount";
import type { Standards } from "../standards";
import type { Front } from "./front-plan";
import { joinedBox } from "./joined-box";

/** What all boxes of an opening have in common. */
export interface BoxStock {
  width: Size;
  depth: Size;
  slide: Size;
  side: Rational;
  end: Rational;
  /** What lies behind a front that is the box's own; else the whole depth. */
  behind: Size;
  sideLength: Size;
  endLength: Size;
  insideWidth: Size;
  insideDepth: Size;
  bottomWidth: Size;
  bottomDepth: Size;
}

/**
 * The boxes' plan, seen from above.
 * @throws Fault where no slide fits, or joints, grooves and thicknesses do not go together
 */
export function boxStock(opening: Opening): BoxStock {
  const s = opening.standards;
  const side = s["side thickness"];
  const end = endThickness(s);
  const { slide, depth } = slideAndDepth(opening);
  const width = widthOf(opening);
  checkRunner(s, clearanceOf(s, opening.unit) ?? ZERO);
  const applied = s["bottom fit"] === "applied";
  const inset = endInset(s);
  const ends = {
    endLength: endLength(width.value, side, s["corner joint"], s["joint depth"]),
    insideWidth: insideWidth(width.value, side),
    bottomWidth: applied
      ? sum(plus("box width", width))
      : bottomWidth(width.value, side, s["groove depth"], s["bottom play"]),
  };
  if (isJoined(s)) return { width, depth, slide, side, end, ...ends, ...joinedBox(s, depth.value, end, inset) };
  return {
    width,
    depth,
    slide,
    side,
    end,
    behind: sum(plus("box depth", depth)),
    sideLength: sideLength(depth.value, end, s["corner joint"], s["joint depth"]),
    ...ends,
    insideDepth: insideDepth(depth.value, end, inset),
    bottomDepth: bottomDepth(depth.value, end, s["groove depth"], s["bottom play"], s["bottom fit"], inset),
  };
}

/** Box front and back are as thick as the sides where nothing else is said. */
const endThickness = (s: Standards): Rational => s["end thickness"] ?? s["side thickness"];

/** How far box front and back stand in from the ends of the sides: a rabbet is at the end, a dado is not. */
export const endInset = (s: Standards): Rational => (s["corner joint"] === "dado" ? s["dado inset"] : ZERO);

/** Side space of one side. Undermount slides are named by a deduction instead. */
const clearanceOf = (s: Standards, unit: Opening["unit"]): Rational | undefined =>
  s.slide === "undermount" ? undefined : (s["side clearance"] ?? usualClearance(s, unit));

/** On wood runners a front that is its box's own is as wide as that. */
const usualClearance = (s: Standards, unit: Opening["unit"]): Rational =>
  isJoined(s) && s.slide === "wood runner" ? s["inset gap"] : SIDE_CLEARANCE[unit][s.slide as "wood runner"];

function widthOf(opening: Opening): Size {
  const s = opening.standards;
  const clearance = clearanceOf(s, opening.unit);
  if (clearance) return boxWidth(opening.least.width, clearance);
  const deduction = s["undermount deduction"];
  if (!deduction) throw new Fault("slide.deductionMissing", {});
  const width = sum(
    plus("opening width", opening.least.width),
    minus("undermount deduction", deduction),
    plus("side thickness", s["side thickness"], 2),
  );
  if (!isPositive(width.value)) throw new Fault("box.deductionWide", { opening: opening.least.width, deduction });
  return width;
}

/** What of a front stands in the opening stands before the slide. */
export const setbackOf = (s: Standards): Rational =>
  isWithin(s) ? subtract(s["front thickness"], isLipped(s) ? lapOf(s).value : ZERO) : ZERO;

/** How far behind the carcase's front edge the box begins: with its front, where that is its own. */
export const boxStartOf = (s: Standards): Rational => subtract(setbackOf(s), ownFront(s));

const ownFront = (s: Standards): Rational => (isJoined(s) ? s["front thickness"] : ZERO);

function slideAndDepth(opening: Opening): { slide: Size; depth: Size } {
  const s = opening.standards;
  const [depth, setback, own] = [opening.least.depth, setbackOf(s), s["box depth"]];
  const unbought = (size: Size): Size =>
    s.slide === "wood runner"
      ? new Size(size.value, (write) => `${size.how(write)}; none is bought for wood runners`)
      : size;
  const longest = (): Size => unbought(slideLength(depth, s["rear clearance"], setback, s["slide lengths"]));
  if (own === "slide") {
    const slide = longest();
    return {
      slide,
      depth: sum(
        plus("slide length", slide),
        minus("undermount depth difference", depthDifference(s)),
        plus("front thickness", ownFront(s)),
      ),
    };
  }
  const room = subtract(depth, boxStartOf(s));
  if (less(room, own)) throw new Fault("box.deep", { depth: own, room });
  const behind = subtract(own, ownFront(s));
  // A wood runner is made in the shop: where none on sale is short enough, it is as long as its box.
  if (
    s.slide === "wood runner" &&
    !longestWithin(lesserOf(behind, subtract(subtract(depth, setback), s["rear clearance"])), s["slide lengths"])
  ) {
    const runner = given(behind, "as long as the box, made in the shop");
    return { slide: runner, depth: given(own, "as the standard says") };
  }
  const slide = longest();
  const fitting = longestWithin(
    add(behind, depthDifference(s)),
    s["slide lengths"].filter((length) => !less(slide.value, length)),
  );
  if (!fitting) throw new Fault("slide.noneFitsBox", { depth: own });
  const shorter = unbought(new Size(fitting, (write) => `longest slide on sale within the box depth ${write(own)}`));
  return { slide: less(fitting, slide.value) ? shorter : slide, depth: given(own, "as the standard says") };
}

/** The height that a box may stand in, measured up from the opening's floor. */
export interface Zone {
  bottom: Size;
  top: Size;
  height: Size;
}

/** What heights are measured from. */
export const FLOORS = { framed: "top edge of the rail", bare: "floor of the opening" };

/** Zones reach from the floor to the opening's height, no further than the fronts, and meet in the middle of the gaps. */
export function zonesOf(opening: Opening, fronts: readonly Front[]): Zone[] {
  if (isLipped(opening.standards)) return fronts.map((front) => zoneOfLipped(opening.standards, front));
  const floor = given(ZERO, isFramed(opening) ? FLOORS.framed : FLOORS.bare);
  const ceiling = given(opening.least.height, "opening height");
  const topFront = fronts[0]!;
  const lowest = fronts[fronts.length - 1]!;
  let top = lesser(ceiling, given(topFront.top, "upper edge of the front"));
  return fronts.map((front, i) => {
    const below = fronts[i + 1];
    const bottom = below
      ? middle(below.top, front.bottom.value)
      : greater(floor, given(lowest.bottom.value, "lower edge of the front"));
    const zone = { bottom, top, height: sum(plus("zone top", top), minus("zone bottom", bottom)) };
    top = bottom;
    return zone;
  });
}

/** The sides are joined to what goes into the opening. */
function zoneOfLipped(s: Standards, front: Front): Zone {
  const bottom = sum(plus("lower edge of the front", front.bottom), plus("lip", lipOf(s)));
  const top = sum(plus("upper edge of the front", front.top), minus("lip", lipOf(s)));
  return { bottom, top, height: sum(plus("zone top", top), minus("zone bottom", bottom)) };
}

const middle = (below: Rational, above: Rational): Size =>
  new Size(divide(add(below, above), ratio(2)), (write) => `middle of the gap from ${write(below)} to ${write(above)}`);

/** The height that a box has room for, before it is matched to others. @throws Fault where there is no room */
export function ownHeight(opening: Opening, zone: Zone, place: number, count: number): Size {
  const s = opening.standards;
  const fixed = opening.boxHeights;
  const [below, above] = [s["space below"], s["space above"]];
  if (!less(below, subtract(zone.height.value, fixed ? ZERO : above))) {
    throw new Fault("box.zoneLow", { front: place + 1, height: zone.height.value, below, above });
  }
  if (!fixed) return boxHeight(zone.height.value, below, above, s["height step"]);
  if (fixed.length !== 1 && fixed.length !== count) {
    throw new Fault("box.heightsCount", { given: fixed.length, count });
  }
  const height = fixed[fixed.length === 1 ? 0 : place]!;
  const room = subtract(zone.height.value, below);
  if (less(room, height)) throw new Fault("box.heightTall", { height, room });
  return given(height, "as asked for");
}
