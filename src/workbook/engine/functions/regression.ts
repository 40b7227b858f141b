import { toNumber } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { finite } from "../operators";
import { CellError, fail, type Scalar, type Value } from "../values";
import { sum } from "./aggregates";
import { scalarOf } from "./reading";

/** The straight line through points, and how near they are to it. */
export const regression: Record<string, Ordinary> = {
  SLOPE: ofPairs(({ xy, xx }) => (xx === 0 ? fail("#DIV/0!") : finite(xy / xx))),
  INTERCEPT: ofPairs(({ xy, xx, x, y }) => (xx === 0 ? fail("#DIV/0!") : finite(y - (xy / xx) * x))),
  CORREL: ofPairs(({ xy, xx, yy }) => (xx === 0 || yy === 0 ? fail("#DIV/0!") : finite(xy / Math.sqrt(xx * yy)))),
  FORECAST: forecast(),
  "FORECAST.LINEAR": forecast(),
};

interface Moments {
  x: number;
  y: number;
  xx: number;
  xy: number;
  yy: number;
}

function forecast(): Ordinary {
  return {
    signature: "VAA",
    call([at, ys, xs], evaluator) {
      const wanted = toNumber(scalarOf(at));
      if (wanted instanceof CellError) return wanted;
      const found = moments(ys, xs, evaluator);
      if (found instanceof CellError) return found;
      return found.xx === 0 ? fail("#DIV/0!") : finite(found.y + (found.xy / found.xx) * (wanted - found.x));
    },
  };
}

function ofPairs(of: (moments: Moments) => Scalar): Ordinary {
  return {
    signature: "A",
    call([ys, xs], evaluator) {
      const found = moments(ys, xs, evaluator);
      return found instanceof CellError ? found : of(found);
    },
  };
}

/** Pairs of which one is no number do not count. */
function moments(ys: Value, xs: Value, evaluator: Evaluator): Moments | CellError {
  const [right, left] = [evaluator.matrix(ys).flat(), evaluator.matrix(xs).flat()];
  const error = [...right, ...left].find((item) => item instanceof CellError);
  if (error) return error;
  if (right.length !== left.length) return fail("#N/A");
  const pairs = right.flatMap((y, i) => (typeof y === "number" && typeof left[i] === "number" ? [[left[i], y]] : []));
  if (pairs.length === 0) return fail("#DIV/0!");
  const x = sum(pairs.map(([a]) => a!)) / pairs.length;
  const y = sum(pairs.map(([, b]) => b!)) / pairs.length;
  return {
    x,
    y,
    xx: sum(pairs.map(([a]) => (a! - x) ** 2)),
    xy: sum(pairs.map(([a, b]) => (a! - x) * (b! - y))),
    yy: sum(pairs.map(([, b]) => (b! - y) ** 2)),
  };
}
