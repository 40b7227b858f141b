import { describe, expect, test } from "vitest";
import { FRONTHEIGHT } from "../../src/functions";
import { expectValueError } from "../cell";

describe("FRONTHEIGHT(face_height, count, gap, top_reveal, bottom_reveal, unit)", () => {
  test("times count plus gaps and reveals is the face", () => {
    expect(FRONTHEIGHT("27 5/8", 3)).toBe(9.125);
    expect(FRONTHEIGHT(26, 4, 0.25, 0.5, 0.25)).toBe(6.125);
    expect(FRONTHEIGHT(700, 3, null, null, null, "mm" as never)).toBe(231.33333333333334);
    expect(FRONTHEIGHT(10, "1")).toBe(10);
  });

  test("a negative reveal makes the fronts run past the face", () => {
    expect(FRONTHEIGHT(10, 1, "none", "-1/2", "-1/4")).toBe(10.75);
  });

  test("refuses gaps that eat the face", () => {
    expectValueError(
      () => FRONTHEIGHT(12, 97),
      "A face of 12 in has no room for 97 fronts: gaps of 1/8 in take it all.",
    );
    expectValueError(
      () => FRONTHEIGHT(10, 2, 1, 5, 4),
      "A face of 10 in has no room for 2 fronts: gaps of 1 in and a reveal of 5 in and a reveal of 4 in take it all.",
    );
  });

  test.each([
    [10_000, "10000"],
    ["0", `"0"`],
    [-1, "-1"],
    [2.5, "2.5"],
    ["2 1/2", '"2 1/2"'],
  ])("refuses %j fronts", (count, quoted) => {
    expectValueError(() => FRONTHEIGHT(28, count), `count is ${quoted}. It must be a whole number from 1 to 100.`);
  });

  test("asks for a count that is blank, and for a number where there is none", () => {
    expectValueError(() => FRONTHEIGHT(28, null), "count is blank. It needs a whole number from 1 to 100.");
    expectValueError(() => FRONTHEIGHT(28, "three"), `count is "three". It must be a whole number from 1 to 100.`);
    expectValueError(() => FRONTHEIGHT(28, true), "count is TRUE. It must be a whole number from 1 to 100.");
  });
});
