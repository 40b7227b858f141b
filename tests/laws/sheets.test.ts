import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flaws, solve, type Effort } from "../../src/core/sheets";
import { leastSheets, type Plain } from "../core/sheets/exhaustive";
import { kerf, least, LENGTH, many, plain, problem, WIDTH } from "./sheet-problems";

const few = fc.array(plain, { minLength: 1, maxLength: 6 });

/** Up to six parts that come of cutting one sheet up, so that they fill it without a rest, in any order. */
const ofOneSheet: fc.Arbitrary<[Plain[], number]> = fc
  .tuple(fc.array(fc.tuple(fc.nat(), fc.boolean(), fc.nat()), { minLength: 1, maxLength: 5 }), kerf, fc.boolean())
  .map(([cuts, k, turns]): [Plain[], number] => {
    const pieces: Plain[] = [{ length: LENGTH, width: WIDTH, turns }];
    for (const [which, along, where] of cuts) {
      const piece = pieces[which % pieces.length]!;
      const side = along ? "length" : "width";
      const places = Math.floor(piece[side] - 1 - k);
      if (places < 1) continue;
      const at = 1 + (where % places);
      pieces.push({ ...piece, [side]: piece[side] - at - k });
      piece[side] = at;
    }
    return [pieces.map(({ length, width }) => ({ length, width, turns })), k];
  });

describe("laws of sheets", () => {
  test("on up to six parts, thorough needs no more sheets than trying everything, and no bound is above that", () => {
    fc.assert(
      fc.property(fc.oneof(fc.tuple(few, kerf), ofOneSheet), ([parts, k]) => {
        const truth = leastSheets(parts, LENGTH, WIDTH, k);
        const solution = solve(problem(parts, k), "thorough");
        expect(solution.sheets.length).toBe(truth);
        expect(least(solution)).toBeLessThanOrEqual(truth);
        if (solution.proven) expect(least(solution)).toBe(truth);
        expect(solve(problem(parts, k), "quick").sheets.length).toBeGreaterThanOrEqual(truth);
      }),
      { numRuns: 150 },
    );
  });

  test("parts that a sheet was cut up into are cut from one sheet, whatever the kerf", () => {
    fc.assert(
      fc.property(ofOneSheet, ([parts, k]) => {
        expect(solve(problem(parts, k), "standard").sheets.length).toBe(1);
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
});
