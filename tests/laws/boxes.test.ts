import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as drawer from "../../src/core/drawer";
import { groovePasses, type Size } from "../../src/core/drawer";
import { add, compare, equal, less, ratio, subtract, times, ZERO, type Rational } from "../../src/core/length";

const valueOf =
  <A extends unknown[]>(size: (...args: A) => Size) =>
  (...args: A): Rational =>
    size(...args).value;
const boxWidth = valueOf(drawer.boxWidth);
const boxHeight = valueOf(drawer.boxHeight);
const endLength = valueOf(drawer.endLength);
const sideLength = valueOf(drawer.sideLength);
const bottomWidth = valueOf(drawer.bottomWidth);
const bottomDepth = valueOf(drawer.bottomDepth);
const slideLength = valueOf(drawer.slideLength);

const sixteenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => ratio(n, 16));
const opening = sixteenths(64, 800);
const thickness = sixteenths(2, 16);
const clearance = sixteenths(0, 16);

/** A groove or joint less deep than the stock. */
const stockAndCut = fc
  .tuple(fc.integer({ min: 4, max: 16 }), fc.integer({ min: 2, max: 15 }))
  .filter(([t, g]) => g < t)
  .map(([t, g]) => [ratio(t, 16), ratio(g, 16)] as const);

describe("laws of boxes", () => {
  test("box width and both clearances are the opening", () => {
    fc.assert(fc.property(opening, clearance, (o, c) => equal(add(boxWidth(o, c), times(2, c)), o)));
  });

  test("a wider opening never gives a narrower box, a deeper one never a shorter slide", () => {
    const lengths = [10, 12, 14, 16, 18, 20, 22].map((n) => ratio(n));
    fc.assert(
      fc.property(opening, opening, clearance, (a, b, c) => {
        const [small, large] = less(a, b) ? [a, b] : [b, a];
        expect(compare(boxWidth(small, c), boxWidth(large, c))).toBeLessThanOrEqual(0);
        const [shallow, deep] = [small, large].map((depth) =>
          slideLength(add(depth, ratio(10)), ratio(1, 2), ZERO, lengths),
        );
        expect(compare(shallow!, deep!)).toBeLessThanOrEqual(0);
      }),
    );
  });

  test("a slide is one of those on sale, fits, and the next longer would not", () => {
    fc.assert(
      fc.property(
        sixteenths(200, 700),
        fc.uniqueArray(fc.integer({ min: 4, max: 12 }), { minLength: 1 }),
        (depth, sizes) => {
          const lengths = sizes.map((n) => ratio(n));
          const chosen = slideLength(depth, ZERO, ZERO, lengths);
          expect(lengths).toContain(chosen);
          expect(lengths.filter((length) => less(chosen, length) && !less(depth, length))).toEqual([]);
        },
      ),
    );
  });

  test("a box with its spaces never exceeds its zone, and falls short by less than a step", () => {
    fc.assert(
      fc.property(
        sixteenths(64, 400),
        sixteenths(0, 12),
        sixteenths(0, 12),
        sixteenths(1, 16),
        (space, below, above, step) => {
          const spare = subtract(subtract(subtract(space, below), above), boxHeight(space, below, above, step));
          expect(compare(spare, ZERO)).toBeGreaterThanOrEqual(0);
          expect(less(spare, step)).toBe(true);
        },
      ),
    );
  });

  test("butted ends and two sides are the box's width; a rabbet adds its depth twice", () => {
    fc.assert(
      fc.property(opening, stockAndCut, (w, [t, d]) => {
        expect(equal(add(endLength(w, t, "butt"), times(2, t)), w)).toBe(true);
        expect(equal(subtract(endLength(w, t, "rabbet", d), times(2, d)), endLength(w, t, "butt"))).toBe(true);
      }),
    );
  });

  test("half-blind sides and both laps are the box's depth", () => {
    fc.assert(
      fc.property(opening, stockAndCut, (depth, [t, socket]) =>
        equal(add(sideLength(depth, t, "half-blind dovetail", socket), times(2, subtract(t, socket))), depth),
      ),
    );
  });

  test("a grooved bottom is larger than the inside and smaller than the box, both ways", () => {
    fc.assert(
      fc.property(opening, stockAndCut, (size, [t, g]) => {
        const inside = subtract(size, times(2, t));
        for (const bottom of [
          bottomWidth(size, t, g, ratio(1, 16)),
          bottomDepth(size, t, g, ratio(1, 16), "grooved"),
        ]) {
          expect(less(inside, bottom) && less(bottom, size)).toBe(true);
        }
      }),
    );
  });

  test("groove passes begin at the offset, end at the far cheek, and never move by more than the kerf", () => {
    fc.assert(
      fc.property(sixteenths(2, 24), sixteenths(1, 8), sixteenths(0, 16), thickness, (width, kerf, offset, depth) => {
        fc.pre(!less(width, kerf));
        const fences = groovePasses(width, kerf, offset, depth).map((pass) => pass.fence);
        expect(equal(fences[0]!, offset)).toBe(true);
        expect(equal(add(fences.at(-1)!, kerf), add(offset, fences.length === 1 ? kerf : width))).toBe(true);
        const moves = fences.slice(1).map((fence, i) => subtract(fence, fences[i]!));
        expect(moves.some((move) => less(kerf, move))).toBe(false);
        expect(fences.length === 1 || less(times(fences.length - 1, kerf), width)).toBe(true);
      }),
    );
  });
});
