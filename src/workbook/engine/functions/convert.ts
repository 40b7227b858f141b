import { toNumber } from "../coercion";
import type { Ordinary } from "../evaluator";
import { finite } from "../operators";
import { univerFunction } from "../univer/library";
import { CellError, isScalar } from "../values";

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

/** The library rounds temperatures to two places; the rest of its conversions are used. */
export const conversion: Record<string, Ordinary> = {
  CONVERT: {
    signature: "V",
    call(args, evaluator, scope) {
      const from = SCALES[String(args[1])];
      const to = SCALES[String(args[2])];
      if (!from || !to) return univerFunction("CONVERT")!.call(args, evaluator, scope);
      const degrees = toNumber(isScalar(args[0]) ? args[0] : null);
      if (degrees instanceof CellError) return degrees;
      return finite(Number(((degrees * from[0] + from[1] - to[1]) / to[0]).toPrecision(15)));
    },
  },
};
