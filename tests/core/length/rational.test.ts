import { expect, test } from "vitest";
import { equal, ratio, roundDown, wholePart } from "../../../src/core/length";

test("wholePart(a) is the greatest whole number not above a, on both sides of zero", () => {
  expect([ratio(7, 2), ratio(-7, 2), ratio(-4), ratio(0)].map(wholePart)).toEqual([3n, -4n, -4n, 0n]);
});

test("roundDown(a, step) is the greatest multiple of step not above a; step 0 leaves a as it is", () => {
  expect(equal(roundDown(ratio(123, 16), ratio(1, 4)), ratio(30, 4))).toBe(true);
  expect(equal(roundDown(ratio(123, 16), ratio(0)), ratio(123, 16))).toBe(true);
  expect(equal(roundDown(ratio(-1, 3), ratio(1, 4)), ratio(-1, 2))).toBe(true);
});
