import { betweenOf, endOf, isFramed, levelOf, type AnyOpening, type Drawer } from "../core/drawer";
import { greaterOf, orElse, total, type Rational } from "../core/length";

/** An opening in its cabinet. */
type Placed = Pick<Drawer, "opening" | "cabinet">;

/** Where openings stand in their carcase: across from its left edge, up from their floor. */
export interface Carcase {
  /** The openings' left edges. */
  lefts: Rational[];
  width: Rational;
  /** Its upper edge above the floor, and its lower edge below it. */
  top: Rational;
  bottom: Rational;
}

/**
 * What stands round neighbors: the carcase's ends, or the partition (stile) that they share with one that is not shown;
 * above and below its top and bottom, or a rail.
 */
export function carcaseOf(openings: readonly Placed[]): Carcase {
  const [first, last] = [openings[0]!, openings[openings.length - 1]!];
  const all = first.cabinet.openings;
  const before = all[all.indexOf(first.opening) - 1];
  const after = all[all.indexOf(last.opening) + 1];
  const widths = openings.map(({ opening }) => opening.least.width);
  const between = openings.map(({ opening }) => betweenOf(opening));
  const left = before ? besides(before, first) : endOf(first.opening);
  const right = after ? between[between.length - 1]! : endOf(last.opening);
  const lefts = [left];
  widths.slice(1).forEach((_, i) => lefts.push(total([lefts[i]!, widths[i]!, between[i]!])));
  const height = openings.map(({ opening }) => opening.least.height).reduce(greaterOf);
  return {
    lefts,
    width: total([lefts[lefts.length - 1]!, widths[widths.length - 1]!, right]),
    top: total([height, levelAt(first, "rail above")]),
    bottom: levelAt(first, "rail below"),
  };
}

/** A neighbor that cannot be read may not tell its partition: it is then taken for a usual one. */
const besides = (neighbor: AnyOpening, { opening }: Placed): Rational =>
  orElse(
    () => betweenOf(neighbor),
    () => betweenOf(opening),
  );

function levelAt({ opening }: Placed, side: "rail above" | "rail below"): Rational {
  const rail = opening.standards[side];
  return isFramed(opening) || rail === "none" ? levelOf(opening) : rail;
}
