import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ratio, toDouble } from "../../src/core/length";
import { flaws, solve, stockUses, type Effort, type Problem, type Solution } from "../../src/core/sheets";
import { leastSheets, type Plain } from "../core/sheets/exhaustive";

const [LENGTH, WIDTH] = [12, 8];
const plain: fc.Arbitrary<Plain> = fc.record({
  length: fc.integer({ min: 1, max: 8 }),
  width: fc.integer({ min: 1, max: 8 }),
  turns: fc.boolean(),
});
const few = fc.array(plain, { minLength: 1, maxLength: 5 });
const many = fc.array(plain, { minLength: 1, maxLength: 24 });
const kerf = fc.constantFrom(0, 1);

const problem = (parts: readonly Plain[], k: number, more: Partial<Problem> = {}): Problem => ({
  parts: parts.map(({ length, width, turns }, i) => ({
    name: `${i + 1}`,
    quantity: 1,
    length: ratio(length),
    width: ratio(width),
    grain: turns ? "any" : "length",
  })),
  stock: [{ name: "sheet", length: ratio(LENGTH), width: ratio(WIDTH) }],
  kerf: ratio(k),
  trim: ratio(0),
  ...more,
});
const least = (solution: Solution): number => toDouble(solution.least.value);
const cost = (solution: Solution): number => stockUses(solution).reduce((sum, use) => sum + toDouble(use.cost), 0);
const priced = (price: number, small: number, offcuts = 0): Problem["stock"] => [
  { name: "whole", length: ratio(LENGTH), width: ratio(WIDTH), price: ratio(price) },
  { name: "half", length: ratio(LENGTH), width: ratio(WIDTH), available: 2, price: ratio(small) },
  ...(offcuts ? [{ name: "offcut", length: ratio(8), width: ratio(8), available: offcuts }] : []),
];

describe("laws of sheets", () => {
  test("on up to five parts, thorough needs no more sheets than trying everything, and no bound is above that", () => {
    fc.assert(
      fc.property(few, kerf, (parts, k) => {
        const truth = leastSheets(parts, LENGTH, WIDTH, k);
        const solution = solve(problem(parts, k), "thorough");
        expect(solution.sheets.length).toBe(truth);
        expect(least(solution)).toBeLessThanOrEqual(truth);
        if (solution.proven) expect(least(solution)).toBe(truth);
        expect(solve(problem(parts, k), "quick").sheets.length).toBeGreaterThanOrEqual(truth);
      }),
      { numRuns: 60 },
    );
  });

  test("an answer can be cut as it says, whatever the effort, and never has fewer sheets than its bound", () => {
    fc.assert(
      fc.property(many, kerf, fc.constantFrom<Effort>("quick", "standard"), (parts, k, effort) => {
        const solution = solve(problem(parts, k), effort);
        expect(flaws(solution)).toEqual([]);
        expect(solution.sheets.length).toBeGreaterThanOrEqual(least(solution));
      }),
      { numRuns: 25 },
    );
  });

  test("equal input gives the equal answer", () => {
    fc.assert(
      fc.property(many, kerf, (parts, k) => {
        expect(solve(problem(parts, k), "quick").sheets).toEqual(solve(problem(parts, k), "quick").sheets);
      }),
      { numRuns: 25 },
    );
  });

  test("a kerf never saves, and freedom to turn never costs", () => {
    fc.assert(
      fc.property(many, (parts) => {
        const sheets = (list: readonly Plain[], k: number) => solve(problem(list, k), "quick").sheets.length;
        expect(sheets(parts, 0)).toBeLessThanOrEqual(sheets(parts, 1));
        expect(
          sheets(
            parts.map((part) => ({ ...part, turns: true })),
            1,
          ),
        ).toBeLessThanOrEqual(sheets(parts, 1));
      }),
      { numRuns: 40 },
    );
  });

  test("a cheaper size or an offcut of one's own never costs more", () => {
    fc.assert(
      fc.property(many, kerf, (parts, k) => {
        const of = (stock: Problem["stock"]) => cost(solve(problem(parts, k, { stock }), "quick"));
        expect(of(priced(10, 7))).toBeLessThanOrEqual(of(priced(10, 10)));
        expect(of(priced(10, 7, 1))).toBeLessThanOrEqual(of(priced(10, 7)));
      }),
      { numRuns: 40 },
    );
  });
});
