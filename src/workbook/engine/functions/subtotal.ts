import { nodesOf } from "../../formula/nodes";
import { spend } from "../budget";
import { toNumber } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { finite } from "../operators";
import { CellError, fail, isScalar, Reference, type Scalar, type SheetArea } from "../values";

/** SUBTOTAL leaves out rows that a filter hides (from 101 all hidden rows) and cells that are subtotals themselves. */
export const subtotal: Record<string, Ordinary> = {
  SUBTOTAL: {
    signature: "VR",
    call([kind, ...ranges], evaluator) {
      const number = toNumber(isScalar(kind) ? kind : null);
      if (number instanceof CellError) return number;
      const of = KINDS[(Math.trunc(number) % 100) - 1];
      if (!of || number > 111) return fail("#VALUE!");
      const values: Scalar[] = [];
      for (const range of ranges) {
        if (!(range instanceof Reference)) return fail("#VALUE!");
        for (const area of range.areas) visible(evaluator, area, number > 100, values);
      }
      const error = values.find((value) => value instanceof CellError);
      const counts = of === KINDS[1] || of === KINDS[2];
      return error && !counts
        ? error
        : of(
            values.filter((value) => typeof value === "number"),
            values.length,
          );
    },
  },
};

/** In the order of their numbers, 1 to 11: of the numbers, and of how many cells are filled. */
const KINDS: ((numbers: number[], filled: number) => Scalar)[] = [
  (numbers) => (numbers.length > 0 ? finite(sum(numbers) / numbers.length) : fail("#DIV/0!")),
  (numbers) => numbers.length,
  (_, filled) => filled,
  (numbers) => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0),
  (numbers) => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0),
  (numbers) => (numbers.length > 0 ? finite(numbers.reduce((a, b) => a * b, 1)) : 0),
  (numbers) => root(variance(numbers, 1)),
  (numbers) => root(variance(numbers, 0)),
  (numbers) => finite(sum(numbers)),
  (numbers) => variance(numbers, 1),
  (numbers) => variance(numbers, 0),
];

function visible(evaluator: Evaluator, whole: SheetArea, all: boolean, values: Scalar[]): void {
  const area = evaluator.cells.clip(whole);
  const sparse = evaluator.cells.sparseRows(area);
  const count = sparse ? sparse.length : area.bottom - area.top + 1;
  spend(2 * count * (area.right - area.left + 1));
  for (let i = 0; i < count; i++) {
    const row = sparse ? sparse[i]! : area.top + i;
    if (evaluator.cells.hidden(area.sheet, row, all)) continue;
    for (let column = area.left; column <= area.right; column++) {
      const value = evaluator.cells.read(area.sheet, row, column);
      if (value !== null && !isSubtotal(evaluator, area.sheet, row, column)) values.push(value);
    }
  }
}

function isSubtotal(evaluator: Evaluator, sheet: number, row: number, column: number): boolean {
  const formula = evaluator.cells.formula(sheet, row, column);
  return formula !== undefined && nodesOf(formula).some((node) => node.kind === "call" && node.name === "SUBTOTAL");
}

function sum(numbers: number[]): number {
  return numbers.reduce((a, b) => a + b, 0);
}

function variance(numbers: number[], less: number): Scalar {
  if (numbers.length <= less) return fail("#DIV/0!");
  const mean = sum(numbers) / numbers.length;
  return finite(sum(numbers.map((number) => (number - mean) ** 2)) / (numbers.length - less));
}

function root(value: Scalar): Scalar {
  return typeof value === "number" ? Math.sqrt(value) : value;
}
