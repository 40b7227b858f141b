import fc from "fast-check";
import { expect, test } from "vitest";
import { dadoesOf } from "../../src/core/drawer";
import {
  add,
  equal,
  half,
  isPositive,
  less,
  ratio,
  subtract,
  times,
  total,
  type Rational,
} from "../../src/core/length";
import { plannedJob } from "../drawing/jobs";

const eighths = (min: number, max: number) => fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8);
const box = fc.record({
  width: eighths(12, 36),
  depth: eighths(14, 28),
  thickness: fc.constantFrom("1/4", "7/32", "1/2"),
  corner: fc.constantFrom("butt", "dovetail", "rabbet"),
  run: fc.constantFrom("front to back", "side to side"),
});
const SIZES: Record<string, Rational> = { "1/4": ratio(1, 4), "7/32": ratio(7, 32), "1/2": ratio(1, 2) };

function divided({ width, depth, thickness, corner, run }: Record<string, unknown>, dividers: unknown) {
  const [planned] = plannedJob({
    openings: [
      ["Opening", "Width", "Height", "Depth", "Drawers"],
      ["A", width, 8, depth, 1],
    ],
    standards: [
      ["dividers", dividers],
      ["divider thickness", thickness],
      ["divider run", run],
      ["corner joint", corner],
      ["joint depth", "1/4"],
    ],
  });
  const drawer = planned!.drawers[0]!;
  const { insideWidth, insideDepth, sideLength, endLength } = drawer.stock;
  const [inside, piece] = run === "side to side" ? [insideDepth, sideLength] : [insideWidth, endLength];
  return { dadoes: dadoesOf(drawer), inside: inside.value, piece: piece.value };
}

test("dividers by their count lie alike from both ends, and with their cells fill the inside to the last bit", () => {
  fc.assert(
    fc.property(box, fc.integer({ min: 1, max: 9 }), (made, count) => {
      const { dadoes, inside, piece } = divided(made, count);
      const thick = SIZES[made.thickness]!;
      for (const { from, even } of dadoes) {
        expect([from.length, even]).toEqual([count, true]);
        for (const [i, begin] of from.entries())
          expect(equal(total([begin, from[count - 1 - i]!, thick]), piece)).toBe(true);
        // Half of what the piece is longer than the inside stands before the first cell.
        const cell = subtract(from[0]!, half(subtract(piece, inside)));
        expect(equal(add(times(count + 1, cell), times(count, thick)), inside)).toBe(true);
        for (const [i, begin] of from.slice(1).entries())
          expect(equal(subtract(begin, from[i]!), add(cell, thick))).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
});

test("dividers at a spacing are as many as go in: behind the last stands more than nothing, and no further one", () => {
  fc.assert(
    fc.property(box, eighths(2, 10), (made, spacing) => {
      const { dadoes, inside, piece } = divided(made, `${spacing} in`);
      const thick = SIZES[made.thickness]!;
      for (const { from } of dadoes) {
        const end = subtract(piece, half(subtract(piece, inside)));
        const left = subtract(end, add(from[from.length - 1]!, thick));
        expect(isPositive(left) && !less(add(ratio(spacing * 8, 8), thick), left)).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
});
