import { describe, expect, test } from "vitest";
import { ratio } from "../../../src/core/length";
import { flaws, searchOn, solve, type Problem, type Solution } from "../../../src/core/sheets";
import { packingInstances } from "../../handbook/sheet-instances";

const instance = (id: string, turning: boolean, most = Infinity): Problem => {
  const { W, H, items } = packingInstances.find((one) => one.id === id)!;
  return {
    parts: items.slice(0, most).map(([w, h], i) => ({
      name: `${i + 1}`,
      quantity: 1,
      length: ratio(w),
      width: ratio(h),
      grain: turning ? "any" : "length",
    })),
    stock: [{ name: "sheet", length: ratio(W), width: ratio(H) }],
    kerf: ratio(0),
    trim: ratio(0),
  };
};

/** The answers of so many turns. */
function turns(problem: Problem, most: number): Solution[] {
  const found: Solution[] = [];
  for (const solution of searchOn(problem, 100_000)) if (found.push(solution) === most) break;
  return found;
}

describe("a search that goes on while somebody waits", () => {
  test("begins with the quick answer, and none that it comes to is worse than one before or cannot be cut", () => {
    const problem = instance("cl08_020_01", true, 10);
    const found = turns(problem, 6);
    expect(found).toHaveLength(6);
    expect(found[0]!.sheets.length).toBe(solve(problem, "quick").sheets.length);
    found.forEach((solution, i) => {
      expect(flaws(solution)).toEqual([]);
      if (i > 0) expect(solution.sheets.length).toBeLessThanOrEqual(found[i - 1]!.sheets.length);
    });
    expect(found[2]!.sheets.length).toBeLessThanOrEqual(solve(problem, "thorough").sheets.length);
  });

  test("ends where no answer is better", () => {
    const found = turns(instance("cl01_020_01", false), 100);
    expect(found.length).toBeLessThan(100);
    expect(found.at(-1)!.proven).toBe(true);
  });

  test("gives the equal answers of an equal problem", () => {
    const counts = () => turns(instance("cl07_020_02", true, 8), 5).map(({ sheets }) => JSON.stringify(sheets));
    expect(counts()).toEqual(counts());
  });

  test("cuts a few sheets anew where fillings repeat, and keeps to the stock that there is", () => {
    const problem: Problem = {
      parts: [
        { name: "side", quantity: 10, length: ratio(22), width: ratio(7), grain: "length" },
        { name: "end", quantity: 10, length: ratio(17), width: ratio(7), grain: "any" },
        { name: "bottom", quantity: 5, length: ratio(21), width: ratio(17), grain: "any" },
      ],
      stock: [
        { name: "sheet", length: ratio(96), width: ratio(48), price: ratio(60) },
        { name: "offcut", length: ratio(40), width: ratio(24), available: 2 },
        { name: "none left", length: ratio(120), width: ratio(60), price: ratio(1), available: 0 },
      ],
      kerf: ratio(1, 8),
      trim: ratio(1, 4),
    };
    for (const solution of turns(problem, 6)) {
      expect(flaws(solution)).toEqual([]);
      expect(solution.sheets.every(({ stock }) => stock < 2)).toBe(true);
    }
  });
});
