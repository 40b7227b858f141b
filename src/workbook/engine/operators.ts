import type { Operator } from "../formula/nodes";
import { LONGEST_TEXT, make, spend } from "./budget";
import { toNumber, toText } from "./coercion";
import { markCut, staysCut } from "./cut-short";
import { CellError, fail, type Matrix, type Scalar } from "./values";

/** Works out `left operator right`, cell by cell where either is an array. */
export function applyOperator(operator: Operator, left: Scalar | Matrix, right: Scalar | Matrix): Scalar | Matrix {
  if (!Array.isArray(left) && !Array.isArray(right)) return scalarOperator(operator, left, right);
  return broadcast([left, right], ([a, b]) => scalarOperator(operator, a!, b!));
}

/** The same for any number of values: single rows and columns repeat, what has no partner is #N/A. */
export function broadcast(values: (Scalar | Matrix)[], combine: (scalars: Scalar[]) => Scalar): Scalar | Matrix {
  if (!values.some(Array.isArray)) return combine(values as Scalar[]);
  const isCut = staysCut(values, combine);
  const rows = Math.max(...values.map((value) => (Array.isArray(value) ? value.length : 1)));
  const columns = Math.max(...values.map((value) => (Array.isArray(value) ? value[0]!.length : 1)));
  make(rows, columns);
  spend(rows * columns * (values.length - 1));
  const matrix = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const scalars = values.map((value) => at(value, row, column));
      return scalars.includes(undefined) ? fail("#N/A") : combine(scalars as Scalar[]);
    }),
  );
  return isCut ? markCut(matrix) : matrix;
}

function at(value: Scalar | Matrix, row: number, column: number): Scalar | undefined {
  if (!Array.isArray(value)) return value;
  const found = value.length === 1 ? value[0]! : value[row];
  return found && (found.length === 1 ? found[0] : found[column]);
}

function scalarOperator(operator: Operator, left: Scalar, right: Scalar): Scalar {
  if (left instanceof CellError) return left;
  if (right instanceof CellError) return right;
  if (operator === "&") {
    const text = `${toText(left) as string}${toText(right) as string}`;
    return text.length > LONGEST_TEXT ? fail("#VALUE!") : text;
  }
  if ("=<>".includes(operator[0]!)) return compareBy(operator, compare(left, right));
  const a = toNumber(left);
  const b = toNumber(right);
  if (a instanceof CellError) return a;
  if (b instanceof CellError) return b;
  return arithmetic(operator, a, b);
}

function arithmetic(operator: Operator, a: number, b: number): Scalar {
  switch (operator) {
    case "+":
      return finite(a + b);
    case "-":
      return finite(a - b);
    case "*":
      return finite(a * b);
    case "/":
      return b === 0 ? fail("#DIV/0!") : finite(a / b);
    default:
      if (a === 0 && b === 0) return fail("#NUM!");
      return a === 0 && b < 0 ? fail("#DIV/0!") : finite(a ** b);
  }
}

export function finite(value: number): Scalar {
  return Number.isFinite(value) ? value + 0 : fail("#NUM!");
}

function compareBy(operator: Operator, order: number): boolean {
  switch (operator) {
    case "=":
      return order === 0;
    case "<>":
      return order !== 0;
    case "<":
      return order < 0;
    case "<=":
      return order <= 0;
    case ">":
      return order > 0;
    default:
      return order >= 0;
  }
}

const collator = new Intl.Collator("en", { sensitivity: "accent" });

/** Numbers come before texts, texts before truth values; a blank is whatever its partner is. Case does not count. */
export function compare(left: Scalar, right: Scalar): number {
  const a = left ?? blankLike(right);
  const b = right ?? blankLike(left);
  if (typeof a === "number" && typeof b === "number") return compareNumbers(a, b);
  if (typeof a === "string" && typeof b === "string") return a === b ? 0 : collator.compare(a, b);
  return rank(a) - rank(b) || Number(a) - Number(b);
}

/** Two numbers are equal where their first fifteen digits are, as the spreadsheet program has it. */
function compareNumbers(a: number, b: number): number {
  if (a === b) return 0;
  const close = Math.abs(a - b) <= Math.abs(a) * 1e-13 && a.toPrecision(15) === b.toPrecision(15);
  return close ? 0 : a - b;
}

function blankLike(partner: Scalar): Scalar {
  return typeof partner === "string" ? "" : typeof partner === "boolean" ? false : 0;
}

function rank(value: Scalar): number {
  return typeof value === "number" ? 0 : typeof value === "string" ? 1 : 2;
}
