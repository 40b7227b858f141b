import { describe, expect, test } from "vitest";
import { ratio } from "../../../src/core/length";
import { offcuts, solve, type Part, type Problem } from "../../../src/core/sheets";
import { rowsOf } from "../../../src/core/sheets/problem";

const part = (length: number, width: number, quantity: number, more: Partial<Part> = {}): Part => ({
  name: `${length} × ${width}`,
  quantity,
  length: ratio(length),
  width: ratio(width),
  grain: "length",
  ...more,
});
const on = (parts: Part[], kerf = ratio(0)): Problem => ({
  parts,
  stock: [{ name: "sheet", length: ratio(96), width: ratio(48) }],
  kerf,
  trim: ratio(0),
});
/** The area of the largest offcut, in square inches. */
const largest = (problem: Problem): number =>
  Math.max(
    ...offcuts(solve(problem, "quick")).map(({ length, width }) => Number(length.valueOf()) * Number(width.valueOf())),
  );

describe("of answers with equal sheets, the one with the larger single offcut", () => {
  test("four parts of 24 × 24 stand two above two, and half the sheet stays whole", () => {
    expect(largest(on([part(24, 24, 4)]))).toBe(48 * 48);
  });

  test("two rows of 28, 28 and 24 crowd against one end", () => {
    expect(largest(on([part(28, 24, 2), part(24, 24, 2), part(28, 24, 2)]))).toBe((96 - 80) * 48);
  });

  test("a kerf is taken from the offcut, and from nothing else", () => {
    expect(largest(on([part(24, 20, 2)], ratio(1, 8)))).toBe((96 - 24.125) * 48);
  });

  test("one part too many lies against an edge of a sheet of its own", () => {
    expect(largest(on([part(48, 48, 2), part(10, 10, 1)]))).toBe(86 * 48);
  });

  test("what an emptier sheet holds goes into the rests of the others where it can", () => {
    // Two sheets at least: 60 × 48 leaves 36 × 48, which takes a 30 × 40; the other sheet keeps the second 60 × 48 alone.
    expect(largest(on([part(60, 48, 2), part(30, 40, 1)]))).toBe(36 * 48);
  });
});

describe("grain groups of a job made more than once", () => {
  const group = (quantity: number) =>
    [10, 12, 9].map((length) => part(length, 20, quantity, { grainGroup: "A", name: `front ${length}` }));

  test("make a row for each time", () => {
    expect(rowsOf(group(4), "A")).toBe(4);
    expect(rowsOf([...group(4).slice(1), part(8, 20, 6, { grainGroup: "A" })], "A")).toBe(2);
  });

  test("four times three fronts, too long for one row, are cut as four rows", () => {
    const solution = solve(on(group(4)), "quick");
    expect(solution.sheets).toHaveLength(1);
  });
});
