import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compare, equal, multiply, ratio, root, toDouble } from "../../../src/core/length";

describe("root(square)", () => {
  test("is exact where the square is one of a fraction", () => {
    expect(equal(root(ratio(9, 4096)), ratio(3, 64))).toBe(true);
    expect(equal(root(ratio(36, 25)), ratio(6, 5))).toBe(true);
    expect(equal(root(ratio(0)), ratio(0))).toBe(true);
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 1, max: 9999 }), (n, d) => {
        const size = ratio(n, d);
        expect(equal(root(multiply(size, size)), size)).toBe(true);
      }),
    );
  });

  test("else lies just below, no further than a double can tell", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e9 }), fc.integer({ min: 1, max: 1e6 }), (n, d) => {
        const found = root(ratio(n, d));
        expect(compare(multiply(found, found), ratio(n, d))).toBeLessThanOrEqual(0);
        expect(Math.abs(toDouble(found) / Math.sqrt(n / d) - 1)).toBeLessThan(1e-14);
      }),
    );
  });
});
