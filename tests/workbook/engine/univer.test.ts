import { functionLookup, type BaseFunction } from "@univerjs/engine-formula";
import { expect, it } from "vitest";
import { callUniver } from "../../../src/workbook/engine/univer/adapter";
import { univerFunction } from "../../../src/workbook/engine/univer/library";
import type { Evaluator } from "../../../src/workbook/engine/kinds";
import { value } from "../support/sheet";

const evaluator = {} as Evaluator;

it("a function of the library that sorts its argument in place does not sort ours", () => {
  const [Sort, name] = functionLookup.find(([, name]) => name === "SORT") as unknown as [
    new (name: string) => BaseFunction,
    string,
  ];
  const matrix = [[3], [1], [2]];
  const sorted = () => callUniver(new Sort(name), [matrix], evaluator);
  const taken = () => univerFunction("TAKE")!.call([matrix, 2], evaluator, {} as never);
  expect(sorted()).toEqual([[1], [2], [3]]);
  expect(taken()).toEqual([[3], [1]]);
});

it.each(["DOLLAR", "GAMMA", "YIELD", "TO_DATE", "ISEMAIL", "OFFSET", "NOSUCH"])(
  "%s is not taken from the library",
  (name) => {
    expect(univerFunction(name)).toBeUndefined();
  },
);

it("a call with a number of arguments that the function does not take keeps its value", () => {
  expect(value("PMT(1)")).toBe("kept: calls PMT with 1 arguments");
});
