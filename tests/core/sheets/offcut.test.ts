import { describe, expect, test } from "vitest";
import { ratio, toDouble } from "../../../src/core/length";
import { offcuts, solve, type Part, type Problem } from "../../../src/core/sheets";
import { gatherOffcut } from "../../../src/core/sheets/algorithms/offcut";
import { countsOn } from "../../../src/core/sheets/algorithms/patterns";
import { exact } from "../../../src/core/sheets/exact";
import { weightOf, type Block, type DraftSheet } from "../../../src/core/sheets/model";
import { rowsOf } from "../../../src/core/sheets/problem";
import { reduce } from "../../../src/core/sheets/reduce";
import { onSheet } from "../../../src/core/sheets/tighten";

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
  Math.max(...offcuts(solve(problem, "quick")).map(({ length, width }) => toDouble(length) * toDouble(width)));

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

describe("gatherOffcut(model, draft, steps)", () => {
  test("leaves out a sheet of which all pieces find room on another", () => {
    const asked = on([part(60, 48, 1), part(30, 40, 1)]);
    const { model } = reduce(asked, exact(asked));
    const [large, small] = model.kinds.map(({ w, h }, kind) => ({ w, h, kind, turned: false }));
    const alone = (block: Block): DraftSheet => ({ size: 0, root: onSheet(block, model.sizes[0]!) });
    const sheets = [alone(large!), alone(small!)];
    const draft = { weight: weightOf(model, sheets), waiting: 0, sheets };
    const gathered = gatherOffcut(model, draft, 200);
    expect(gathered.sheets).toHaveLength(1);
    expect(gathered.weight).toBe(model.sizes[0]!.weight);
    expect([...countsOn(model, gathered.sheets[0]!)]).toEqual([1, 1]);
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
