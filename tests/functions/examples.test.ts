import { expect, test } from "vitest";
import { functionFiles, functionReference } from "../../src/build";
import * as functions from "../../src/functions";
import { callOf, literal, matches } from "./literals";

const examples = functionReference(functionFiles("src/functions"))
  .flatMap((group) => group.functions)
  .flatMap(({ name, examples }) => examples.map((example) => ({ name, ...example })));

test.each(examples)("$formula gives $result, as its comment says", ({ name, formula, result }) => {
  const call = callOf(formula);
  expect(call.name).toBe(name);
  const value = (functions[name as keyof typeof functions] as (...args: unknown[]) => unknown)(...call.args);
  expect(matches(value, literal(result)), JSON.stringify(value)).toBe(true);
});
