import type { Node } from "../../formula/nodes";
import { toNumber } from "../coercion";
import { make, spend } from "../budget";
import type { Evaluator, Special } from "../kinds";
import { fail, Lambda, Reference, type Matrix, type Scalar, type Scope, type Value } from "../values";

/** LET, LAMBDA and the functions that call a LAMBDA for every item, row or column. */
export const lambdas: Record<string, Special> = {
  LET(evaluator, args, scope) {
    let inner = scope;
    for (let i = 0; i + 1 < args.length; i += 2) {
      const value = evaluator.evaluate(args[i + 1]!, inner);
      inner = { ...inner, variables: { name: parameter(args[i]!), value, outer: inner.variables } };
    }
    return evaluator.evaluate(args.at(-1)!, inner);
  },

  LAMBDA: (_, args, scope) => new Lambda(args.slice(0, -1).map(parameter), args.at(-1)!, scope),

  ISOMITTED: (evaluator, args, scope) => evaluator.evaluate(args[0]!, scope) === undefined,

  MAP(evaluator, args, scope) {
    const { callee, values } = calleeAndValues(evaluator, args, scope);
    const matrices = values.map((value) => evaluator.matrix(value));
    const rows = Math.max(...matrices.map((matrix) => matrix.length));
    const columns = Math.max(...matrices.map((matrix) => matrix[0]!.length));
    return build(rows, columns, (row, column) => {
      const items = matrices.map((matrix) => matrix[row]?.[column]);
      return items.includes(undefined) ? fail("#N/A") : one(evaluator, evaluator.invoke(callee, items), scope);
    });
  },

  BYROW(evaluator, args, scope) {
    const { callee, values } = calleeAndValues(evaluator, args, scope);
    return lines(evaluator, values[0]).map((line) => [one(evaluator, evaluator.invoke(callee, [line]), scope)]);
  },

  BYCOL(evaluator, args, scope) {
    const { callee, values } = calleeAndValues(evaluator, args, scope);
    return [columnsOf(evaluator, values[0]).map((line) => one(evaluator, evaluator.invoke(callee, [line]), scope))];
  },

  REDUCE(evaluator, args, scope) {
    const { callee, values } = calleeAndValues(evaluator, args, scope);
    let total = values[0];
    const source = evaluator.matrix(values[1]);
    spend(source.length * source[0]!.length);
    for (const item of source.flat()) total = evaluator.invoke(callee, [total, item]);
    return total;
  },

  SCAN(evaluator, args, scope) {
    const { callee, values } = calleeAndValues(evaluator, args, scope);
    let total: Value = values[0];
    const source = evaluator.matrix(values[1]);
    make(source.length, source[0]!.length);
    return source.map((row) =>
      row.map((item) => {
        total = total === undefined ? item : evaluator.invoke(callee, [total, item]);
        return one(evaluator, total, scope);
      }),
    );
  },

  MAKEARRAY(evaluator, args, scope) {
    const { callee, values } = calleeAndValues(evaluator, args, scope);
    const [rows, columns] = values.map((value) => toNumber(evaluator.single(value, scope)));
    if (typeof rows !== "number" || typeof columns !== "number" || rows < 1 || columns < 1) return fail("#VALUE!");
    return build(Math.floor(rows), Math.floor(columns), (row, column) =>
      one(evaluator, evaluator.invoke(callee, [row + 1, column + 1]), scope),
    );
  },
};

export function parameter(node: Node): string {
  if (node.kind === "name") return node.name.toLowerCase();
  throw new SyntaxError("A name is expected in LET or LAMBDA.");
}

function calleeAndValues(evaluator: Evaluator, args: Node[], scope: Scope): { callee: Value; values: Value[] } {
  const values = args.map((arg) => evaluator.evaluate(arg, { ...scope, arrays: true }));
  return { callee: values.pop(), values };
}

function one(evaluator: Evaluator, value: Value, scope: Scope): Scalar {
  const contents = evaluator.contents(value);
  if (!Array.isArray(contents)) return contents;
  return contents.length === 1 && contents[0]!.length === 1 ? evaluator.single(contents, scope) : fail("#CALC!");
}

function build(rows: number, columns: number, item: (row: number, column: number) => Scalar): Matrix {
  make(rows, columns);
  return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => item(row, column)));
}

/** Rows of a range stay ranges, so that ROW and SUBTOTAL work on them. */
function lines(evaluator: Evaluator, value: Value): Value[] {
  if (!(value instanceof Reference)) return evaluator.matrix(value).map((row) => [row]);
  const area = evaluator.cells.clip(value.areas[0]!);
  make(area.bottom - area.top + 1);
  return Array.from({ length: area.bottom - area.top + 1 }, (_, i) =>
    Reference.single(area.sheet, { ...area, top: area.top + i, bottom: area.top + i }),
  );
}

function columnsOf(evaluator: Evaluator, value: Value): Value[] {
  const matrix = evaluator.matrix(value);
  make(matrix.length, matrix[0]!.length);
  return matrix[0]!.map((_, column) => matrix.map((row) => [row[column]!]));
}
