import type { NodeOf } from "../../formula/nodes";
import type { Evaluator } from "../kinds";
import { isMatrix, type Scope, type Shown, type Value } from "../values";
import type { Followed } from "./followed";

/** Functions that call a LAMBDA once for each cell of their result, row after row. */
export const EACH = new Set(["MAP", "BYROW", "BYCOL", "MAKEARRAY", "REDUCE"]);

/** What such a function gives, with the formats of each call; REDUCE gives its last call's. */
export function callWithEach(
  results: Followed,
  evaluator: Evaluator,
  { name, args }: NodeOf<"call">,
  scope: Scope,
): Shown {
  const calls: Shown[] = [];
  const invoke = (callee: Value, given: Value[]): Value => {
    const shown = results.invoke(
      callee,
      given.map((value) => ({ value })),
    );
    calls.push(shown);
    return shown.value;
  };
  const listening = Object.assign(Object.create(evaluator) as Evaluator, { invoke });
  const value = listening.call(name, args, scope);
  if (name === "REDUCE") return calls.at(-1) ?? { value };
  if (!isMatrix(value) || calls.length !== value.length * value[0]!.length) return { value };
  const formats = calls.map((shown) => results.formats(shown)?.[0]?.[0]);
  if (formats.every((format) => format === undefined)) return { value };
  const width = value[0]!.length;
  return { value, formats: value.map((_, y) => formats.slice(y * width, (y + 1) * width)) };
}
