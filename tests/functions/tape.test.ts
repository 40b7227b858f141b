import { describe, expect, test } from "vitest";
import { TAPE } from "../../src/functions";
import { expectValueError } from "../cell";

describe("TAPE(length, precision, rounding, unit)", () => {
  test("writes inches to the nearest sixteenth, and millimeters whole, where nothing else is said", () => {
    expect(TAPE(23.4375)).toBe(`23 7/16"`);
    expect(TAPE(9 + 1 / 24)).toBe(`9 1/16"`);
    expect(TAPE(-1.5)).toBe(`-1 1/2"`);
    expect(TAPE(0)).toBe(`0"`);
    expect(TAPE("none")).toBe(`0"`);
    expect(TAPE(595.4, null, null as never, "mm" as never)).toBe("595 mm");
  });

  test("takes the denominators of a tape, as number or text, and no others", () => {
    expect([2, 4, 8, 16, 32, "64"].map((precision) => TAPE(1 / 3, precision))).toEqual([
      `1/2"`,
      `1/4"`,
      `3/8"`,
      `5/16"`,
      `11/32"`,
      `21/64"`,
    ]);
    expectValueError(() => TAPE(1, 10), "precision is 10. It can be 2, 4, 8, 16, 32, 64.");
    expectValueError(() => TAPE(1, 3), "precision is 3. It can be 2, 4, 8, 16, 32, 64.");
    expect(TAPE("1 1/32", 0)).toBe(`1 1/16"`);
    expect(() => TAPE(46219)).toThrow(/may be a date/);
    expectValueError(() => TAPE(1, 16, "nearest" as never, "mm" as never), "precision is 16. It can be 0, 1, 2.");
    expectValueError(() => TAPE(1, true), "precision is TRUE. It can be 2, 4, 8, 16, 32, 64.");
  });

  test("converts a length with a mark to the unit of the text", () => {
    expect(TAPE("595 mm")).toBe(`23 7/16"`);
    expect(TAPE("23 7/16 in", 1, "up" as never, "mm" as never)).toBe("595.4 mm");
  });

  test("names words that it does not know", () => {
    expectValueError(() => TAPE(1, 16, "off" as never), `rounding is "off". It can be "nearest", "down", "up".`);
    expectValueError(() => TAPE(1, 16, "down" as never, "cm" as never), `unit is "cm". It can be "in", "mm".`);
  });
});
