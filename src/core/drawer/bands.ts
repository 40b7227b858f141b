import { add, Fault, isPositive, isZero, share, subtract, ZERO, type Rational } from "../length";
import { minus, plus, sum, type Size } from "./size";
import type { Standards } from "./standards";

/** Edges of a front as it hangs, in the order in which they are told. */
const EDGES = ["top", "bottom", "left", "right"] as const;
type Edge = (typeof EDGES)[number];
type Opposite = readonly [Edge, Edge];
export const ACROSS: Opposite = ["left", "right"];
export const UPRIGHT: Opposite = ["top", "bottom"];

/** An edge of a piece that gets a band. */
export interface Band {
  edge: Edge;
  thickness: Rational;
}

/** The band of an edge: its own, or what is said of all four. */
const bandOf = (s: Standards, edge: Edge): Rational => s[`${edge} edge band`] ?? s["edge band"];

/** What the bander takes off an edge first: nothing where that is said to have no band. */
function millOf(s: Standards, edge: Edge): Rational {
  const own = s[`${edge} edge band`];
  return own && isZero(own) ? ZERO : s["pre-mill"];
}

/** Whether any edge of a front goes past the cutter. */
export const isMilled = (s: Standards): boolean => EDGES.some((edge) => isPositive(millOf(s, edge)));

/** What a front is cut to, so that its bands make it whole. @throws Fault `front.bandThick` where they leave nothing */
export function cutOfFront(name: string, finished: Size, s: Standards, [a, b]: Opposite): Size {
  const mills = [millOf(s, a), millOf(s, b)];
  if ([bandOf(s, a), bandOf(s, b), ...mills].every(isZero)) return finished;
  const apart = s[`${a} edge band`] ?? s[`${b} edge band`];
  const bands = apart
    ? [minus(`${a} edge band`, bandOf(s, a)), minus(`${b} edge band`, bandOf(s, b))]
    : [minus("edge band", s["edge band"], 2)];
  const cut = sum(plus(name, finished), ...bands, plus("pre-mill", s["pre-mill"], mills.filter(isPositive).length));
  const band = share(add(bandOf(s, a), bandOf(s, b)), 2);
  if (!isPositive(cut.value)) throw new Fault("front.bandThick", { band, size: finished.value });
  return cut;
}

/** By how much a front hangs farther out at an edge than it is cut: the band, less what is milled off for it. */
export const bandsAt = (s: Standards, edge: Edge): Rational => subtract(bandOf(s, edge), millOf(s, edge));

/** What a side, end or divider of the box is cut to, for the band on its upper edge. */
export const cutOfBox = (height: Size, s: Standards): Size =>
  isZero(s["box edge band"])
    ? height
    : sum(plus("height", height), minus("box edge band", s["box edge band"]), plus("pre-mill", s["pre-mill"]));

/** The bands of a piece; none of one that is not banded. */
export function bandsOf(part: string, s: Standards): Band[] {
  if (/^(Side|Box front|Box back|Divider)$/.test(part)) return banded(["top"], () => s["box edge band"]);
  return part === "Front" ? banded(EDGES, (edge) => bandOf(s, edge)) : [];
}

const banded = (edges: readonly Edge[], of: (edge: Edge) => Rational): Band[] =>
  edges.map((edge) => ({ edge, thickness: of(edge) })).filter(({ thickness }) => isPositive(thickness));

export const hasBand = (s: Standards): boolean => ["Side", "Front"].some((part) => bandsOf(part, s).length > 0);
