import type { NodeOf } from "../../formula/nodes";
import { toBoolean } from "../coercion";
import type { Evaluator } from "../kinds";
import {
  CellError,
  isMatrix,
  isScalar,
  type Formats,
  type Matrix,
  type Scalar,
  type Scope,
  type Shown,
} from "../values";
import { withEvaluate } from "./moved";
import type { Followed } from "./followed";

/** A call whose result's order hangs on the very values that it hands on, so that nothing may stand in for them. */
type RowCall = (results: Followed, evaluator: Evaluator, node: NodeOf<"call">, scope: Scope) => Shown;

export const UNIQUE_OR_SORTED: Record<string, RowCall> = {
  /** Each row takes its number along, in a column of its own. */
  SORT: (results, evaluator, node, scope) =>
    withFormats(results, evaluator, node, scope, 3, (lines, again) => {
      const numbered = again(lines.map((line, i) => [...line, i]));
      return numbered?.map((line) => line.at(-1) as number);
    }),

  /** Of rows that are alike the first stays. */
  UNIQUE: (results, evaluator, node, scope) =>
    withFormats(results, evaluator, node, scope, 1, (lines, _, chosen) => {
      const first = new Map<string, number>();
      lines.forEach((line, i) => first.has(keyOf(line)) || first.set(keyOf(line), i));
      return chosen.map((line) => first.get(keyOf(line)) ?? -1);
    }),
};

/**
 * @param across the argument that says whether columns are meant instead of rows
 * @param places where each row of the result stood before, by the source's rows and the call with others in their place
 */
function withFormats(
  results: Followed,
  evaluator: Evaluator,
  { name, args }: NodeOf<"call">,
  scope: Scope,
  across: number,
  places: (
    lines: Matrix,
    again: (lines: Matrix) => Matrix | undefined,
    chosen: Matrix,
  ) => readonly number[] | undefined,
): Shown {
  const source = args[0] && results.shown(args[0], scope);
  const call = (first: Shown["value"]): Shown["value"] =>
    withEvaluate(evaluator, (node, at) => (node === args[0] ? first : evaluator.evaluate(node, at))).call(
      name,
      args,
      scope,
    );
  const value = source ? call(source.value) : evaluator.call(name, args, scope);
  const formats = source && results.formats(source);
  if (!formats) return { value };
  const given = args[across] && evaluator.evaluate(args[across], scope);
  const turned =
    toBoolean(given === undefined ? false : isScalar(given) ? given : evaluator.single(given, scope)) === true;
  const turn = <T>(rows: readonly (readonly T[])[]): T[][] => (turned ? transposed(rows) : rows.map((row) => [...row]));
  const chosen = isMatrix(value) ? value : isScalar(value) ? [[value]] : [];
  const again = (lines: Matrix): Matrix | undefined => {
    const result = call(turn(lines));
    return isMatrix(result) ? turn(result) : undefined;
  };
  const lines = turn(formats);
  const from = places(turn(evaluator.matrix(source.value)), again, turn(chosen));
  return from ? { value, formats: turn(from.map((i) => lines[i] ?? [])) as Formats } : { value };
}

const transposed = <T>(rows: readonly (readonly T[])[]): T[][] =>
  (rows[0] ?? []).map((_, i) => rows.map((row) => row[i]!));

const keyOf = (line: readonly Scalar[]): string =>
  JSON.stringify(line.map((value) => (value instanceof CellError ? { error: value.code } : value)));
