import { toText } from "../coercion";
import type { Ordinary } from "../kinds";
import { finite } from "../operators";
import { CellError, fail, Unsupported } from "../values";
import { tidy } from "./digits";
import { scalarOf, strictNumber } from "./reading";
import { unitOf } from "./units";

/** Each scale's degrees as kelvins: so many times the degree, plus so much. */
const SCALES: Record<string, [factor: number, offset: number]> = {
  C: [1, 273.15],
  cel: [1, 273.15],
  F: [5 / 9, 459.67 * (5 / 9)],
  fah: [5 / 9, 459.67 * (5 / 9)],
  K: [1, 0],
  kel: [1, 0],
  Rank: [5 / 9, 0],
  Reau: [1.25, 273.15],
};

/** A number of one unit in another; of units that measure different things #N/A. */
export const conversion: Record<string, Ordinary> = {
  CONVERT: {
    signature: "V",
    call(args) {
      const value = strictNumber(args[0]);
      if (value instanceof CellError) return value;
      const [from, to] = [args[1], args[2]].map((arg) => toText(scalarOf(arg)));
      if (from instanceof CellError) return from;
      if (to instanceof CellError) return to;
      const [first, second] = [scale(from!), scale(to!)];
      if (first && second) return finite(tidy((value * first[0] + first[1] - second[1]) / second[0]));
      const [unit, other] = [unitOf(from!), unitOf(to!)];
      if (!unit || !other || unit.kind !== other.kind) return fail("#N/A");
      return finite(value * (unit.size / other.size));
    },
  },
};

/** Degrees take no prefix but kelvins do, which multiplies them. */
function scale(name: string): [factor: number, offset: number] | undefined {
  if (Object.hasOwn(SCALES, name)) return SCALES[name];
  if (name === "MK" || name === "Mkel") return [1e6, 0];
  if (/^(\w|da)(K|kel)$/.test(name)) throw new Unsupported(`converts ${name}, which is not proven here`);
  return undefined;
}
