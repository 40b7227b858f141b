import { describe, expect, test } from "vitest";
import { Fault, keyOf, toDouble } from "../../../src/core/length";
import { readPercent, readPrice } from "../../../src/functions/cells/amount";

const code = (read: () => unknown): string | undefined => {
  try {
    read();
    return undefined;
  } catch (thrown) {
    return (thrown as Fault).code;
  }
};

describe("readPrice(typed)", () => {
  test("reads numbers to the millionth, so that binary dust is gone", () => {
    expect(keyOf(readPrice({ value: 10.2 - 2.2 }))).toBe("8");
    expect(keyOf(readPrice({ value: 1_234_567.89 }))).toBe("123456789/100");
    expect(keyOf(readPrice({ value: 0.0125 }))).toBe("1/80");
  });

  test("reads digits as text, and none as zero", () => {
    expect(["12.50", "12,5", " 7 ", "none"].map((value) => toDouble(readPrice({ value })))).toEqual([12.5, 12.5, 7, 0]);
  });

  test.each<[unknown, string, string?]>([
    ["$12", "number.wrongType"],
    [true, "number.wrongType"],
    [NaN, "number.wrongType"],
    ["1,250", "length.doubtfulComma"],
    [-1, "number.negative"],
    [1e12, "number.outOfRange"],
    [45000, "argument.date", "yyyy-mm-dd"],
    [46219, "price.mayBeDate"],
  ])("%s is refused: %s", (value, expected, format) => {
    expect(code(() => readPrice(format ? { value, format } : { value }))).toBe(expected);
  });

  test("a price as high as a date's number is read from a text, or with its cents", () => {
    expect(["46219", "46219.00", 46219.5].map((value) => toDouble(readPrice({ value })))).toEqual([
      46219, 46219, 46219.5,
    ]);
  });

  test("a discount may be below 0 where it is asked for", () => {
    expect(toDouble(readPrice({ value: -10 }, true))).toBe(-10);
  });
});

describe("readPercent(typed, most)", () => {
  test("a number is percent, and so is a text with the sign or without", () => {
    expect([7, "7", "7 %", "7%", "7.25 %"].map((value) => toDouble(readPercent({ value })))).toEqual([
      7, 7, 7, 7, 7.25,
    ]);
  });

  test("a cell that is known to show percent holds its hundredth", () => {
    expect(toDouble(readPercent({ value: 0.0725, format: "0.00%" }))).toBe(7.25);
  });

  test.each([
    [0.07, "percent.doubtful"],
    ["0.5", "percent.doubtful"],
    [-1, "number.negative"],
    [1001, "number.outOfRange"],
    ["seven", "number.wrongType"],
    ["%", "number.wrongType"],
  ])("%s is refused: %s", (value, expected) => expect(code(() => readPercent({ value }))).toBe(expected));
});
