import { describe, expect, test } from "vitest";
import { ratio, toDouble } from "../../../src/core/length";
import { rounded } from "../../../src/core/money";

describe("rounded(amount, decimals)", () => {
  test.each([
    [105, 1000, 2, 0.11],
    [104_999_999, 1_000_000_000, 2, 0.1],
    [1, 2, 0, 1],
    [5, 2, 0, 3],
    [1_2345, 10_000, 3, 1.235],
    [1, 3, 4, 0.3333],
    [0, 1, 2, 0],
  ])("%s/%s to %s decimals is %s", (n, d, decimals, expected) => {
    expect(toDouble(rounded(ratio(n, d), decimals))).toBe(expected);
  });

  test("a discount is rounded as the amount that it takes back", () => {
    expect(toDouble(rounded(ratio(-105, 1000), 2))).toBe(-0.11);
  });
});
