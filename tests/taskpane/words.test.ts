import { describe, expect, test } from "vitest";
import { signature } from "../../src/taskpane/reference";
import { resultCells } from "../../src/taskpane/result-text";
import { GROUPS } from "./page";

describe("signature(entry)", () => {
  test("has arguments that may be left out in brackets", () => {
    expect(signature(GROUPS[0]!.functions[0]!)).toBe("DRAWER.LENGTH(value, [unit])");
  });
});

describe("resultCells(constant)", () => {
  test.each([
    ["23", [["23"]]],
    ['"23 7/16"""', [['23 7/16"']]],
    ["{5.5;10.9375}", [["5.5"], ["10.9375"]]],
    [
      '{"Pass","Fence, near";1,-0.375}',
      [
        ["Pass", "Fence, near"],
        ["1", "-0.375"],
      ],
    ],
    ['{"a ""b""; c"}', [['a "b"; c']]],
    ["#N/A", [["#N/A"]]],
  ])("reads %s", (constant, cells) => {
    expect(resultCells(constant)).toEqual(cells);
  });
});
