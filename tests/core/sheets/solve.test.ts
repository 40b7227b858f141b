import { describe, expect, test } from "vitest";
import { compare, keyOf, ratio, subtract, toDouble, type Fault } from "../../../src/core/length";
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

describe("solve(problem, effort), where stock is of several sizes", () => {
  const SHEET = { name: "sheet", length: ratio(96), width: ratio(48) };
  const PARTS = [part("Side", 22 * IN, 8 * IN, { quantity: 7 }), part("Back", 40 * IN, 30 * IN, { quantity: 3 })];

  test("at equal prices the larger size, of which more is left", () => {
    const stock = [60, 96].map((length) => ({ ...SHEET, name: `${length}`, length: ratio(length), price: ratio(50) }));
    for (const order of [stock, [...stock].reverse()]) {
      const solution = solve(on(PARTS, { stock: order }), "quick");
      expect(flaws(solution)).toEqual([]);
      // Two sheets at least: one of 96 in holds two of the three Backs.
      expect(solution.sheets.map((sheet) => order[sheet.stock]!.name)).toEqual(["96", "96"]);
    }
  });

  test("stock that costs nothing: no cost at least, and as few sheets as of one that costs", () => {
    const free = [60, 96].map((length) => ({ ...SHEET, length: ratio(length), price: ratio(0) }));
    const solution = solve(on(PARTS, { stock: free }), "quick");
    expect(solution.least).toEqual({ measure: "cost", value: ratio(0) });
    expect(solution.sheets).toHaveLength(solve(on(PARTS, { stock: [SHEET] }), "quick").sheets.length);
  });

  test("two sizes without end and an offcut of one's own take no more than either size with it, or both without", () => {
    const offcut = { name: "offcut", length: ratio(44), width: ratio(32), available: 1, price: ratio(0) };
    const sizes = [96, 72].map((length) => ({ ...SHEET, length: ratio(length), price: ratio(length) }));
    const costs = [[...sizes, offcut], [sizes[0]!, offcut], [sizes[1]!, offcut], sizes].map((stock) => {
      const solution = solve(on(PARTS, { stock }), "quick");
      expect(flaws(solution)).toEqual([]);
      return solution.sheets.reduce((sum, sheet) => sum + toDouble(stock[sheet.stock]!.price!), 0);
    });
    expect(costs[0]).toBe(Math.min(...costs));
    expect(costs[0]).toBeLessThan(costs[3]!);
  });

  test("a few parts, of which one fills an offcut to its edges: that one is cut from it", () => {
    // Four of 3 × 2 lie on 5 × 5 round a middle of 1 × 1, but no edge-to-edge cut parts them.
    const four = [3, 3, 2, 2].map((length) => part("Lid", length * IN, (5 - length) * IN));
    const stock = [
      { name: "board", length: ratio(5), width: ratio(5) },
      { name: "offcut", length: ratio(6), width: ratio(4), available: 1 },
    ];
    const solution = solve(on([...four, part("Tray", 6 * IN, 4 * IN)], { stock, kerf: ratio(0) }), "quick");
    expect(flaws(solution)).toEqual([]);
    expect(solution.sheets.map((sheet) => sheet.stock)).toEqual([0, 0, 1]);
    expect([solution.proven, toDouble(solution.least.value)]).toEqual([true, 5 * 5 + 5 * 5 + 6 * 4]);
  });
});

describe("solve(problem, effort), of what is large or fine", () => {
  test("more than four hundred parts on one sheet", () => {
    // 4 in and the kerf go 23 times into 96 1/8 in, 2 1/4 in and the kerf 20 times into 48 1/8 in.
    const solution = solve(on([part("Tag", 4 * IN, 36, { quantity: 460 })]), "quick");
    expect(flaws(solution)).toEqual([]);
    expect(solution.sheets).toHaveLength(1);
  });

  test("sizes of a ten-thousandth of an inch need no more sheets than those of a sixteenth above them", () => {
    const parts = [part("Side", 22 * IN, 8 * IN, { quantity: 21 }), part("Back", 40 * IN, 30 * IN, { quantity: 9 })];
    const finer = parts.map((one) => ({ ...one, length: subtract(one.length, ratio(1, 10_000)) }));
    const [rough, fine] = [parts, finer].map((of) => solve(on(of), "quick"));
    expect(flaws(fine!)).toEqual([]);
    expect(fine!.sheets.length).toBeLessThanOrEqual(rough!.sheets.length);
    expect(fine!.sheets.length).toBeGreaterThanOrEqual(toDouble(fine!.least.value));
  });
});
