import { describe, expect, test } from "vitest";
import { add, equal, fromDouble, ratio, terms, times, toDouble, writeLength } from "../../../src/core/length";

const read = (value: number) => writeLength(fromDouble(value), "in");

describe("fromDouble(value)", () => {
  test.each([
    [0.1, "1/10 in"],
    [9.041666666666666, "9 1/24 in"],
    [10.2 - 2.2, "8 in"],
    [0.1 + 0.2, "3/10 in"],
    [1 / 3, "1/3 in"],
    [386.6, "386 3/5 in"],
    [-0.375, "-3/8 in"],
    [-0, "0 in"],
    [5e-324, "0 in"],
    [9e-10, "0 in"],
    [23 + 7 / 16 + 5e-10, "23 7/16 in"],
    [1e12 + 0.5, "1000000000001 in"],
    [2 ** 60, "1152921504606846976 in"],
  ])("reads %d as the simplest fraction near it: %s", (value, expected) => expect(read(value)).toBe(expected));

  test("takes the smallest denominator within 1e-9, found here by trying them all", () => {
    for (const value of [Math.PI, Math.SQRT2, 17 / 97 + 3e-10, 0.123456, 55.000001, 1 / 127, 1234.5678]) {
      const tolerance = 1e-9 * Math.max(1, value);
      let q = 1;
      while (Math.abs(Math.round(value * q) / q - value) > tolerance) q++;
      expect(terms(fromDouble(value)).denominator, `${value}`).toBe(BigInt(q));
    }
  });

  test("=10.2-2.2 and a tenth taken ten times lose nothing", () => {
    expect(equal(times(10, fromDouble(0.1)), ratio(1))).toBe(true);
    expect(equal(add(fromDouble(10.2 - 2.2), fromDouble(2.2)), fromDouble(10.2))).toBe(true);
  });
});

describe("toDouble(length)", () => {
  test("gives the nearest double, ties to even, however long the terms", () => {
    expect(toDouble(ratio(1, 3))).toBe(1 / 3);
    expect(toDouble(ratio(10n ** 30n + 1n, 10n ** 30n))).toBe(1);
    expect(toDouble(ratio(2n ** 53n + 1n))).toBe(2 ** 53);
    expect(toDouble(ratio(2n ** 54n + 6n, 2n))).toBe(2 ** 53 + 4);
    expect(toDouble(ratio((2n ** 54n + 6n) * 10n ** 20n + 1n, 2n * 10n ** 20n))).toBe(2 ** 53 + 4);
    expect(toDouble(ratio((2n ** 54n + 2n) * 10n ** 20n + 1n, 2n * 10n ** 20n))).toBe(2 ** 53 + 2);
    expect(toDouble(ratio(-(10n ** 25n), 3n * 10n ** 25n))).toBe(-1 / 3);
  });

  test("never gives negative zero", () => expect(Object.is(toDouble(ratio(0)), 0)).toBe(true));
});
