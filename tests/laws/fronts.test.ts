import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { frontHeights, frontSize, graduated, type DrawerAsked } from "../../src/core/drawer";
import {
  add,
  divide,
  equal,
  isZero,
  less,
  multiply,
  ratio,
  roundDown,
  subtract,
  times,
  total,
  ZERO,
} from "../../src/core/length";

const sixteenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => ratio(n, 16));
const face = sixteenths(320, 1600);
const gap = sixteenths(0, 4);
const reveal = sixteenths(-12, 12);
const count = fc.integer({ min: 1, max: 12 });
const drawer: fc.Arbitrary<DrawerAsked> = fc.oneof(
  sixteenths(8, 24).map((fixed) => ({ fixed })),
  fc.integer({ min: 2, max: 6 }).map((n) => ({ parts: ratio(n, 2) })),
);
const drawers = fc.array(drawer, { minLength: 1, maxLength: 8 });

describe("laws of fronts", () => {
  test("FRONTHEIGHT(face, count, gap) times count plus gaps and reveals is the face", () => {
    fc.assert(
      fc.property(face, count, gap, reveal, reveal, (f, n, g, first, last) => {
        const each = frontSize(f, n, { gap: g, first, last });
        return equal(total([times(n, each), times(n - 1, g), first, last]), f);
      }),
    );
  });

  test("FRONTHEIGHTS without a step fills the face wherever one front shares", () => {
    fc.assert(
      fc.property(face, drawers, gap, (f, asked, g) => {
        const heights = frontHeights(f, asked, { gap: g, first: ZERO, last: ZERO }, ZERO);
        const filled = add(total(heights), times(asked.length - 1, g));
        return asked.some((d) => "parts" in d) ? equal(filled, f) : !less(f, filled);
      }),
    );
  });

  test("fronts that share stand to each other as their parts", () => {
    fc.assert(
      fc.property(face, drawers, (f, asked) => {
        const heights = frontHeights(f, asked, { gap: ZERO, first: ZERO, last: ZERO }, ZERO);
        const per = asked.flatMap((d, i) => ("parts" in d ? [divide(heights[i]!, d.parts)] : []));
        return per.every((each) => equal(each, per[0]!));
      }),
    );
  });

  test("with a step, shared fronts are multiples of it, fixed ones as asked, and less than a step is left", () => {
    fc.assert(
      fc.property(face, drawers, gap, sixteenths(1, 4), (f, asked, g, step) => {
        const heights = frontHeights(f, asked, { gap: g, first: ZERO, last: ZERO }, step);
        const left = subtract(f, add(total(heights), times(asked.length - 1, g)));
        for (const [i, d] of asked.entries()) {
          const height = heights[i]!;
          expect("fixed" in d ? equal(height, d.fixed) : equal(roundDown(height, step), height)).toBe(true);
        }
        if (asked.some((d) => "parts" in d)) expect(less(left, step) && !less(left, ZERO)).toBe(true);
      }),
    );
  });

  test("GRADUATED fills the face exactly and never grows upward", () => {
    const rules = fc.oneof(
      fc.constant(["equal", undefined] as const),
      fc.integer({ min: 0, max: 4 }).map((n) => ["arithmetic", ratio(n, 16)] as const),
      fc.integer({ min: 10, max: 20 }).map((n) => ["geometric", ratio(n, 10)] as const),
    );
    fc.assert(
      fc.property(face, count, rules, gap, (f, n, [rule, amount], g) => {
        const heights = graduated(f, n, rule, amount, g);
        expect(equal(add(total(heights), times(n - 1, g)), f)).toBe(true);
        for (let i = 1; i < n; i++) {
          const [above, below] = [heights[i - 1]!, heights[i]!];
          if (rule === "arithmetic") expect(equal(subtract(below, above), amount!)).toBe(true);
          else expect(equal(below, rule === "geometric" ? multiply(above, amount!) : above)).toBe(true);
        }
      }),
    );
  });

  test("no front has no height", () => {
    fc.assert(
      fc.property(face, drawers, gap, (f, asked, g) =>
        frontHeights(f, asked, { gap: g, first: ZERO, last: ZERO }, ZERO).every((height) => !isZero(height)),
      ),
    );
  });
});
