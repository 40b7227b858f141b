import { toBoolean, toNumber } from "../coercion";
import { spend } from "../budget";
import type { Evaluator, Ordinary } from "../kinds";
import { finite } from "../operators";
import { CellError, fail, isMatrix, Lambda, Reference, type Scalar, type SheetArea, type Value } from "../values";

/** Sums and counts: of a range they take its numbers alone, of an argument typed in also texts and truth values. */
export const aggregates: Record<string, Ordinary> = {
  SUM: overNumbers((numbers) => finite(sum(numbers))),
  PRODUCT: overNumbers((numbers) => (numbers.length === 0 ? 0 : finite(numbers.reduce((a, b) => a * b, 1)))),
  AVERAGE: overNumbers((numbers) => (numbers.length === 0 ? fail("#DIV/0!") : finite(sum(numbers) / numbers.length))),
  MIN: overNumbers((numbers) => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0)),
  MAX: overNumbers((numbers) => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0)),
  SUMSQ: overNumbers((numbers) => finite(sum(numbers.map((number) => number * number)))),

  COUNT: over((args, evaluator) => {
    let count = 0;
    eachItem(args, evaluator, (value, typed) => {
      if (typeof value === "number") count++;
      else if (typed && (value === null || typeof value === "boolean")) count++;
      else if (typed && typeof value === "string" && typeof toNumber(value) === "number") count++;
    });
    return count;
  }),

  COUNTA: over((args, evaluator) => {
    let count = 0;
    eachItem(args, evaluator, (value, typed) => {
      if (typed || value !== null) count++;
    });
    return count;
  }),

  /** Counts by the range's whole size, so that a whole column's blanks count too. */
  COUNTBLANK: over((args, evaluator) => {
    let count = 0;
    for (const arg of args) {
      if (!(arg instanceof Reference)) return fail("#VALUE!");
      for (const area of arg.areas) {
        let filled = 0;
        evaluator.cells.each(area, (value) => {
          if (value !== null && value !== "") filled++;
        });
        count += (area.bottom - area.top + 1) * (area.right - area.left + 1) - filled;
      }
    }
    return count;
  }),

  AND: truths((values) => values.every(Boolean)),
  OR: truths((values) => values.some(Boolean)),
  XOR: truths((values) => values.filter(Boolean).length % 2 === 1),

  SUMPRODUCT: {
    signature: "A",
    call(args, evaluator) {
      const matrices = args.map((arg) => evaluator.matrix(arg));
      const [first] = matrices;
      if (!first || matrices.some((m) => m.length !== first.length || m[0]!.length !== first[0]!.length)) {
        return fail("#VALUE!");
      }
      let total = 0;
      spend(matrices.length * first.length * first[0]!.length);
      for (let row = 0; row < first.length; row++) {
        for (let column = 0; column < first[0]!.length; column++) {
          let product = 1;
          for (const matrix of matrices) {
            const value = matrix[row]![column]!;
            if (value instanceof CellError) return value;
            product *= typeof value === "number" ? value : 0;
          }
          total += product;
        }
      }
      return finite(total);
    },
  },
};

/** AVERAGEA and its like: texts count as 0, truth values as 1 and 0; what is typed in must be a number. */
export function overAll(of: (numbers: number[]) => Scalar): Ordinary {
  return over((args, evaluator) => {
    const numbers: number[] = [];
    let error: CellError | undefined;
    eachItem(args, evaluator, (value, typed) => {
      if (value === null && !typed) return;
      const number =
        typed || value instanceof CellError ? toNumber(value) : typeof value === "string" ? 0 : Number(value);
      if (number instanceof CellError) error ??= number;
      else numbers.push(number);
    });
    return error ?? of(numbers);
  });
}

function over(call: Ordinary["call"]): Ordinary {
  return {
    signature: "R",
    call(args, evaluator, scope) {
      const area = args.length === 1 ? loneArea(args[0]) : undefined;
      if (!area) return call(args, evaluator, scope);
      return evaluator.cells.once(area, call, () => call(args, evaluator, scope));
    },
  };
}

/** The one range that a reference is to. */
export function loneArea(value: Value): SheetArea | undefined {
  return value instanceof Reference && value.areas.length === 1 ? value.areas[0] : undefined;
}

export function overNumbers(of: (numbers: number[]) => Scalar): Ordinary {
  return over((args, evaluator) => {
    const numbers = numbersOf(args, evaluator);
    return numbers instanceof CellError ? numbers : of(numbers);
  });
}

function truths(of: (values: boolean[]) => boolean): Ordinary {
  return over((args, evaluator) => {
    const values: boolean[] = [];
    let error: CellError | undefined;
    eachItem(args, evaluator, (value, typed) => {
      if (value === null || value === "" || (typeof value === "string" && !typed)) return;
      const truth = toBoolean(value);
      if (truth instanceof CellError) error ??= truth;
      else values.push(truth);
    });
    if (error) return error;
    return values.length === 0 ? fail("#VALUE!") : of(values);
  });
}

/** The numbers that a sum takes, or the first error among its arguments. */
export function numbersOf(args: Value[], evaluator: Evaluator): number[] | CellError {
  const numbers: number[] = [];
  let error: CellError | undefined;
  eachItem(args, evaluator, (value, typed) => {
    if (typeof value === "number") numbers.push(value);
    else if (value instanceof CellError) error ??= value;
    else if (typed) {
      const number = toNumber(value);
      if (number instanceof CellError) error ??= number;
      else numbers.push(number);
    }
  });
  return error ?? numbers;
}

/** Goes through all arguments; `typed` is a value that stands in the formula itself. */
function eachItem(args: Value[], evaluator: Evaluator, visit: (value: Scalar, typed: boolean) => void): void {
  for (const arg of args) {
    if (arg instanceof Reference) {
      for (const area of arg.areas) evaluator.cells.each(area, (value) => visit(value, false));
    } else if (isMatrix(arg)) {
      spend(arg.length * arg[0]!.length);
      for (const row of arg) for (const value of row) visit(value, false);
    } else visit(arg instanceof Lambda ? fail("#CALC!") : (arg ?? null), true);
  }
}

export function sum(numbers: number[]): number {
  let total = 0;
  for (const number of numbers) total += number;
  return total;
}
