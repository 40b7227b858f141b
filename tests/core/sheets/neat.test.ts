import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ratio, toDouble } from "../../../src/core/length";
import {
  flaws,
  Meter,
  offcuts,
  sawCuts,
  solve,
  stockUses,
  type Effort,
  type Part,
  type Solution,
} from "../../../src/core/sheets";
import { search } from "../../../src/core/sheets/algorithms";
import { neat } from "../../../src/core/sheets/algorithms/neat";
import { gatherOffcut } from "../../../src/core/sheets/algorithms/offcut";
import { build } from "../../../src/core/sheets/build";
import { exact } from "../../../src/core/sheets/exact";
import { reduce } from "../../../src/core/sheets/reduce";
import { kerf, many, problem, sheet } from "../../laws/sheet-problems";

const SAFE = { length: ratio(0), width: ratio(0) };
const cutsOf = (solution: Solution): string[] =>
  sawCuts(solution, SAFE).map(({ sheet, kind, setting }) => `${sheet} ${kind} ${toDouble(setting)}`);
/** Cuts, where a rip of what is wider than long counts twice. */
const effortOf = (solution: Solution): number =>
  sawCuts(solution, SAFE).reduce((sum, { kind, from }, i, all) => {
    // What is in hand gets narrower with every rip; what it was at first counts.
    const first = all.find(
      (cut) =>
        cut.sheet === all[i]!.sheet && cut.kind === kind && cut.from.piece === from.piece && cut.from.is === from.is,
    )!;
    return sum + (kind === "rip" && toDouble(first.from.width) > toDouble(first.from.length) ? 2 : 1);
  }, 0);
const largest = (solution: Solution): number =>
  Math.max(0, ...offcuts(solution).map(({ length, width }) => toDouble(length) * toDouble(width)));

const single = (length: number, width: number, grain: Part["grain"] = "length"): Part => ({
  name: `${length} × ${width}`,
  quantity: 1,
  length: ratio(length * 2, 2),
  width: ratio(width * 2, 2),
  grain,
});

const EFFORTS: Effort[] = ["quick", "standard", "thorough"];

describe("a layout as one would rather cut it", () => {
  test.each(EFFORTS)("a strip is as wide as its widest piece, and no wider: %s", (effort) => {
    // Common practice: three fronts of 596 mm from one strip, the fence set to the highest of them.
    const fronts = [285, 284, 139].map((width) => single(596, width));
    const solution = solve({ parts: fronts, stock: SHEET_MM, kerf: ratio(16, 5), trim: ratio(0) }, effort);
    expect(cutsOf(solution)).toEqual([
      "1 rip 285",
      "1 crosscut 596",
      "1 crosscut 596",
      "1 crosscut 596",
      "1 rip 284",
      "1 rip 139",
    ]);
    expect(largest(solution)).toBeCloseTo(2440 * (1220 - 285 - 3.2), 6);
  });

  test.each(EFFORTS)("pieces of one width come from one rip: %s", (effort) => {
    const parts = [...Array(3).fill(single(20, 10)), ...Array(3).fill(single(24, 6))];
    const solution = solve({ parts, stock: SHEET, kerf: ratio(1, 8), trim: ratio(0) }, effort);
    expect(cutsOf(solution)).toEqual([
      "1 rip 10",
      "1 rip 6",
      ...Array(3).fill("1 crosscut 24"),
      ...Array(3).fill("1 crosscut 20"),
    ]);
  });

  test("pieces that may turn lie so that they share a rip", () => {
    const parts = [single(30, 12, "any"), single(12, 20, "any"), single(25, 12, "any")];
    const solution = solve({ parts, stock: SHEET, kerf: ratio(0), trim: ratio(0) }, "quick");
    expect(cutsOf(solution)[0]).toBe("1 rip 12");
    expect(cutsOf(solution)).toHaveLength(4);
  });
});

test("a rip of a piece that is wider than it is long counts as two cuts", () => {
  // Common practice: the longer edge goes against the fence. Two cleats of 5 × 1 1/2 are cut from the ends of strips.
  const parts = [...Array(8).fill(single(22, 7.5)), single(5, 1.5), single(5, 1.5)];
  const solution = solve({ parts, stock: SHEET, kerf: ratio(1, 8), trim: ratio(0) }, "standard");
  const rips = sawCuts(solution, SAFE).filter(({ kind }) => kind === "rip");
  const inHand = rips.map(({ from }) => [toDouble(from.length), toDouble(from.width)]);
  expect(inHand.filter(([length, width]) => length! < width!)).toEqual([]);
});

describe("what a layout loses by being cut otherwise", () => {
  test("what is taken of each row of stock is the same, neat or not", () => {
    fc.assert(
      fc.property(many, kerf, (parts, k) => {
        const asked = problem(parts, k, { stock: [sheet(), sheet({ name: "half", width: ratio(4) })] });
        const [neatly, anyhow] = (["neat", "any"] as const).map((look) =>
          stockUses(solve(asked, "quick", new Meter(2_000_000), look)).map(({ largestOffcut: _, ...use }) => use),
        );
        expect(neatly).toEqual(anyhow);
      }),
      { seed: 16, numRuns: 100 },
    );
  });

  test("no piece changes its sheet, the largest offcut is no smaller, and the rest takes no more cuts", () => {
    fc.assert(
      fc.property(many, kerf, (parts, k) => {
        const asked = problem(parts, k);
        const sizes = exact(asked);
        const reduced = reduce(asked, sizes);
        const draft = gatherOffcut(reduced.model, search(reduced.model, "quick", 0, new Meter(2_000_000)), 200);
        const [before, after] = [draft, neat(reduced.model, draft)].map((one): Solution => ({
          problem: asked,
          exact: sizes,
          sheets: build(one, reduced, sizes),
          least: { measure: "sheets", value: ratio(0) },
          proven: false,
          isShort: false,
        })) as [Solution, Solution];
        expect(flaws(after)).toEqual([]);
        expect(largest(after)).toBeGreaterThanOrEqual(largest(before) - 1e-9);
        // With the largest offcut as it was, nothing was given for it.
        if (largest(after) <= largest(before) + 1e-9) expect(effortOf(after)).toBeLessThanOrEqual(effortOf(before));
      }),
      { seed: 15, numRuns: 300 },
    );
  });
});

const SHEET = [{ name: "sheet", length: ratio(96), width: ratio(48) }];
const SHEET_MM = [{ name: "sheet", length: ratio(2440), width: ratio(1220) }];
