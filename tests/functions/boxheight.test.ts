import { describe, expect, test } from "vitest";
import { BOXHEIGHT } from "../../src/functions";
import { expectValueError } from "../cell";

describe("BOXHEIGHT(space_height, space_below, space_above, step, unit)", () => {
  test("is the space less what stays free below and above", () => {
    expect(BOXHEIGHT("8 7/16")).toBe(7.6875);
    expect(BOXHEIGHT(8, "0", "none")).toBe(8);
    expect(BOXHEIGHT(170, null, null, null, "mm" as never)).toBe(152);
  });

  test("is rounded down to a multiple of the step", () => {
    expect(BOXHEIGHT("8 7/16", "1/2", "1/4", "1/4")).toBe(7.5);
    expect(BOXHEIGHT(8.25, 0.5, 0.25, 0.25)).toBe(7.5);
    expect(BOXHEIGHT(170, 12, 6, 5, "mm" as never)).toBe(150);
  });

  test("refuses a space that leaves no box, or less than one step", () => {
    expectValueError(
      () => BOXHEIGHT(0.75),
      "space_height is 3/4 in, of which 1/2 in below and 1/4 in above the box leave nothing.",
    );
    expectValueError(
      () => BOXHEIGHT(1.5, 0.5, 0.25, 1),
      "3/4 in of space_height is left for the box, which is less than one step of 1 in.",
    );
    expectValueError(() => BOXHEIGHT(8, 0.5, 0.25, -1), "step is -1 in. It must be 0 or more.");
  });
});
