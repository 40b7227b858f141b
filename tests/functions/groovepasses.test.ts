import { describe, expect, test } from "vitest";
import { GROOVEPASSES } from "../../src/functions";
import { expectValueError } from "../cell";

describe("GROOVEPASSES(groove_width, kerf, offset, depth, unit)", () => {
  test("a 1/2 in groove with a 1/8 in blade: four passes, fence at 1/4, 3/8, 1/2, 5/8", () => {
    expect(GROOVEPASSES(0.5, 0.125, 0.25, 0.25)).toEqual([
      ["Pass", "Fence", "Blade height"],
      [1, 0.25, 0.25],
      [2, 0.375, 0.25],
      [3, 0.5, 0.25],
      [4, 0.625, 0.25],
    ]);
  });

  test("a groove as wide as the kerf takes one pass at the offset", () => {
    expect(GROOVEPASSES("1/8", "1/8", 0.375, 0.25)).toEqual([
      ["Pass", "Fence", "Blade height"],
      [1, 0.375, 0.25],
    ]);
  });

  test("passes are even where the width is no multiple of the kerf, the last at the far cheek", () => {
    expect(
      GROOVEPASSES(12, 3.2, 10, 6, "mm" as never)
        .slice(1)
        .map((row) => row[1]),
    ).toEqual([10, 12.933333333333334, 15.866666666666667, 18.8]);
  });

  test("refuses a groove narrower than the kerf, and more than 100 passes", () => {
    expectValueError(
      () => GROOVEPASSES("3/32", "1/8", 0.25, 0.25),
      "groove_width is 3/32 in, narrower than the kerf, 1/8 in. This blade cannot cut it.",
    );
    expectValueError(
      () => GROOVEPASSES(20, 0.125, 0.25, 0.25),
      "A groove of 20 in with a kerf of 1/8 in takes 160 passes. At most 100 are allowed.",
    );
    expectValueError(() => GROOVEPASSES(0.25, "0", 0.25, 0.25), "kerf is 0 in. It must be more than 0.");
    expectValueError(() => GROOVEPASSES(0.25, 0.125, -0.25, 0.25), "offset is -1/4 in. It must be 0 or more.");
  });
});
