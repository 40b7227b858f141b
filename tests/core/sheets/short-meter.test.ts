import { describe, expect, test } from "vitest";
import { ratio, toDouble } from "../../../src/core/length";
import { flaws, Meter, sawCuts, solve, type Part, type Problem, type Solution } from "../../../src/core/sheets";

/** In sixteenths of an inch. */
const job = (times: number, rows: readonly (readonly [number, number, number])[], sizes = 1): Problem => ({
  parts: rows.map(([length, width, quantity], i): Part => ({
    name: `${i + 1}`,
    quantity: times * quantity,
    length: ratio(length, 16),
    width: ratio(width, 16),
    grain: i % 2 === 0 ? "length" : "any",
  })),
  stock: [96, 60, 72].slice(0, sizes).map((length) => ({ name: `${length}`, length: ratio(length), width: ratio(48) })),
  kerf: ratio(1, 8),
  trim: ratio(0),
});
const area = ({ sheets, problem: { stock } }: Solution): number =>
  sheets.reduce((sum, sheet) => sum + toDouble(stock[sheet.stock]!.length) * toDouble(stock[sheet.stock]!.width), 0);

const SAFE = { length: ratio(0), width: ratio(0) };

const BENCH = [
  [560, 243, 2],
  [243, 194, 3],
  [468, 570, 1],
  [142, 652, 2],
  [611, 341, 1],
] as const;

describe("an answer within few steps", () => {
  test.each([0, 300, 1_000, 5_000, 30_000, 200_000])(
    "of %i steps can be cut, and says that it was cut short",
    (steps) => {
      const solution = solve(job(4, BENCH, 3), "standard", new Meter(steps));
      expect(flaws(solution)).toEqual([]);
      expect(area(solution)).toBeGreaterThanOrEqual(toDouble(solution.least.value));
      expect(solution.isShort).toBe(!solution.proven);
    },
  );
});

describe("the same job twice", () => {
  const JOB = [
    [67, 64, 1],
    [698, 691, 2],
    [587, 697, 1],
    [449, 405, 1],
    [397, 568, 3],
  ] as const;

  test("takes twice the sheets of one, and no more than twice its cuts", () => {
    const [once, twice] = [1, 2].map((times) => solve(job(times, JOB), "standard", new Meter(1_000_000)));
    expect(flaws(twice!)).toEqual([]);
    expect(twice!.sheets.length).toBe(2 * once!.sheets.length);
    const [cuts, both] = [once!, twice!].map((solution) => sawCuts(solution, SAFE).length);
    expect(both).toBeLessThanOrEqual(2 * cuts!);
  });
});
