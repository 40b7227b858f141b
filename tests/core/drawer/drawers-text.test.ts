import { describe, expect, test } from "vitest";
import { readDrawers, splitList } from "../../../src/core/drawer";
import { ratio, writeLength, type Fault } from "../../../src/core/length";

const read = (text: string) =>
  readDrawers([text], "in").map((asked) =>
    "fixed" in asked
      ? writeLength(asked.fixed, "in")
      : `${writeLength(asked.parts, "in").replace(" in", "")} of the rest`,
  );

describe("readDrawers(cells, unit)", () => {
  test.each([
    ["2", ["1 of the rest", "1 of the rest"]],
    ['3"', ["3 in"]],
    ["3 1/2", ["3 1/2 in"]],
    ["5 1/2; 1 part; 2 parts", ["5 1/2 in", "1 of the rest", "2 of the rest"]],
    ["140 mm;1.5 Parts\n½part", ["5 65/127 in", "1 1/2 of the rest", "1/2 of the rest"]],
    ["3;", ["1 of the rest", "1 of the rest", "1 of the rest"]],
    ["3; 3", ["3 in", "3 in"]],
  ])("reads %j", (text, expected) => expect(read(text)).toEqual(expected));

  test("names the place of what it cannot read, counted without the empty items", () => {
    const fault = expect.objectContaining({ code: "drawers.unreadable", data: { text: "tall", place: 2 } }) as Fault;
    expect(() => readDrawers(["5;;", " tall ; 1 part"], "in")).toThrow(fault);
    expect(() => readDrawers(["1 part; part"], "in")).toThrow(
      expect.objectContaining({ data: { text: "part", place: 2 } }) as Fault,
    );
  });

  test("a number among several is a length", () => {
    expect(readDrawers([ratio(5), ratio(6)], "in")).toEqual([{ fixed: ratio(5) }, { fixed: ratio(6) }]);
  });
});

test("splitList(text) takes semicolons and line breaks, and leaves empty items out", () => {
  expect(splitList(" 12;\r\n16 ; ;20;")).toEqual(["12", "16", "20"]);
});
