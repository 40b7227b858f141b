import type { Evaluator, Ordinary } from "../kinds";
import { spend } from "../budget";
import { finite } from "../operators";
import { CellError, fail, isScalar, Reference, type Matrix, type Scalar, type SheetArea, type Value } from "../values";
import { criterion, type Criterion } from "./criteria";
import { Placed } from "./placed";

/** Ranges and what they are compared with, as many as there may be. */
const PAIRS = "RV".repeat(127);

/** Sums and counts of the cells that meet a condition. Their ranges must be ranges. */
export const conditional: Record<string, Ordinary> = {
  COUNTIF: { signature: "RV", call: (args, evaluator) => count(args, evaluator) },
  COUNTIFS: { signature: PAIRS, call: (args, evaluator) => count(args, evaluator) },
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

/** The values of `from` in whose places all conditions hold. */
function chosen(evaluator: Evaluator, from: Value, pairs: Value[]): Chosen {
  const tests = testsOf(evaluator, pairs);
  if (tests instanceof CellError) return tests;
  if (!(from instanceof Reference)) return fail("#VALUE!");
  const area = from.areas[0]!;
  if (tests.some((test) => !sameShape(test.area, area))) return fail("#VALUE!");
  const result: Scalar[] = [];
  const matrix = evaluator.cells.matrix(area);
  eachHit(evaluator, tests, area, (row, column) => result.push(matrix[row]?.[column] ?? null));
  return result;
}

/** Whole columns end where the workbook does; the blanks beyond are counted too where they meet the conditions. */
function count(pairs: Value[], evaluator: Evaluator): Scalar {
  const tests = testsOf(evaluator, pairs);
  if (tests instanceof CellError) return tests;
  const { area } = tests[0]!;
  if (tests.some((test) => !sameShape(test.area, area))) return fail("#VALUE!");
  let hits = 0;
  const gone = eachHit(evaluator, tests, area, () => hits++);
  if (!tests.every(({ holds }) => holds(null))) return hits;
  return hits + (area.bottom - area.top + 1) * (area.right - area.left + 1) - gone;
}

function testsOf(evaluator: Evaluator, pairs: Value[]): Test[] | CellError {
  const tests: Test[] = [];
  for (let i = 0; i + 1 < pairs.length; i += 2) {
    const range = pairs[i];
    const wanted = pairs[i + 1];
    if (!(range instanceof Reference)) return fail("#VALUE!");
    const area = range.areas[0]!;
    tests.push({ area, matrix: evaluator.cells.matrix(area), ...criterion(isScalar(wanted) ? wanted : null) });
  }
  return tests;
}

/**
 * Goes through the places in which something stands in the ranges, or through all.
 * @returns how many it went through; the others are blank in all of them
 */
function eachHit(
  evaluator: Evaluator,
  tests: Test[],
  from: SheetArea,
  visit: (row: number, column: number) => void,
): number {
  const looked = eachLookedUp(tests, visit);
  if (looked !== undefined) return looked;
  const [height, columns] = extent(tests);
  const sparse = sparseRows(evaluator, [...tests.map(({ area }) => area), from], height);
  const count = sparse?.length ?? height;
  spend(2 * count * columns * tests.length);
  for (let i = 0; i < count; i++) {
    const row = sparse ? sparse[i]! : i;
    for (let column = 0; column < columns; column++) if (allHold(tests, row, column)) visit(row, column);
  }
  return count * columns;
}

/** The same where a condition is that a value be equal to one, and it is known where such values stand. */
function eachLookedUp(tests: Test[], visit: (row: number, column: number) => void): number | undefined {
  const [test] = tests.filter(({ key }) => key !== undefined);
  const places = test && Placed.of(test.matrix).at(test.key);
  if (!places) return undefined;
  spend(2 * places.length * tests.length);
  const width = test.matrix[0]!.length;
  for (const place of places) {
    const [row, column] = [Math.floor(place / width), place % width];
    if (allHold(tests, row, column)) visit(row, column);
  }
  return places.length;
}

/** The rows, counted from the first of each range, that hold something in one of them; none where there are many. */
function sparseRows(evaluator: Evaluator, areas: readonly SheetArea[], height: number): number[] | undefined {
  const all = new Set<number>();
  for (const area of areas) {
    const rows = evaluator.cells.sparseRows(evaluator.cells.clip(area));
    if (!rows || all.size > height / 4) return undefined;
    for (const row of rows) all.add(row - area.top);
  }
  return [...all].sort((a, b) => a - b);
}

function extent(tests: Test[]): [rows: number, columns: number] {
  return [
    Math.max(...tests.map((test) => test.matrix.length)),
    Math.max(...tests.map((test) => test.matrix[0]!.length)),
  ];
}

interface Test extends Criterion {
  area: SheetArea;
  matrix: Matrix;
}

function allHold(tests: readonly Test[], row: number, column: number): boolean {
  for (const { matrix, holds } of tests) if (!holds(matrix[row]?.[column] ?? null)) return false;
  return true;
}

function sameShape(a: SheetArea, b: SheetArea): boolean {
  return a.bottom - a.top === b.bottom - b.top && a.right - a.left === b.right - b.left;
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
