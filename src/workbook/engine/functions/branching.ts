import type { Node } from "../../formula/nodes";
import { make } from "../budget";
import { toBoolean, toNumber } from "../coercion";
import type { Evaluator, Special } from "../kinds";
import { broadcast, compare } from "../operators";
import { CellError, fail, isMatrix, type Matrix, type Scalar, type Scope, type Value } from "../values";

/** Functions that work out only the argument that they choose. */
export const branching: Record<string, Special> = {
  IF(evaluator, args, scope) {
    const condition = evaluator.operand(args[0]!, scope);
    const yes = () => (args[1] ? (evaluator.evaluate(args[1], scope) ?? 0) : true);
    const no = () => (args[2] ? (evaluator.evaluate(args[2], scope) ?? 0) : false);
    if (isMatrix(condition)) return chooseEach(evaluator, condition, yes, no);
    const truth = toBoolean(condition);
    return truth instanceof CellError ? truth : truth ? yes() : no();
  },

  IFERROR: (evaluator, args, scope) => replaceErrors(evaluator, args, scope, () => true),

  IFNA: (evaluator, args, scope) => replaceErrors(evaluator, args, scope, (error) => error.code === "#N/A"),

  IFS(evaluator, args, scope) {
    for (let i = 0; i + 1 < args.length; i += 2) {
      const condition = evaluator.operand(args[i]!, scope);
      if (isMatrix(condition)) {
        const rest = () => branching.IFS!(evaluator, args.slice(i + 2), scope);
        return chooseEach(evaluator, condition, () => evaluator.evaluate(args[i + 1]!, scope), rest);
      }
      const truth = toBoolean(condition);
      if (truth instanceof CellError) return truth;
      if (truth) return evaluator.evaluate(args[i + 1]!, scope) ?? 0;
    }
    return fail("#N/A");
  },

  SWITCH(evaluator, args, scope) {
    const value = evaluator.operand(args[0]!, scope);
    if (isMatrix(value)) {
      return value.map((row) => row.map((item) => evaluator.single(choose(evaluator, item, args, scope), scope)));
    }
    return choose(evaluator, value, args, scope);
  },

  CHOOSE(evaluator, args, scope) {
    const chosen = evaluator.operand(args[0]!, scope);
    const pick = (item: Scalar): Value => {
      const number = toNumber(item);
      if (number instanceof CellError) return number;
      const arg = number >= 1 ? args[Math.floor(number)] : undefined;
      return arg ? (evaluator.evaluate(arg, scope) ?? 0) : fail("#VALUE!");
    };
    return isMatrix(chosen) ? chooseColumns(evaluator, chosen, pick) : pick(chosen);
  },
};

function choose(evaluator: Evaluator, value: Scalar, args: Node[], scope: Scope): Value {
  if (value instanceof CellError) return value;
  for (let i = 1; i + 1 < args.length; i += 2) {
    const candidate = evaluator.scalar(args[i]!, scope);
    if (candidate instanceof CellError) return candidate;
    if (typeof (candidate ?? value) === typeof (value ?? candidate) && compare(value, candidate) === 0) {
      return evaluator.evaluate(args[i + 1]!, scope) ?? 0;
    }
  }
  return args.length % 2 === 0 ? (evaluator.evaluate(args.at(-1)!, scope) ?? 0) : fail("#N/A");
}

function chooseEach(evaluator: Evaluator, condition: Matrix, yes: () => Value, no: () => Value): Value {
  return broadcast([condition, evaluator.contents(yes()), evaluator.contents(no())], ([test, a, b]) => {
    const truth = toBoolean(test!);
    return truth instanceof CellError ? truth : truth ? a! : b!;
  });
}

/** `CHOOSE({1,2},A1:A3,B1:B3)` sets its columns side by side. */
function chooseColumns(evaluator: Evaluator, chosen: Matrix, pick: (item: Scalar) => Value): Value {
  const picked = chosen.map((row) => row.map((item) => evaluator.contents(pick(item))));
  const rows = picked
    .flat()
    .reduce<number>((most, value) => Math.max(most, isMatrix(value) ? value.length : 1), chosen.length);
  make(rows, chosen[0]!.length);
  return Array.from({ length: rows }, (_, row) =>
    chosen[0]!.map((_, column) => {
      const value = picked[Math.min(row, picked.length - 1)]![column]!;
      if (!isMatrix(value)) return value;
      const line = value.length === 1 ? value[0]! : value[row];
      return line?.[Math.min(column, line.length - 1)] ?? (line ? null : fail("#N/A"));
    }),
  );
}

function replaceErrors(
  evaluator: Evaluator,
  args: Node[],
  scope: Scope,
  replaces: (error: CellError) => boolean,
): Value {
  const value = evaluator.operand(args[0]!, scope);
  const instead = () => (args[1] ? (evaluator.evaluate(args[1], scope) ?? 0) : 0);
  if (!isMatrix(value)) return value instanceof CellError && replaces(value) ? instead() : value;
  const faulty = value.some((row) => row.some((item) => item instanceof CellError && replaces(item)));
  if (!faulty) return value;
  const others = spread(evaluator.contents(instead()), value.length, value[0]!.length);
  return broadcast([value, others], ([item, other]) => (item instanceof CellError && replaces(item) ? other! : item!));
}

/** As many rows and columns at least, where it has more than one; what is missing is #N/A. */
function spread(value: Scalar | Matrix, rows: number, columns: number): Scalar | Matrix {
  if (!isMatrix(value)) return value;
  const height = value.length === 1 ? 1 : Math.max(rows, value.length);
  const width = value[0]!.length === 1 ? 1 : Math.max(columns, value[0]!.length);
  return Array.from({ length: height }, (_, row) =>
    Array.from({ length: width }, (_, column) => {
      const item = value[row]?.[column];
      return item === undefined ? fail("#N/A") : item;
    }),
  );
}
