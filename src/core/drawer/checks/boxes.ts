import {
  add,
  equal,
  greaterOf,
  half,
  isNegative,
  less,
  lesserOf,
  multiply,
  negate,
  ratio,
  roundFigure,
  subtract,
  type Rational,
  type Unit,
  ZERO,
} from "../../length";
import { blockingOf } from "../hardware/slides";
import { boxStartOf } from "../plan/box-plan";
import { layoutsOf } from "../joint-layout";
import { isJoined, isWithin } from "../joined-front";
import type { Drawer, PlannedOpening } from "../plan/plan";
import type { Standards } from "../standards";
import { unstated } from "../undermount";
import { doubtful, isMoreThan, wrong, type Found } from "./finding";

/** What is doubtful about one box. Limits are common practice. */
export function checkBox(drawer: Drawer): Found[] {
  const { opening, stock, boxHeight, boxBottom, front, insideHeight } = drawer;
  const s = opening.standards;
  const { unit } = opening;
  const found: Found[] = [];
  // A center-mount slide runs under the bottom, and a wood runner is as high as one makes it.
  const mounted = s.slide === "side-mount";
  if (mounted && less(drawer.sideHeight.value, s["slide height"])) {
    found.push(wrong("box.belowSlide", { height: drawer.sideHeight.value, slide: s["slide height"] }));
  } else if (mounted && drawer.slideCenterline) {
    const up = subtract(drawer.slideCenterline.value, boxBottom.value);
    const reach = half(s["slide height"]);
    if (less(up, reach) || isMoreThan(add(up, reach), boxHeight.value)) found.push(doubtful("slide.pastBox", { up }));
  }
  if (less(insideHeight.value, roundFigure("2", "50", unit)))
    found.push(doubtful("box.shallow", { inside: insideHeight.value }));
  const top = add(boxBottom.value, boxHeight.value);
  // A front that is the box's own must meet the whole of its sides.
  const past = (finding: Found): Found => (isJoined(s) ? { ...finding, level: "wrong" } : finding);
  if (isMoreThan(top, front.top)) found.push(past(doubtful("box.aboveFront", { by: subtract(top, front.top) })));
  if (less(boxBottom.value, front.bottom.value)) {
    found.push(past(doubtful("box.belowFront", { by: subtract(front.bottom.value, boxBottom.value) })));
  }
  const { below, above } = roomAround(drawer);
  const tight = roundFigure("1/16", "1.5", unit);
  if (less(below, tight) || less(above, tight)) found.push(doubtful("box.rubs", { below, above }));
  else if (opening.boxHeights && less(above, s["space above"]))
    found.push(doubtful("box.tightAbove", { above, asked: s["space above"] }));
  if (isMoreThan(stock.width.value, multiply(stock.depth.value, ratio(3, 2)))) {
    found.push(doubtful("box.wide", { width: stock.width.value, depth: stock.depth.value }));
  }
  return found;
}

/** Pins and fingers between which the cutter does not go, at both ends of the sides. */
export function checkLayout(drawer: Drawer): Found[] {
  const s = drawer.opening.standards;
  const cutter = s["joint cutter"];
  const { front, back } = layoutsOf(s, drawer);
  const pins = [front, back].flatMap(({ layout }) => layout?.pin.value ?? []);
  const pin = pins.reduce<Rational | undefined>((least, one) => (least ? lesserOf(least, one) : one), undefined);
  return cutter && pin && less(pin, cutter) ? [wrong("joint.cutter", { pin, cutter })] : [];
}

/** What is free under and over a box: round one behind lips there is more than its zone has. */
function roomAround({ opening, zone, boxBottom, boxHeight, front }: Drawer): { below: Rational; above: Rational } {
  const s = opening.standards;
  const top = add(boxBottom.value, boxHeight.value);
  if (!isJoined(s)) return { below: s["space below"], above: subtract(zone.top.value, top) };
  const gap = half(s["front gap"]);
  return {
    below: subtract(boxBottom.value, greaterOf(ZERO, subtract(front.bottom.value, gap))),
    above: subtract(lesserOf(opening.least.height, add(front.top, gap)), top),
  };
}

/** What is doubtful about all boxes of an opening. */
export function checkStock(planned: PlannedOpening): Found[] {
  const { opening, drawers } = planned;
  const s = opening.standards;
  const { unit } = opening;
  const { stock } = drawers[0]!;
  const found: Found[] = [];
  if (s["bottom fit"] === "applied") {
    if (less(s["space below"], roundFigure("1/4", "6", unit)))
      found.push(doubtful("bottom.rubs", { below: s["space below"] }));
  } else {
    const offset = s["groove offset"];
    if (less(offset, roundFigure("1/4", "6", unit))) found.push(doubtful("groove.nearEdge", { offset }));
    // What the data sheet asks for, once it is told, comes before what is common practice.
    if (unstated(s, ["undermount bottom recess"]).length > 0 && less(offset, roundFigure("1/2", "12.7", unit)))
      found.push(doubtful("groove.undermount", { offset }));
    const parts = equal(stock.side, stock.end)
      ? ([["sides and ends", stock.side]] as const)
      : ([
          ["sides", stock.side],
          ["ends", stock.end],
        ] as const);
    for (const [part, thickness] of parts) {
      if (isMoreThan(s["groove depth"], half(thickness)))
        found.push(doubtful("groove.deep", { part, depth: s["groove depth"], thickness }));
    }
  }
  found.push(...checkJoint(s["corner joint"], s["joint depth"], stock.side, stock.end));
  found.push(...checkDado(s, unit), ...checkCenterSlide(planned));
  found.push(...checkDepth(opening.least.depth, stock.depth.value, boxStartOf(s), s["rear clearance"]));
  const front = drawers[0]!.front.width.value;
  if (isWithin(s) && isMoreThan(stock.width.value, front)) {
    found.push(wrong("box.widerThanFront", { box: stock.width.value, front }));
  }
  const blocking = blockingOf(drawers[0]!);
  // A center-mount slide hangs on the frame's rail.
  if (!blocking && s.slide !== "center-mount") found.push(doubtful("blocking.unknown", {}));
  if (blocking && isNegative(blocking)) found.push(doubtful("blocking.narrow", { by: negate(blocking) }));
  return found;
}

/** A center-mount slide runs under the box, from a rail in front to the back of the case. */
function checkCenterSlide({ opening, drawers }: PlannedOpening): Found[] {
  const { slide, "center slide height": height, "space below": below } = opening.standards;
  if (slide !== "center-mount") return [];
  return [
    ...(less(below, height) ? [wrong("center.noRoom", { height, below })] : []),
    ...(drawers.length > 1 ? [doubtful("center.rails", { count: drawers.length })] : []),
  ];
}

/** What stands between a dado and the end of its side breaks out where it is short. Limit: common practice. */
function checkDado(s: Standards, unit: Unit): Found[] {
  const inset = s["dado inset"];
  const isShort = s["corner joint"] === "dado" && less(inset, roundFigure("1/8", "3", unit));
  return isShort ? [doubtful("joint.dadoNearEnd", { inset })] : [];
}

/** A joint that takes more than two thirds of its stock leaves too little to hold. */
function checkJoint(joint: string, depth: Rational | undefined, side: Rational, end: Rational): Found[] {
  if (!depth || !["rabbet", "dado", "half-blind dovetail"].includes(joint)) return [];
  const stock = joint === "half-blind dovetail" ? end : side;
  return isMoreThan(depth, multiply(stock, ratio(2, 3))) ? [doubtful("joint.deep", { joint, depth, stock })] : [];
}

function checkDepth(opening: Rational, box: Rational, setback: Rational, rear: Rational): Found[] {
  const behind = subtract(subtract(opening, setback), box);
  return less(behind, rear) ? [doubtful("box.rearClearance", { behind, rear })] : [];
}
