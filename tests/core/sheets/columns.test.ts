import { describe, expect, test } from "vitest";
import { ratio } from "../../../src/core/length";
import { flaws, Meter, solve, type Part, type Problem, type Stock } from "../../../src/core/sheets";
import { columns } from "../../../src/core/sheets/algorithms/columns";
import { exact } from "../../../src/core/sheets/exact";
import type { Draft } from "../../../src/core/sheets/model";
import { reduce } from "../../../src/core/sheets/reduce";
import { pricedInstances } from "../../handbook/sheet-instances";

const part = (length: number, width: number, quantity: number, grain: Part["grain"] = "length"): Part => ({
  name: `${length} × ${width}`,
  quantity,
  length: ratio(length),
  width: ratio(width),
  grain,
});
const sheet = (length: number, width: number, more: Partial<Stock> = {}): Stock => ({
  name: `${length} × ${width}`,
  length: ratio(length),
  width: ratio(width),
  ...more,
});
const on = (stock: Stock[], parts: Part[]): Problem => ({ parts, stock, kerf: ratio(0), trim: ratio(0) });

/**
 * Twenty-four times what fills a sheet of 10 × 11 in three stages: a strip of 10 × 5, and one of 7 × 6 with two of 3 × 3
 * stacked beside it. Half of the 7 × 6 may turn. No sheet holds two of them, and in strips of one piece across one lies
 * with a 10 × 5 and no more than a single 3 × 3: then 24 sheets are too few.
 */
const FILLED = [part(10, 5, 24), part(7, 6, 12), part(7, 6, 12, "any"), part(3, 3, 48)];

const mixed = (problem: Problem, stacks: boolean): Draft =>
  columns(reduce(problem, exact(problem)).model, { steps: 10_000_000, stacks, meter: new Meter() })!;

describe("columns(model, options)", () => {
  test("with stacks it finds the filling of three stages, and without them it needs more", () => {
    const problem = on([sheet(10, 11)], FILLED);
    const [stacked, plain] = [mixed(problem, true), mixed(problem, false)];
    expect([stacked.waiting, stacked.sheets.length]).toEqual([0, 24]);
    // What waits goes on one sheet more at least.
    expect(plain.sheets.length + Math.sign(plain.waiting)).toBeGreaterThan(24);
  });

  test("mixes sizes, each piece by itself first where it costs least, and lets one be on which nothing fits", () => {
    const sizes = [sheet(2, 2), sheet(10, 12), sheet(10, 11), sheet(10, 6)];
    const { waiting, sheets, weight } = mixed(on(sizes, FILLED), true);
    const area = 24 * 10 * 11;
    // One more for every sheet; pieces, and one, times the cost of what has no price: its area, in twos.
    const pieces = FILLED.reduce((sum, { quantity }) => sum + quantity, 0);
    expect(sheets.some(({ size }) => size === 0)).toBe(false);
    expect(waiting).toBe(0);
    expect(weight).toBe((area / 2) * (pieces + 1) + sheets.length);
  });
});

describe("a published instance of many equal parts on three priced sizes", () => {
  const [instance] = pricedInstances.filter(({ id }) => id === "gcut5d");
  const { sheets, parts, least_cost } = instance!;
  const problem = on(
    sheets.map(([length, width, price]) => sheet(length, width, { price: ratio(price) })),
    parts.map(([length, width, demand]) => part(length, width, demand)),
  );

  test("costs within a thousandth of the best known, and no less than the parts' area", () => {
    const solution = solve(problem, "standard", new Meter(4_000_000));
    expect(flaws(solution)).toEqual([]);
    const cost = solution.sheets.reduce((sum, { stock }) => sum + sheets[stock]![2], 0);
    expect(cost).toBeLessThanOrEqual(1.001 * least_cost.oriented[1]);
    // Every price is at least its sheet's area.
    expect(cost).toBeGreaterThanOrEqual(
      parts.reduce((sum, [length, width, demand]) => sum + length * width * demand, 0),
    );
  });
});
