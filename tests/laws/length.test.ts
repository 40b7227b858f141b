import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  abs,
  compare,
  equal,
  fromDouble,
  negate,
  parseLength,
  ratio,
  share,
  subtract,
  tape,
  terms,
  toDouble,
  total,
  writeLength,
  type Rational,
  type Unit,
} from "../../src/core/length";

const rational = (denominator: fc.Arbitrary<bigint>) =>
  fc.tuple(fc.bigInt(-(10n ** 9n), 10n ** 9n), denominator).map(([n, d]) => ratio(n, d));
const anyRational = rational(fc.bigInt(1n, 10n ** 9n));
const unit = fc.constantFrom<Unit>("in", "mm");
const sixtyFourth = fc.integer({ min: -64_000, max: 64_000 }).map((n) => ratio(n, 64));

describe("laws of lengths", () => {
  test("parse ∘ write is the identity", () => {
    fc.assert(fc.property(anyRational, unit, (length, u) => equal(parseLength(writeLength(length, u), u), length)));
  });

  test("a thousand random 64ths add up exactly, as texts and as doubles", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -6400, max: 6400 }), { minLength: 1000, maxLength: 1000 }), (marks) => {
        const sum = ratio(
          marks.reduce((a, b) => a + b),
          64,
        );
        const texts = marks.map((n) => parseLength(writeLength(ratio(n, 64), "in"), "in"));
        const doubles = marks.map((n) => fromDouble(n / 64));
        return equal(total(texts), sum) && equal(total(doubles), sum);
      }),
      { numRuns: 20 },
    );
  });

  test("a double read and given back has moved by at most 1e-9 of the larger of 1 and its size", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e9, max: 1e9 }), (x) => {
        expect(Math.abs(toDouble(fromDouble(x)) - x)).toBeLessThanOrEqual(1.0000001e-9 * Math.max(1, Math.abs(x)));
      }),
    );
  });

  test("a fraction with a denominator of up to 128 survives a double, and sums of doubles", () => {
    const small = rational(fc.bigInt(1n, 128n)).filter((r) => Math.abs(toDouble(r)) < 10_000);
    fc.assert(fc.property(small, (r) => equal(fromDouble(toDouble(r)), r)));
    // Two fractions of denominators up to d stand at least 1/d² apart: a sum is told from simpler ones where that is
    // more than the tolerance at its size.
    const shop = fc.tuple(fc.bigInt(-20_000n, 20_000n), fc.bigInt(1n, 128n)).map(([n, d]) => ratio(n, d));
    const told = ([a, b]: [Rational, Rational]) => {
      const sum = total([a, b]);
      return Number(terms(sum).denominator) ** 2 * Math.max(1, Math.abs(toDouble(sum))) < 0.99e9;
    };
    fc.assert(
      fc.property(fc.tuple(shop, shop).filter(told), ([a, b]) =>
        equal(fromDouble(toDouble(a) + toDouble(b)), total([a, b])),
      ),
    );
  });

  test("toDouble is the nearest double: neither neighbor is nearer", () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 10n ** 40n), fc.bigInt(1n, 10n ** 40n), (n, d) => {
        const x = toDouble(ratio(n, d));
        const away = (y: number) => distance(ratio(n, d), y);
        const step = 2 ** (Math.floor(Math.log2(x)) - 52);
        for (const neighbor of [x - step, x + step]) expect(isAtMost(away(x), away(neighbor))).toBe(true);
      }),
    );
  });

  test("a tape read back is within half a mark of the length, and turns its sign with it", () => {
    fc.assert(
      fc.property(anyRational, fc.constantFrom(2, 4, 8, 16, 32, 64), (length, precision) => {
        const read = parseLength(tape(length, precision, "nearest", "in"), "in");
        expect(isAtMost(abs(subtract(read, length)), share(ratio(1, 2), precision))).toBe(true);
        const mirrored = parseLength(tape(negate(length), precision, "nearest", "in"), "in");
        expect(equal(mirrored, negate(read))).toBe(true);
      }),
    );
  });

  test("a tape rounded down is never longer than the length, and rounded up never shorter, by less than a mark", () => {
    fc.assert(
      fc.property(sixtyFourth, fc.constantFrom(0, 1, 2), (length, places) => {
        const mark = ratio(1, 10n ** BigInt(places));
        const [down, up] = (["down", "up"] as const).map((way) =>
          abs(parseLength(tape(length, places, way, "mm"), "mm")),
        );
        expect(isAtMost(down!, abs(length)) && isAtMost(abs(length), up!)).toBe(true);
        expect(isAtMost(subtract(up!, down!), mark)).toBe(true);
      }),
    );
  });
});

const isAtMost = (a: Rational, b: Rational): boolean => compare(a, b) <= 0;

/** How far a double lies from an exact number, exactly. */
function distance(exact: Rational, double: number): Rational {
  const exponent = Math.max(0, 60 - Math.floor(Math.log2(Math.abs(double) || 1)));
  const whole = exponent > 1000 ? 0n : BigInt(double * 2 ** exponent);
  return abs(subtract(exact, ratio(whole, 2n ** BigInt(exponent))));
}
