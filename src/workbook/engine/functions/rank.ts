import { toBoolean, toNumber } from "../coercion";
import { spend } from "../budget";
import type { Evaluator, Ordinary } from "../kinds";
import { CellError, fail, isScalar, Reference, type Scalar, type Value } from "../values";

/** The place of a number among others; equal ones share the best place, or the mean of theirs. */
export const rank: Record<string, Ordinary> = {
  RANK: { signature: "VRV", call: (args, evaluator) => place(args, evaluator, (better) => better + 1) },
  "RANK.EQ": { signature: "VRV", call: (args, evaluator) => place(args, evaluator, (better) => better + 1) },
  "RANK.AVG": {
    signature: "VRV",
    call: (args, evaluator) => place(args, evaluator, (better, equal) => better + (equal + 1) / 2),
  },
};

function place(
  [wanted, among, rising]: Value[],
  evaluator: Evaluator,
  of: (better: number, equal: number) => number,
): Scalar {
  const number = toNumber(isScalar(wanted) ? wanted : null);
  const upward = toBoolean(isScalar(rising) ? rising : false);
  if (number instanceof CellError) return number;
  if (upward instanceof CellError) return upward;
  if (!(among instanceof Reference)) return fail("#VALUE!");
  const numbers = among.areas
    .flatMap((area) => evaluator.cells.matrix(area).flat())
    .filter((value) => typeof value === "number");
  spend(3 * numbers.length);
  const equal = numbers.filter((other) => other === number).length;
  const better = numbers.filter((other) => (upward ? other < number : other > number)).length;
  return equal === 0 ? fail("#N/A") : of(better, equal);
}
