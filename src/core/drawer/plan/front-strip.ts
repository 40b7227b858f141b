import { add, greaterOf, keyOf, negate, subtract, total, type Rational } from "../../length";
import { ACROSS, bandsAt, UPRIGHT } from "../bands";
import { groupsOf } from "../groups";
import { betweenOf } from "./outside";
import { frontsIn, type Hung, type PlannedOpening } from "./plan";

/** Fronts that are cut in order from one board, so that the grain runs on from each to the next. */
export interface FrontStrip {
  /** Of its grain group. */
  label: string;
  /** Down an opening from the top, or across a cabinet from the left; the rows of a panel also from the bottom up. */
  way: "down" | "across" | "up";
  /** What its cuts part: a front each, or of a panel a line of them. */
  places: readonly (readonly Hung[])[];
  fronts: readonly Hung[];
  /** What the places are cut to along the strip, and across it. */
  sizes: readonly Rational[];
  width: Rational;
  length: Rational;
  /** Its length runs with the grain; else it runs across. */
  isLong: boolean;
  /** What is cut away after each place but the last: what lies there once they hang, and no less than the kerf. */
  between: readonly Rational[];
  hung: readonly Rational[];
  /** The strips that a panel is ripped into; none of what is a strip itself. */
  lines: readonly FrontStrip[];
}

/** The strips and panels of a job. */
export const stripsOf = (plans: readonly PlannedOpening[]): FrontStrip[] => [
  ...plans
    .filter(({ opening }) => opening.standards["front match"] === "opening")
    .map((planned) => stripOf(planned.opening.label, "down", alone(frontsIn(planned)))),
  ...levelsOf(plans, "cabinet")
    .filter((fronts) => fronts.length > 1)
    .map((fronts) => stripOf(labelOf(fronts), "across", alone(fronts))),
  ...banksOf(plans).filter(isGrid).map(panelOf),
];

const alone = (fronts: readonly Hung[]): Hung[][] => fronts.map((front) => [front]);

const labelOf = (fronts: readonly Hung[]): string => `${fronts[0]!.label} to ${fronts[fronts.length - 1]!.label}`;

/** Fronts that are to match others of their cabinet and do not: they have nothing beside them, or are no grid. */
export const unmatched = (plans: readonly PlannedOpening[]): Hung[] =>
  [
    ...levelsOf(plans, "cabinet").filter((fronts) => fronts.length === 1),
    ...banksOf(plans)
      .filter((bank) => !isGrid(bank))
      .flat(),
  ].flat();

/** Of each cabinet whose fronts are to be one panel its rows, from the top. */
const banksOf = (plans: readonly PlannedOpening[]): Hung[][][] =>
  groupsOf(levelsOf(plans, "panel"), ([front]) => front!.cabinet);

/** Whether all fronts of a cabinet are there, at least two by two. */
const isGrid = (rows: readonly (readonly Hung[])[]): boolean =>
  rows.length > 1 && rows.every((row) => row.length > 1 && row.length === row[0]!.cabinet.openings.length);

/** Its lines run with the grain: columns from the left, or rows from the bottom, so that it lies on a sheet as it hangs. */
function panelOf(rows: readonly (readonly Hung[])[]): FrontStrip {
  const label = labelOf(rows.flat());
  const isUpright = rows[0]![0]!.opening.standards["front grain"] === "vertical";
  const places = isUpright ? rows[0]!.map((_, i) => rows.map((row) => row[i]!)) : [...rows].reverse();
  const lines = places.map((line) => stripOf(label, isUpright ? "down" : "across", alone(line)));
  return { ...stripOf(label, isUpright ? "across" : "up", places), width: lines[0]!.length, lines };
}

/** Fronts beside each other that are to match across their cabinet, from the left; those that stand alone as well. */
function levelsOf(plans: readonly PlannedOpening[], match: "cabinet" | "panel"): Hung[][] {
  const levels: Hung[][] = [];
  const ofOpening = new Map<unknown, Map<string, Hung[]>>();
  for (const planned of plans) {
    const { opening, cabinet } = planned;
    if (opening.standards["front match"] !== match) continue;
    const left = ofOpening.get(cabinet.openings[cabinet.openings.indexOf(opening) - 1]);
    const own = new Map<string, Hung[]>();
    ofOpening.set(opening, own);
    for (const front of frontsIn(planned)) {
      const key = alikeOf(front);
      const level = left?.get(key) ?? [];
      if (level.length === 0) levels.push(level);
      level.push(front);
      own.set(key, level);
    }
  }
  return levels;
}

/** What fronts beside each other have in common that match. */
const alikeOf = ({ opening: { standards: s }, front }: Hung): string =>
  [
    s["front grain"],
    s["front material"],
    ...[s["front thickness"], front.bottom.value, front.height.value, front.cut.height.value].map(keyOf),
  ].join("|");

function stripOf(label: string, way: FrontStrip["way"], places: FrontStrip["places"]): FrontStrip {
  const firsts = places.map(([front]) => front!);
  const { kerf, "front grain": grain } = firsts[0]!.opening.standards;
  const [along, across] = way === "across" ? (["width", "height"] as const) : (["height", "width"] as const);
  const sizes = firsts.map(({ front }) => front.cut[along].value);
  const hung = firsts.slice(1).map((front, i) => gapOf(way, firsts[i]!, front));
  const between = hung.map((gap) => greaterOf(gap, kerf));
  return {
    label,
    way,
    places,
    fronts: places.flat(),
    sizes,
    width: firsts[0]!.front.cut[across].value,
    length: total([...sizes, ...between]),
    isLong: (way === "across") === (grain === "horizontal"),
    between,
    hung,
    lines: [],
  };
}

/** What lies between two fronts as they are cut, once they hang: the gap and their bands, less what is milled off for these. */
function gapOf(way: FrontStrip["way"], one: Hung, next: Hung): Rational {
  if (way === "up") return gapOf("down", next, one);
  const [a, b] = [one.opening.standards, next.opening.standards];
  return way === "down"
    ? total([subtract(one.front.bottom.value, next.front.top), bandsAt(a, UPRIGHT[1]), bandsAt(b, UPRIGHT[0])])
    : total([
        betweenOf(one.opening),
        negate(add(one.face.right.value, next.face.left.value)),
        bandsAt(a, ACROSS[1]),
        bandsAt(b, ACROSS[0]),
      ]);
}
