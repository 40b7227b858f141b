import {
  add,
  divide,
  equal,
  Fault,
  isPositive,
  isZero,
  less,
  multiply,
  naming,
  share,
  subtract,
  times,
  total,
  type Rational,
} from "../length";
import type { DrawerAsked } from "./fronts";
import { isFramed, type Carcase, type Measured, type Opening } from "./opening";
import { betweenOf, endOf, levelOf } from "./plan/outside";

/** A cabinet by its outside sizes, and how it is divided from left to right. */
export interface CabinetAsked extends Pick<Opening, "standards" | "unit"> {
  outside: Readonly<Record<Measured, Rational>>;
  carcase: Carcase;
  columns: readonly DrawerAsked[];
}

/** What a cabinet leaves open. */
export interface ClearSizes {
  /** Of its openings, left to right. */
  widths: Rational[];
  height: Rational;
  depth: Rational;
  /** The case's inside behind a frame, for each opening where it is alike at both sides. */
  caseWidths: (Rational | undefined)[];
}

/**
 * The openings of a cabinet by its outside sizes: what its ends, partitions, toe kick, top, bottom and back leave. Stiles
 * and rails of a face frame stand in the place of ends, partitions, top and bottom. Widths add up to the outside exactly.
 * @throws Fault `cabinet.taken`, `columns.wide`, `columns.nothingToShare`, `columns.unfilled`, with the heading's name
 */
export function clearSizes(cabinet: CabinetAsked): ClearSizes {
  const { outside, carcase, columns } = cabinet;
  const { toeKick, back, backInset } = carcase;
  const frame = isFramed(cabinet);
  const between = columns.length - 1;
  const left = (size: Measured, names: string, taken: Rational): Rational => {
    const clear = subtract(outside[size], taken);
    if (isPositive(clear)) return clear;
    throw new Fault("cabinet.taken", { argument: titledSize(size), outside: outside[size], names, taken });
  };
  const ends = times(2, endOf(cabinet));
  const inner = times(between, betweenOf(cabinet));
  const room = left("width", frame ? "stiles" : "ends and partitions", add(ends, inner));
  const height = left(
    "height",
    frame ? "toe kick and rails" : "toe kick, top and bottom",
    add(toeKick, times(2, levelOf(cabinet))),
  );
  const depth = left("depth", "back and back inset", add(back, backInset));
  const widths = naming("Columns", () => columnWidths(columns, room));
  return { widths, height, depth, caseWidths: widths.map((width, i) => caseWidth(cabinet, width, i, between)) };
}

const titledSize = (size: string): string => size[0]!.toUpperCase() + size.slice(1);

/** Fixed widths as they are, the others by their parts of the rest: nothing may stay over, or the outside would differ. */
function columnWidths(columns: readonly DrawerAsked[], room: Rational): Rational[] {
  const fixed = total(columns.flatMap((one) => ("fixed" in one ? [one.fixed] : [])));
  const parts = total(columns.flatMap((one) => ("parts" in one ? [one.parts] : [])));
  const rest = subtract(room, fixed);
  if (isZero(parts)) {
    if (equal(fixed, room)) return columns.map((one) => (one as { fixed: Rational }).fixed);
    throw new Fault(less(fixed, room) ? "columns.unfilled" : "columns.wide", { fixed, room });
  }
  if (!isPositive(rest)) throw new Fault("columns.nothingToShare", { fixed, room });
  return columns.map((one) => ("fixed" in one ? one.fixed : divide(multiply(one.parts, rest), parts)));
}

/** What the frame hides at the two sides of an opening must be equal, for slides are blocked out alike at both. */
function caseWidth(cabinet: CabinetAsked, width: Rational, place: number, last: number): Rational | undefined {
  const { standards: s } = cabinet;
  if (!isFramed(cabinet)) return undefined;
  const thickness = s["cabinet thickness"];
  const atEnd = subtract(endOf(cabinet), thickness);
  const atPartition = share(subtract(betweenOf(cabinet), s["partition thickness"] ?? thickness), 2);
  const left = place === 0 ? atEnd : atPartition;
  const right = place === last ? atEnd : atPartition;
  return equal(left, right) ? add(width, times(2, left)) : undefined;
}
