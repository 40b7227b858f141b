import { describe, expect, test } from "vitest";
import { parseLength, ratio, tape, type Rounding } from "../../../src/core/length";

const inches = (text: string, precision = 16, rounding: Rounding = "nearest") =>
  tape(parseLength(text, "in"), precision, rounding, "in");

describe("tape(length, precision, rounding, unit)", () => {
  test.each([
    ["23 7/16", `23 7/16"`],
    ["3/4", `3/4"`],
    ["-1 1/2", `-1 1/2"`],
    ["0", `0"`],
    ["5 8/16", `5 1/2"`],
    ["6", `6"`],
    ["1/32", `1/16"`],
    ["-1/32", `-1/16"`],
    ["31/32", `1"`],
    ["-1/100", `0"`],
  ])("%s in reads %s", (text, expected) => expect(inches(text)).toBe(expected));

  test("`down` goes toward zero and `up` away from it, on both sides of zero", () => {
    expect([inches("9 1/24", 16, "down"), inches("9 1/24", 16, "up")]).toEqual([`9"`, `9 1/16"`]);
    expect([inches("-9 1/24", 16, "down"), inches("-9 1/24", 16, "up")]).toEqual([`-9"`, `-9 1/16"`]);
    expect([inches("9 1/16", 16, "down"), inches("9 1/16", 16, "up")]).toEqual([`9 1/16"`, `9 1/16"`]);
  });

  test("in millimeters the precision is the number of decimals, all of them shown", () => {
    const length = ratio(11907, 20);
    expect([0, 1, 2].map((places) => tape(length, places, "nearest", "mm"))).toEqual([
      "595 mm",
      "595.4 mm",
      "595.35 mm",
    ]);
    expect(tape(ratio(595), 2, "nearest", "mm")).toBe("595.00 mm");
    expect(tape(ratio(1, 2), 0, "nearest", "mm")).toBe("1 mm");
    expect(tape(ratio(-1, 20), 1, "nearest", "mm")).toBe("-0.1 mm");
    expect(tape(ratio(1, 200), 2, "down", "mm")).toBe("0.00 mm");
  });
});
