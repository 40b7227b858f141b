import { toBoolean, toNumber } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { spend } from "../budget";
import { compare } from "../operators";
import { CellError, fail, isScalar, type Matrix, type Scalar, type Value } from "../values";

/** Sorting, and leaving out what repeats. Case does not count, blanks come last. */
export const ordering: Record<string, Ordinary> = {
  SORT: {
    signature: "A",
    call([source, indexes, orders, byColumn], evaluator) {
      const across = truth(byColumn);
      if (across instanceof CellError) return across;
      const lines = linesOf(evaluator.matrix(source), across);
      const keys = numbers(indexes, 1, evaluator);
      const ways = numbers(orders, 1, evaluator);
      const bad = keys.some((key) => !(key >= 1 && key <= lines[0]!.length));
      if (bad || !validWays(ways, keys.length)) return fail("#VALUE!");
      const columns = keys.map((key) => lines.map((line) => line[Math.floor(key) - 1]!));
      return linesOf(sorted(lines, columns, ways), across);
    },
  },

  SORTBY: {
    signature: "A",
    call([source, ...rest], evaluator) {
      const matrix = evaluator.matrix(source);
      const keys: Matrix[] = [];
      const ways: number[] = [];
      for (let i = 0; i < rest.length; i += 2) {
        keys.push(evaluator.matrix(rest[i]));
        ways.push(...numbers(rest[i + 1], 1, evaluator));
      }
      const across = keys[0]!.length === 1 && matrix.length !== 1;
      const lines = linesOf(matrix, across);
      const columns = keys.map((key) => (across ? key[0]! : key.map((row) => row[0]!)));
      const fits = columns.every((column) => column.length === lines.length);
      return fits && validWays(ways, keys.length) ? linesOf(sorted(lines, columns, ways), across) : fail("#VALUE!");
    },
  },

  UNIQUE: {
    signature: "A",
    call([source, byColumn, once], evaluator) {
      const across = truth(byColumn);
      const onlyOnce = truth(once);
      if (across instanceof CellError) return across;
      if (onlyOnce instanceof CellError) return onlyOnce;
      const found = new Set<unknown>();
      const repeated = new Set<unknown>();
      const firsts: Matrix = [];
      for (const line of linesOf(evaluator.matrix(source), across)) {
        spend(8 * line.length);
        const key = keyOf(line);
        const { size } = found;
        if (found.add(key).size > size) firsts.push(line);
        else repeated.add(key);
      }
      const chosen = onlyOnce ? firsts.filter((line) => !repeated.has(keyOf(line))) : firsts;
      return chosen.length > 0 ? linesOf(chosen, across) : fail("#CALC!");
    },
  },
};

function sorted(lines: Matrix, keys: Scalar[][], ways: number[]): Matrix {
  const order = lines.map((_, i) => i);
  spend(8 * lines.length * Math.ceil(Math.log2(lines.length + 1)));
  order.sort((a, b) => {
    for (let k = 0; k < keys.length; k++) {
      const difference = place(keys[k]![a]!, keys[k]![b]!, ways[k] ?? ways[0]!);
      if (difference !== 0) return difference;
    }
    return a - b;
  });
  return order.map((i) => lines[i]!);
}

function place(a: Scalar, b: Scalar, way: number): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  const [faultyA, faultyB] = [a instanceof CellError, b instanceof CellError];
  return (faultyA || faultyB ? Number(faultyA) - Number(faultyB) : compare(a, b)) * way;
}

function linesOf(matrix: Matrix, across: boolean): Matrix {
  return across ? matrix[0]!.map((_, column) => matrix.map((row) => row[column]!)) : matrix;
}

function numbers(value: Value, otherwise: number, evaluator: Evaluator): number[] {
  if (value === undefined) return [otherwise];
  return evaluator
    .matrix(value)
    .flat()
    .map((item) => {
      const number = toNumber(item);
      return typeof number === "number" ? number : NaN;
    });
}

function validWays(ways: number[], keys: number): boolean {
  return ways.every((way) => way === 1 || way === -1) && (ways.length === 1 || ways.length === keys);
}

function truth(value: Value): boolean | CellError {
  return toBoolean(isScalar(value) ? value : false);
}

/** What lines that are alike share alone. Most have one cell, which needs no text made of it. */
function keyOf(line: readonly Scalar[]): unknown {
  if (line.length > 1) return JSON.stringify(line.map(sameText));
  const [value = null] = line;
  // Errors' codes are in capitals, which no text has then.
  return value instanceof CellError ? value.code : typeof value === "string" ? value.toLowerCase() : value;
}

function sameText(value: Scalar): unknown {
  return typeof value === "string" ? value.toLowerCase() : value instanceof CellError ? { error: value.code } : value;
}
