import { toBoolean, toNumber } from "../coercion";
import { spend } from "../budget";
import type { Evaluator, Ordinary } from "../kinds";
import { firstFrom } from "../first-from";
import { CellError, fail, isScalar, Reference, type Matrix, type Scalar, type Value } from "../values";

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
  let [better, equal] = [0, 0];
  for (const area of among.areas) {
    const numbers = risingNumbers(evaluator.cells.matrix(area));
    const [below, upTo] = [
      firstFrom(numbers.length, (i) => numbers[i]! >= number),
      firstFrom(numbers.length, (i) => numbers[i]! > number),
    ];
    spend(2 * Math.ceil(Math.log2(numbers.length + 2)));
    better += upward ? below : numbers.length - upTo;
    equal += upTo - below;
  }
  return equal === 0 ? fail("#N/A") : of(better, equal);
}

/** Every item of a list is ranked among all of it, so that the list is put in order once. */
function risingNumbers(matrix: Matrix): Float64Array {
  let numbers = rising.get(matrix);
  if (!numbers) {
    spend(COST_OF_ORDER * matrix.length * matrix[0]!.length);
    rising.set(
      matrix,
      (numbers = Float64Array.from(matrix.flat().filter((value) => typeof value === "number")).sort()),
    );
  }
  return numbers;
}

const rising = new WeakMap<Matrix, Float64Array>();
const COST_OF_ORDER = 8;
