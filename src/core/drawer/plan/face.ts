import { Fault, greaterOf, isPositive, roundFigure, type Rational, type Unit } from "../../length";
import { minus, minusSum, plus, plusSum, shared, sum, type Size, type Term } from "../size";
import { standardOf, type AnyOpening, type Opening, type WithStandards } from "../opening";
import { isLipped, isWithin, lipOf } from "../joined-front";
import type { Standards } from "../standards";

/** What the fronts of an opening fill: edges measured up from the opening's floor and across from its sides. */
export interface Face {
  bottom: Size;
  top: Size;
  height: Size;
  width: Size;
  /** How far the fronts reach past the opening's sides; negative where they stay inside it. */
  left: Size;
  right: Size;
}

/**
 * The face of an opening in its cabinet.
 * @param left the neighbor to the left; none at the cabinet's end
 * @throws Fault `face.none` where reveals and gaps leave nothing
 */
export function faceOf(opening: Opening, left?: AnyOpening, right?: AnyOpening): Face {
  const [bottom, top, leftShare, rightShare] = edges(opening, left, right);
  const face = {
    bottom,
    top,
    height: sum(plus("upper edge", top), minus("lower edge", bottom)),
    width: sum(plus("opening width", opening.least.width), ...leftShare, ...rightShare),
    left: sum(...leftShare),
    right: sum(...rightShare),
  };
  for (const side of ["height", "width"] as const) {
    if (!isPositive(face[side].value)) throw new Fault("face.none", { side, size: face[side].value });
  }
  return face;
}

type Edges = [bottom: Size, top: Size, left: Term[], right: Term[]];

function edges(opening: Opening, left?: AnyOpening, right?: AnyOpening): Edges {
  const s = opening.standards;
  const height = opening.least.height;
  if (isWithin(s)) {
    const gap = s["inset gap"];
    const [lip, inset] = [lipOf(s), minus("inset gap", gap)];
    const past = isLipped(s) ? [plus("lip", lip), inset] : [inset];
    const lower = isLipped(s) ? sum(plus("inset gap", gap), minus("lip", lip)) : sum(plus("inset gap", gap));
    return [lower, sum(plus("opening height", height), ...past), past, past];
  }
  if (s.construction === "face frame") {
    const overlay = s["frame overlay"];
    const over = [plus("frame overlay", overlay)];
    return [sum(minus("frame overlay", overlay)), sum(plus("opening height", height), ...over), over, over];
  }
  return [lowerEdge(s), upperEdge(s, height), sideShare(opening, left, "left"), sideShare(opening, right, "right")];
}

function lowerEdge(s: Standards): Size {
  const rail = railOf(s, "rail below");
  if (rail) return sum(minusSum(rail));
  return sum(minus("cabinet thickness", s["cabinet thickness"]), plus("bottom reveal", s["bottom reveal"]));
}

function upperEdge(s: Standards, height: Rational): Size {
  const rail = railOf(s, "rail above");
  const from = plus("opening height", height);
  if (rail) return sum(from, plusSum(rail));
  return sum(from, plus("cabinet thickness", s["cabinet thickness"]), minus("top reveal", s["top reveal"]));
}

/** Half of what a shared rail leaves beside the gap; nothing where the carcase itself is there. */
function railOf(s: Standards, name: "rail above" | "rail below"): Size | undefined {
  const rail = s[name];
  return rail === "none" ? undefined : halfBesideGap("rail", rail, s["front gap"]);
}

/** How far the front reaches past the opening's side: over the carcase's end, or to the middle of a partition. */
function sideShare(opening: Opening, neighbor: AnyOpening | undefined, side: "left" | "right"): Term[] {
  const s = opening.standards;
  if (!neighbor) {
    const reveal = s[`${side} reveal`] ?? s["end reveal"];
    return [plus("cabinet thickness", s["cabinet thickness"]), minus(`${side} reveal`, reveal)];
  }
  const partition = partitionRightOf(side === "left" ? neighbor : opening);
  return [plusSum(halfBesideGap("partition", partition, gapBeside(opening, neighbor)))];
}

/** The partition between an opening and its neighbor to the right. */
export const partitionRightOf = (opening: WithStandards): Rational =>
  standardOf(opening, "partition thickness") ?? standardOf(opening, "cabinet thickness");

/**
 * The stile of a face frame between an opening and its neighbor to the right: where it was not typed and the partition
 * behind it was, it is as wide as that.
 */
export const stileRightOf = (opening: WithStandards): Rational =>
  standardOf(opening, "stile width") ?? standardOf(opening, "partition thickness") ?? usualStile(opening.unit);

/** The stile of a face frame at the end of its cabinet, before the end that it belongs to. */
export const endStileOf = (opening: WithStandards): Rational =>
  standardOf(opening, "stile width") ?? usualStile(opening.unit);

/** @source common practice: stiles and rails of face frames are 1 1/2 in (38 mm) wide */
const usualStile = (unit: Unit): Rational => roundFigure("1 1/2", "38", unit);

/** The gap between the fronts of two openings side by side: the larger one counts. */
export const gapBeside = (a: AnyOpening, b: AnyOpening): Rational =>
  greaterOf(standardOf(a, "front gap"), standardOf(b, "front gap"));

const halfBesideGap = (name: string, stock: Rational, gap: Rational): Size =>
  shared(sum(plus(name, stock), minus("front gap", gap)), 2);
