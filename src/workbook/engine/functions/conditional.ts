import type { Evaluator, Ordinary } from "../evaluator";
import { spend } from "../budget";
import { finite } from "../operators";
import { CellError, fail, isScalar, Reference, type Matrix, type Scalar, type SheetArea, type Value } from "../values";
import { criterion } from "./criteria";

/** Ranges and what they are compared with, as many as there may be. */
const PAIRS = "RV".repeat(127);

/** Sums and counts of the cells that meet a condition. Their ranges must be ranges. */
export const conditional: Record<string, Ordinary> = {
  COUNTIF: { signature: "RV", call: (args, evaluator) => count(chosen(evaluator, undefined, args)) },
  COUNTIFS: { signature: PAIRS, call: (args, evaluator) => count(chosen(evaluator, undefined, args)) },
  SUMIF: { signature: "RVR", call: (args, evaluator) => total(oneCondition(evaluator, args)) },
  AVERAGEIF: { signature: "RVR", call: (args, evaluator) => mean(oneCondition(evaluator, args)) },
  SUMIFS: several(total),
  AVERAGEIFS: several(mean),
  MAXIFS: several((values) => extreme(values, Math.max)),
  MINIFS: several((values) => extreme(values, Math.min)),
};

type Chosen = Scalar[] | CellError;

function several(of: (values: Chosen) => Scalar): Ordinary {
  return {
    signature: `R${PAIRS}`,
    call: (args, evaluator) => of(chosen(evaluator, args[0], args.slice(1))),
  };
}

/** SUMIF's last range takes its size from the first, whatever was written. */
function oneCondition(evaluator: Evaluator, [tested, wanted, summed]: Value[]): Chosen {
  if (!(tested instanceof Reference)) return fail("#VALUE!");
  if (!(summed instanceof Reference)) return chosen(evaluator, tested, [tested, wanted]);
  const shape = tested.areas[0]!;
  const start = summed.areas[0]!;
  const resized = Reference.single(start.sheet, {
    top: start.top,
    left: start.left,
    bottom: start.top + shape.bottom - shape.top,
    right: start.left + shape.right - shape.left,
  });
  return chosen(evaluator, resized, [tested, wanted]);
}

/** The values of `from` (of the first tested range, where it is undefined) in whose places all conditions hold. */
function chosen(evaluator: Evaluator, from: Value, pairs: Value[]): Chosen {
  const tests: Test[] = [];
  for (let i = 0; i + 1 < pairs.length; i += 2) {
    const range = pairs[i];
    const wanted = pairs[i + 1];
    if (!(range instanceof Reference)) return fail("#VALUE!");
    const area = range.areas[0]!;
    tests.push({ area, matrix: evaluator.cells.matrix(area), holds: criterion(isScalar(wanted) ? wanted : null) });
  }
  if (from !== undefined && !(from instanceof Reference)) return fail("#VALUE!");
  const area = from?.areas[0] ?? tests[0]!.area;
  if (tests.some((test) => !sameShape(test.area, area))) return fail("#VALUE!");
  const result: Scalar[] = [];
  const matrix = from ? evaluator.cells.matrix(area) : tests[0]!.matrix;
  const rows = Math.max(...tests.map((test) => test.matrix.length));
  const columns = Math.max(...tests.map((test) => test.matrix[0]!.length));
  spend(2 * rows * columns * tests.length);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (allHold(tests, row, column)) result.push(matrix[row]?.[column] ?? null);
    }
  }
  return result;
}

interface Test {
  area: SheetArea;
  matrix: Matrix;
  holds: (value: Scalar) => boolean;
}

function allHold(tests: readonly Test[], row: number, column: number): boolean {
  for (const { matrix, holds } of tests) if (!holds(matrix[row]?.[column] ?? null)) return false;
  return true;
}

function sameShape(a: SheetArea, b: SheetArea): boolean {
  return a.bottom - a.top === b.bottom - b.top && a.right - a.left === b.right - b.left;
}

function count(values: Chosen): Scalar {
  return values instanceof CellError ? values : values.length;
}

function total(values: Chosen): Scalar {
  return overNumbers(values, (numbers) => finite(numbers.reduce((a, b) => a + b, 0)));
}

function mean(values: Chosen): Scalar {
  return overNumbers(values, (numbers) =>
    numbers.length === 0 ? fail("#DIV/0!") : finite(numbers.reduce((a, b) => a + b, 0) / numbers.length),
  );
}

function extreme(values: Chosen, pick: (a: number, b: number) => number): Scalar {
  return overNumbers(values, (numbers) => (numbers.length === 0 ? 0 : numbers.reduce((a, b) => pick(a, b))));
}

function overNumbers(values: Chosen, of: (numbers: number[]) => Scalar): Scalar {
  if (values instanceof CellError) return values;
  const error = values.find((value) => value instanceof CellError);
  return error ?? of(values.filter((value) => typeof value === "number"));
}
