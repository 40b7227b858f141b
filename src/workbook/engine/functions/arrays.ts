import { toBoolean, toNumber } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { make } from "../budget";
import { finite } from "../operators";
import { CellError, fail, type Matrix, type Scalar, type Value } from "../values";
import { scalarOf } from "./reading";

/** Arrays cut, joined, turned and multiplied. */
export const arrays: Record<string, Ordinary> = {
  TAKE: cutting((length, count) => (count >= 0 ? [0, Math.min(count, length)] : [Math.max(0, length + count), length])),
  DROP: cutting((length, count) => (count >= 0 ? [count, length] : [0, length + count])),

  VSTACK: stack((matrices) => {
    const width = Math.max(...matrices.map((matrix) => matrix[0]!.length));
    return matrices.flatMap((matrix) => matrix.map((row) => padded(row, width)));
  }),
  HSTACK: stack((matrices) => {
    const height = Math.max(...matrices.map((matrix) => matrix.length));
    return transposed(matrices.flatMap((matrix) => transposed(matrix).map((column) => padded(column, height))));
  }),

  CHOOSEROWS: ofArray(([matrix, ...wanted]) => chosen(matrix!, wanted)),
  CHOOSECOLS: ofArray(([matrix, ...wanted]) => {
    const found = chosen(transposed(matrix!), wanted);
    return found instanceof CellError ? found : transposed(found);
  }),

  TOCOL: ofArray(([matrix, ignore, byColumn]) =>
    line(matrix!, ignore, byColumn, (items) => items.map((item) => [item])),
  ),
  TOROW: ofArray(([matrix, ignore, byColumn]) => line(matrix!, ignore, byColumn, (items) => [items])),

  WRAPROWS: ofArray(([matrix, width, filler]) => wrapped(matrix!, width, filler)),
  WRAPCOLS: ofArray(([matrix, height, filler]) => {
    const found = wrapped(matrix!, height, filler);
    return found instanceof CellError ? found : transposed(found);
  }),

  EXPAND: ofArray(([matrix, height, width, filler]) => {
    const [rows, columns] = [count(height, matrix!.length), count(width, matrix![0]!.length)];
    if (rows instanceof CellError) return rows;
    if (columns instanceof CellError) return columns;
    if (rows < matrix!.length || columns < matrix![0]!.length) return fail("#VALUE!");
    make(rows, columns);
    const fill = filler ? filler[0]![0]! : fail("#N/A");
    return filled(rows, columns, (row, column) => {
      const inside = row < matrix!.length && column < matrix![0]!.length;
      return inside ? matrix![row]![column]! : fill;
    });
  }),

  SEQUENCE: {
    signature: "V",
    call(args) {
      const numbers = [args[0], args[1] ?? 1, args[2] ?? 1, args[3] ?? 1].map((arg) => toNumber(scalarOf(arg)));
      const error = numbers.find((number) => number instanceof CellError);
      if (error) return error as CellError;
      const [rows, columns, start, step] = numbers as [number, number, number, number];
      const [height, width] = [Math.trunc(args[0] === undefined ? 1 : rows), Math.trunc(columns)];
      if (height < 0 || width < 0) return fail("#VALUE!");
      if (height === 0 || width === 0) return fail("#CALC!");
      make(height, width);
      return filled(height, width, (row, column) => finite(start + (row * width + column) * step));
    },
  },

  TRANSPOSE: ofArray(([matrix]) => transposed(matrix!)),

  FILTER: ofArray(([matrix, include, instead]) => {
    const across = include!.length === 1 && matrix!.length !== 1;
    const flags = across ? include![0]! : include!.map((row) => row[0]!);
    const lines = across ? transposed(matrix!) : matrix!;
    if (flags.length !== lines.length || (across ? include!.length : include![0]!.length) !== 1) return fail("#VALUE!");
    const keeps = flags.map((flag) => (typeof flag === "string" ? fail("#VALUE!") : toBoolean(flag)));
    const error = keeps.find((keep) => keep instanceof CellError);
    if (error) return error as CellError;
    const kept = lines.filter((_, i) => keeps[i]);
    if (kept.length === 0) return instead ?? fail("#CALC!");
    return across ? transposed(kept) : kept;
  }),

  MMULT: ofArray(([left, right]) => {
    if (!left || !right) return fail("#VALUE!");
    const all = [...left.flat(), ...right.flat()];
    const error = all.find((item) => item instanceof CellError);
    if (error) return error as CellError;
    if (left[0]!.length !== right.length || all.some((item) => typeof item !== "number")) return fail("#VALUE!");
    const product = filled(left.length, right[0]!.length, (row, column) =>
      finite(right.reduce((total, line, i) => total + (left[row]![i] as number) * (line[column] as number), 0)),
    );
    return product.flat().find((item) => item instanceof CellError) ?? product;
  }),

  MDETERM: ofArray(([matrix]) => {
    const all = matrix?.flat() ?? [];
    const error = all.find((item) => item instanceof CellError);
    if (error) return error;
    if (!matrix || matrix.length !== matrix[0]!.length || all.some((item) => typeof item !== "number"))
      return fail("#VALUE!");
    return finite(determinant(matrix as number[][]));
  }),

  MUNIT: {
    signature: "V",
    call([size]) {
      const number = toNumber(scalarOf(size));
      if (number instanceof CellError) return number;
      const length = Math.trunc(number);
      if (length < 1) return fail("#VALUE!");
      make(length, length);
      return filled(length, length, (row, column) => (row === column ? 1 : 0));
    },
  },
};

/** A function of arrays; an argument that was left out stays so, an error in the place of one is the result. */
function ofArray(of: (matrices: (Matrix | undefined)[]) => Matrix | Scalar): Ordinary {
  return {
    signature: "A",
    call(args, evaluator) {
      const matrices = args.map((arg) => (arg === undefined ? undefined : evaluator.matrix(arg)));
      const error = args.find((arg) => arg instanceof CellError);
      return error ? (error as CellError) : of(matrices);
    },
  };
}

function stack(of: (matrices: Matrix[]) => Matrix): Ordinary {
  return {
    signature: "A",
    call(args, evaluator) {
      const matrices = args.flatMap((arg) => (arg === undefined ? [] : [evaluator.matrix(arg)]));
      const rows = matrices.reduce((total, matrix) => total + matrix.length, 0);
      make(rows, Math.max(...matrices.map((matrix) => matrix[0]!.length)));
      return of(matrices);
    },
  };
}

function cutting(between: (length: number, count: number) => [from: number, to: number]): Ordinary {
  return {
    signature: "AVV",
    call([source, rows, columns], evaluator: Evaluator) {
      if (source instanceof CellError) return source;
      const matrix = evaluator.matrix(source);
      const vertical = part(matrix.length, rows, between);
      const horizontal = part(matrix[0]!.length, columns, between);
      if (vertical instanceof CellError) return vertical;
      if (horizontal instanceof CellError) return horizontal;
      const cut = matrix.slice(...vertical).map((row) => row.slice(...horizontal));
      return cut.length > 0 && cut[0]!.length > 0 ? cut : fail("#CALC!");
    },
  };
}

function part(
  length: number,
  wanted: Value,
  between: (length: number, count: number) => [number, number],
): [number, number] | CellError {
  if (wanted === undefined) return [0, length];
  const number = toNumber(scalarOf(wanted));
  if (number instanceof CellError) return number;
  const [from, to] = between(length, Math.trunc(number));
  return [from, Math.max(from, to)];
}

/** By elimination, the largest number of each column first. */
function determinant(matrix: number[][]): number {
  const rows = matrix.map((row) => row.slice());
  let product = 1;
  for (let column = 0; column < rows.length; column++) {
    const rest = rows.slice(column).map((row) => Math.abs(row[column]!));
    const pivot = column + rest.indexOf(Math.max(...rest));
    if (rows[pivot]![column] === 0) return 0;
    if (pivot !== column) {
      [rows[pivot], rows[column]] = [rows[column]!, rows[pivot]!];
      product = -product;
    }
    product *= rows[column]![column]!;
    for (let row = column + 1; row < rows.length; row++) {
      const factor = rows[row]![column]! / rows[column]![column]!;
      for (let i = column; i < rows.length; i++) rows[row]![i]! -= factor * rows[column]![i]!;
    }
  }
  return product;
}

function padded(items: Scalar[], length: number): Scalar[] {
  return [...items, ...Array.from({ length: length - items.length }, () => fail("#N/A"))];
}

function transposed(matrix: Matrix): Matrix {
  return matrix[0]!.map((_, column) => matrix.map((row) => row[column]!));
}

function chosen(matrix: Matrix, wanted: (Matrix | undefined)[]): Matrix | CellError {
  const found: Matrix = [];
  for (const item of wanted.flatMap((list) => (list ? list.flat() : [null]))) {
    const number = toNumber(item);
    if (number instanceof CellError) return number;
    const at = Math.trunc(number);
    const line = at > 0 ? matrix[at - 1] : matrix[matrix.length + at];
    if (at === 0 || !line) return fail("#VALUE!");
    found.push(line);
  }
  return found;
}

/** 1 leaves out blanks, 2 errors, 3 both. */
function line(
  matrix: Matrix,
  ignore: Matrix | undefined,
  byColumn: Matrix | undefined,
  of: (items: Scalar[]) => Matrix,
): Matrix | CellError {
  const mode = toNumber(ignore?.[0]?.[0] ?? 0);
  const down = toBoolean(byColumn?.[0]?.[0] ?? false);
  if (mode instanceof CellError) return mode;
  if (down instanceof CellError) return down;
  if (![0, 1, 2, 3].includes(Math.trunc(mode))) return fail("#VALUE!");
  const items = (down ? transposed(matrix) : matrix).flat().filter((item) => {
    if (item === null) return (Math.trunc(mode) & 1) === 0;
    return !(item instanceof CellError) || (Math.trunc(mode) & 2) === 0;
  });
  return items.length > 0 ? of(items) : fail("#CALC!");
}

function wrapped(matrix: Matrix, size: Matrix | undefined, filler: Matrix | undefined): Matrix | CellError {
  const width = count(size, 0);
  if (width instanceof CellError) return width;
  if (matrix.length > 1 && matrix[0]!.length > 1) return fail("#VALUE!");
  if (width < 1) return fail("#NUM!");
  const items = matrix.flat();
  const fill = filler ? filler[0]![0]! : fail("#N/A");
  if (width >= items.length) return [items];
  return filled(Math.ceil(items.length / width), width, (row, column) => {
    const at = row * width + column;
    return at < items.length ? items[at]! : fill;
  });
}

function count(size: Matrix | undefined, otherwise: number): number | CellError {
  if (!size) return otherwise;
  const number = toNumber(size[0]![0]!);
  return number instanceof CellError ? number : Math.trunc(number);
}

function filled(rows: number, columns: number, of: (row: number, column: number) => Scalar): Matrix {
  return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => of(row, column)));
}
