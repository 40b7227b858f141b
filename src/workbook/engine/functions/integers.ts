import type { Evaluator, Ordinary } from "../kinds";
import { CellError, fail, isMatrix, Reference, type Scalar, type Value } from "../values";
import { unproven } from "../proven";
import { ofStrictNumbers, strictNumber } from "./reading";

/** Whole numbers and steps. */
export const integers: Record<string, Ordinary> = {
  GCD: { signature: "R", call: (args, evaluator) => folded(args, evaluator, common) },
  LCM: {
    signature: "R",
    call: (args, evaluator) => folded(args, evaluator, (a, b) => (a === 0 || b === 0 ? 0 : (a / common(a, b)) * b)),
  },
  DELTA: ofStrictNumbers((a, b = 0) => (a === b ? 1 : 0)),
  GESTEP: ofStrictNumbers((value, step = 0) => (value! >= step ? 1 : 0)),
};

const LARGEST = 2 ** 53;

/** Blanks do not count, but something must be there. */
function folded(args: Value[], evaluator: Evaluator, of: (a: number, b: number) => number): Scalar {
  const numbers: number[] = [];
  for (const arg of args) {
    const items = arg instanceof Reference || isMatrix(arg) ? evaluator.matrix(arg).flat() : [arg];
    for (const item of items) {
      if (item === null) continue;
      if (items.length > 1 && typeof item === "string") throw unproven("GCD or LCM", "texts in a range");
      const number = strictNumber(item);
      if (number instanceof CellError) return number;
      if (number < 0 || number >= LARGEST) return fail("#NUM!");
      numbers.push(Math.trunc(number));
    }
  }
  if (numbers.length === 0) return fail("#VALUE!");
  const result = numbers.reduce(of);
  return result >= LARGEST ? fail("#NUM!") : result;
}

function common(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b];
  return a;
}
