import { expect, test } from "vitest";
import { groovePasses, MOST_PASSES } from "../../../src/core/drawer";
import { keyOf, ratio, type Fault } from "../../../src/core/length";

const fences = (width: number, kerf: number) =>
  groovePasses(ratio(width, 64), ratio(kerf, 64), ratio(0), ratio(1)).map((pass) => keyOf(pass.fence));

test("groovePasses takes as few passes as leave no ridge: ⌈width / kerf⌉", () => {
  expect(fences(8, 8)).toEqual(["0"]);
  expect(fences(9, 8)).toEqual(["0", "1/64"]);
  expect(fences(16, 8)).toEqual(["0", "1/8"]);
  expect(fences(17, 8)).toEqual(["0", "9/128", "9/64"]);
});

test("groovePasses allows as many passes as it says, and not one more", () => {
  expect(fences(MOST_PASSES, 1)).toHaveLength(MOST_PASSES);
  expect(() => fences(MOST_PASSES + 1, 1)).toThrow(expect.objectContaining({ code: "groove.tooManyPasses" }) as Fault);
});
