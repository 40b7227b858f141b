import { describe, expect, test } from "vitest";
import { SLIDELENGTH } from "../../src/functions";
import { expectValueError, shown } from "../cell";

const mm = "mm" as never;

describe("SLIDELENGTH(inside_depth, rear_clearance, front_setback, lengths, unit)", () => {
  test("is the longest of 10, 12 … 28 in that leaves 1/2 in behind it (common practice)", () => {
    expect([10.5, 12, 12.5, 23.25, 28.5, 40].map((depth) => SLIDELENGTH(depth))).toEqual([10, 10, 12, 22, 28, 28]);
  });

  test("is the longest of 250, 300 … 700 mm that leaves 12 mm behind it", () => {
    expect([262, 311.9, 312, 525, 900].map((depth) => SLIDELENGTH(depth, null, null, undefined, mm))).toEqual([
      250, 250, 300, 500, 700,
    ]);
  });

  test("a slide set back behind an inset front has so much less room", () => {
    expect(SLIDELENGTH(525, 12, 19, undefined, mm)).toBe(450);
  });

  test("takes the lengths on sale from a range, blanks skipped, or from a text", () => {
    expect(
      SLIDELENGTH(23.25, 0.5, 0, [
        [12, 16],
        ["20 in", 0],
        ["", null],
      ]),
    ).toBe(20);
    expect(SLIDELENGTH(23.25, 0.5, 0, "12; 16;\n 20;" as never)).toBe(20);
    expect(SLIDELENGTH(23.25, 0.5, 0, [["500 mm"]])).toBe(19.68503937007874);
    expect(SLIDELENGTH(23.25, 0.5, 0, [[""]])).toBe(22);
    expect(SLIDELENGTH(23.25, 0.5, 0, 18 as never)).toBe(18);
  });

  test("is #N/A where none fits, with the room and the shortest slide", () => {
    expect(shown(() => SLIDELENGTH(10))).toBe(
      "#N/A No slide fits: an inside depth of 10 in leaves 9 1/2 in, and the shortest slide is 10 in.",
    );
    expect(shown(() => SLIDELENGTH(14, 0.5, 0, [[20, 16]]))).toBe(
      "#N/A No slide fits: an inside depth of 14 in leaves 13 1/2 in, and the shortest slide is 16 in.",
    );
  });

  test("names the item of the list that is no length", () => {
    expectValueError(
      () => SLIDELENGTH(20, 0.5, 0, "12; long" as never),
      `lengths, item 2 is "long", which is no length. Write a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
    expectValueError(
      () => SLIDELENGTH(20, 0.5, 0, [[12], [-14]]),
      "lengths, item 2 is -14 in. It must be more than 0.",
    );
    expectValueError(() => SLIDELENGTH(20, 0.5, 0, [[""], [0]]), "lengths holds no length: all its cells are blank.");
    expectValueError(() => SLIDELENGTH(20, 0.5, 0, ";" as never), "lengths holds no length: all its cells are blank.");
  });
});
