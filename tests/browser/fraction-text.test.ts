import fc from "fast-check";
import { expect, test } from "vitest";
import { fraction, fractionText } from "../../src/workbook/browser/fraction-text";

test.each([
  ["7/16", 0.4375],
  ["23 7/16", 23.4375],
  ["23-7/16", 23.4375],
  ["-   3/4", -0.75],
  [" 26  1/4\r\n", 26.25],
])("fraction(%j) is %d", (text, number) => {
  expect(fraction(text)).toBe(number);
});

test.each(["7", "7/0", "1/2/3", "5 1/2; 1 part", "=1/2", "7/16/26", ""])("fraction(%j) is none", (text) => {
  expect(fraction(text)).toBeUndefined();
});

test("fractionText gives no fraction that says anything but the number", () => {
  expect([0.1234567, Math.PI].map(fractionText)).toEqual([undefined, undefined]);
  expect([0, -0.75, 26.25, 3, 1 / 3].map(fractionText)).toEqual(["0", "-3/4", "26 1/4", "3", "1/3"]);
});

test("fraction ∘ fractionText is the identity", () => {
  fc.assert(
    fc.property(fc.integer({ min: -200, max: 200 }), fc.integer({ min: 1, max: 63 }), (whole, upper) => {
      const number = whole + upper / 64;
      const text = fractionText(number)!;
      expect(text.includes("/") ? fraction(text) : Number(text)).toBe(number);
    }),
  );
});
