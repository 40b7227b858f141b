import { describe, expect, test } from "vitest";
import { compare, keyOf, ratio, type Fault } from "../../../src/core/length";
import { flaws, placements, solve, type Part, type Problem } from "../../../src/core/sheets";

const part = (name: string, length: number, width: number, more: Partial<Part> = {}): Part => ({
  name,
  quantity: 1,
  length: ratio(length, 16),
  width: ratio(width, 16),
  grain: "length",
  ...more,
});
const on = (parts: Part[], more: Partial<Problem> = {}): Problem => ({
  parts,
  stock: [{ name: "sheet", length: ratio(96), width: ratio(48) }],
  kerf: ratio(1, 8),
  trim: ratio(0),
  ...more,
});
const IN = 16;

describe("solve(problem, effort)", () => {
  test("a part as large as the trimmed sheet fits, a hair larger is refused by name", () => {
    const trim = ratio(1, 2);
    expect(solve(on([part("Top", 95 * IN, 47 * IN)], { trim }), "quick").sheets).toHaveLength(1);
    const refused = expect.objectContaining({
      code: "sheets.partTooLarge",
      data: expect.objectContaining({ part: "Top" }),
    }) as Fault;
    expect(() => solve(on([part("Top", 95 * IN + 1, 47 * IN)], { trim }), "quick")).toThrow(refused);
    expect(() => solve(on([part("Top", 95 * IN, 47 * IN + 1)], { trim }), "quick")).toThrow(refused);
  });

  test("parts of a grain group lie in one row, in their order", () => {
    const fronts = [5, 9, 7].map((height, i) => part(`F${i + 1}`, height * IN, 19 * IN, { grainGroup: "A" }));
    const row = placements(solve(on([part("Side", 22 * IN, 8 * IN, { quantity: 6 }), ...fronts]), "standard")).filter(
      ({ part: p }) => p > 0,
    );
    const inOrder = [...row].sort((a, b) => compare(a.fromLeft, b.fromLeft));
    expect(inOrder.map(({ part: p }) => p)).toEqual([1, 2, 3]);
    expect(new Set(row.map(({ sheet, fromBottom }) => `${sheet} ${keyOf(fromBottom)}`)).size).toBe(1);
  });

  test("equal parts in numbers are all cut", () => {
    const solution = solve(on([part("Side", 22 * IN, 7.5 * IN, { quantity: 40 })]), "standard");
    expect(placements(solution)).toHaveLength(40);
    expect(flaws(solution)).toEqual([]);
  });

  test("finds the one sheet that five parts fill, whichever way round those that may turn are written", () => {
    // By hand, with kerf: 2 × 7 stands at the left, 2 1/8; of the 10 beside it 8 × 3, 8 × 1 and, side by side,
    // 7 × 2 and 2 × 3 lie one above another: 3 1/8 + 1 1/8 + 3 = 7 1/4 of 8.
    const five = (over: boolean): Part[] => [
      part("A", 2 * IN, 7 * IN),
      part("B", 7 * IN, 2 * IN),
      ...[3, 1].map((narrow) => {
        const [length, width] = over ? [8, narrow] : [narrow, 8];
        return part(`C${narrow}`, length * IN, width * IN, { grain: "any" });
      }),
      part("D", 2 * IN, 3 * IN),
    ];
    const stock = [{ name: "small", length: ratio(12), width: ratio(8) }];
    for (const over of [true, false]) {
      for (const effort of ["standard", "thorough"] as const) {
        expect(solve(on(five(over), { stock }), effort).sheets, `${effort}, ${over}`).toHaveLength(1);
      }
    }
  });
});
