import { add, equal, less, negate, subtract, total, type Rational } from "../../length";
import { ACROSS, bandsAt, UPRIGHT } from "../bands";
import { betweenOf } from "./outside";
import { frontsIn, type Hung, type PlannedOpening } from "./plan";

/** Fronts that are cut in order from one board, so that the grain runs on from each to the next. */
export interface FrontStrip {
  /** Of its grain group. */
  label: string;
  /** Down an opening from the top, or across a cabinet from the left. */
  way: "down" | "across";
  fronts: readonly Hung[];
  /** What the fronts are cut to along the strip, and across it. */
  sizes: readonly Rational[];
  width: Rational;
  length: Rational;
  /** Its length runs with the grain; else it runs across. */
  isLong: boolean;
  /** What is cut away after each front but the last: what lies there once they hang, and no less than the kerf. */
  between: readonly Rational[];
  hung: readonly Rational[];
}

/** The strips of a job. */
export const stripsOf = (plans: readonly PlannedOpening[]): FrontStrip[] => [
  ...plans
    .filter(({ opening }) => opening.standards["front match"] === "opening")
    .map((planned) => stripOf(planned.opening.label, "down", frontsIn(planned))),
  ...levelsOf(plans)
    .filter((fronts) => fronts.length > 1)
    .map((fronts) => stripOf(`${fronts[0]!.label} to ${fronts[fronts.length - 1]!.label}`, "across", fronts)),
];

/** Fronts that are to match across their cabinet and have nothing beside them that they match. */
export const unmatched = (plans: readonly PlannedOpening[]): Hung[] =>
  levelsOf(plans).flatMap((fronts) => (fronts.length > 1 ? [] : fronts));

/** Fronts beside each other that match across their cabinet, from the left; those that stand alone as well. */
function levelsOf(plans: readonly PlannedOpening[]): Hung[][] {
  const levels: Hung[][] = [];
  /** Those that the last opening of each cabinet has part in. */
  const last = new Map<Hung["cabinet"], Hung[][]>();
  for (const planned of plans) {
    if (planned.opening.standards["front match"] !== "cabinet") continue;
    const own = frontsIn(planned).map((front) => {
      const level = last.get(front.cabinet)?.find((fronts) => isBeside(fronts[fronts.length - 1]!, front));
      if (level) level.push(front);
      return level ?? [front];
    });
    levels.push(...own.filter((level) => level.length === 1));
    if (own[0]) last.set(own[0][0]!.cabinet, own);
  }
  return levels;
}

function isBeside(left: Hung, { opening, front }: Hung): boolean {
  const { openings } = left.cabinet;
  if (openings[openings.indexOf(left.opening) + 1] !== opening) return false;
  const alike = (["front grain", "front material"] as const).every(
    (name) => left.opening.standards[name] === opening.standards[name],
  );
  const sizes = (one: Hung["front"]): Rational[] => [one.bottom.value, one.height.value, one.cut.height.value];
  return (
    alike &&
    equal(left.opening.standards["front thickness"], opening.standards["front thickness"]) &&
    sizes(front).every((size, i) => equal(size, sizes(left.front)[i]!))
  );
}

function stripOf(label: string, way: FrontStrip["way"], fronts: readonly Hung[]): FrontStrip {
  const { kerf, "front grain": grain } = fronts[0]!.opening.standards;
  const along = way === "down" ? "height" : "width";
  const sizes = fronts.map(({ front }) => front.cut[along].value);
  const hung = fronts.slice(1).map((front, i) => gapOf(way, fronts[i]!, front));
  const between = hung.map((gap) => (less(gap, kerf) ? kerf : gap));
  return {
    label,
    way,
    fronts,
    sizes,
    width: fronts[0]!.front.cut[way === "down" ? "width" : "height"].value,
    length: total([...sizes, ...between]),
    isLong: (way === "down") === (grain === "vertical"),
    between,
    hung,
  };
}

/** What lies between two fronts as they are cut, once they hang: the gap and their bands, less what is milled off for these. */
function gapOf(way: FrontStrip["way"], one: Hung, next: Hung): Rational {
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
