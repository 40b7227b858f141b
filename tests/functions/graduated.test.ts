import { describe, expect, test } from "vitest";
import { GRADUATED } from "../../src/functions";
import { expectValueError } from "../cell";

const heights = (...args: unknown[]) =>
  (GRADUATED as (...a: unknown[]) => number[][])(...args).map(([height]) => height);

describe("GRADUATED(face_height, count, rule, amount, gap, unit)", () => {
  test("arithmetic: each taller by a length, gaps and fronts filling the face", () => {
    expect(heights(28, 4, "arithmetic", "3/4", "1/8")).toEqual([5.78125, 6.53125, 7.28125, 8.03125]);
    expect(heights(28, 4, "arithmetic", "0", "none")).toEqual([7, 7, 7, 7]);
  });

  test("geometric: each taller by a factor", () => {
    expect(heights(26.84, 4, "geometric", 1.2, "0")).toEqual([5, 6, 7.2, 8.64]);
    expect(heights(26.84, 4, "Geometric", "6/5", "none")).toEqual([5, 6, 7.2, 8.64]);
  });

  test("equal, the default, needs no amount", () => {
    expect([heights("27 5/8", 3), heights("27 5/8", 3, "equal", "anything")]).toEqual([
      Array(3).fill(9.125),
      Array(3).fill(9.125),
    ]);
    expect(heights(706, 4, null, null, null, "mm")).toEqual([174.25, 174.25, 174.25, 174.25]);
  });

  test("asks for the amount that a rule needs", () => {
    expectValueError(
      () => heights(28, 4, "arithmetic"),
      "amount is blank. Arithmetic heights need the length that each front is taller by.",
    );
    expectValueError(
      () => heights(28, 4, "geometric", ""),
      "amount is blank. Geometric heights need the factor that each front is taller by, such as 1.2.",
    );
  });

  test("refuses steps and gaps that leave nothing for the top front", () => {
    expectValueError(
      () => heights(28, 4, "arithmetic", 5),
      "amount is 5 in. 4 fronts that grow by so much leave nothing for the top one in 28 in.",
    );
    expectValueError(() => heights(28, 4, "geometric", 0.5), "amount is 0.5. It must be from 1 to 10.");
    expectValueError(() => heights(28, 4, "arithmetic", -1), "amount is -1 in. It must be 0 or more.");
    expectValueError(
      () => heights(1, 10, "equal", null, 1),
      "A face of 1 in has no room for 10 fronts: gaps of 1 in take it all.",
    );
    expectValueError(() => heights(28, 4, "golden"), `rule is "golden". It can be "equal", "arithmetic", "geometric".`);
  });
});
