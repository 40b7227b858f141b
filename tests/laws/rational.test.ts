import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import {
  abs,
  add,
  commonDenominator,
  compare,
  divide,
  equal,
  isNegative,
  isPositive,
  isWhole,
  isZero,
  keyOf,
  multiply,
  negate,
  ratio,
  share,
  subtract,
  terms,
  times,
  wholePart,
  type Rational,
} from "../../src/core/length";

type Pair = readonly [numerator: bigint, denominator: bigint];

/** About where plain numbers, their products and their sums begin to lose digits: powers of 2 around 2^53. */
const atTheEdge: fc.Arbitrary<bigint> = fc
  .tuple(fc.constantFrom(25n, 26n, 27n, 51n, 52n, 53n, 54n, 1030n), fc.bigInt(-3n, 3n), fc.constantFrom(1n, -1n))
  .map(([power, more, sign]) => sign * (2n ** power + more));

/** Small ones, where zeros, wholes and equal ones are frequent, large ones, and those at the edge of plain numbers. */
const pair: fc.Arbitrary<Pair> = fc
  .oneof(
    fc.tuple(fc.bigInt(-12n, 12n), fc.bigInt(-6n, 6n)),
    fc.tuple(fc.bigInt(-(10n ** 30n), 10n ** 30n), fc.bigInt(-(10n ** 30n), 10n ** 30n)),
    fc.tuple(fc.oneof(atTheEdge, fc.bigInt(-3n, 3n)), fc.oneof(atTheEdge, fc.bigInt(1n, 3n))),
  )
  .filter(([, denominator]) => denominator !== 0n);

const ours = ([n, d]: Pair): Rational => ratio(n, d);
const theirs = ([n, d]: Pair): Fraction => new Fraction(n, d);
function sameAs(a: Rational, b: Fraction): void {
  expect(terms(a)).toEqual({ numerator: b.s * b.n, denominator: b.d });
}

const refuses = (n: number, d?: number): void => expect(() => ratio(n, d)).toThrow(RangeError);

/** Held against a library for fractions: the package fraction.js. */
describe("rational numbers are those of a library", () => {
  test.each([
    ["add", add, (a: Fraction, b: Fraction) => a.add(b)],
    ["subtract", subtract, (a: Fraction, b: Fraction) => a.sub(b)],
    ["multiply", multiply, (a: Fraction, b: Fraction) => a.mul(b)],
  ] as const)("%s", (_, own, other) => {
    fc.assert(fc.property(pair, pair, (a, b) => sameAs(own(ours(a), ours(b)), other(theirs(a), theirs(b)))));
  });

  test("divide, and nothing is divided by 0", () => {
    fc.assert(
      fc.property(pair, pair, (a, b) => {
        if (b[0] === 0n) expect(() => divide(ours(a), ours(b))).toThrow(RangeError);
        else sameAs(divide(ours(a), ours(b)), theirs(a).div(theirs(b)));
      }),
    );
    expect(() => ratio(1, 0)).toThrow(RangeError);
    expect(() => share(ratio(1), 0)).toThrow(RangeError);
  });

  test("what is no whole number makes none", () => {
    for (const wrong of [0.5, NaN, Infinity]) {
      refuses(wrong);
      refuses(1, wrong);
    }
  });

  test("in lowest terms, with its sign on the numerator; negate, abs and times", () => {
    fc.assert(
      fc.property(pair, fc.integer({ min: -1000, max: 1000 }), (a, count) => {
        sameAs(ours(a), theirs(a));
        sameAs(negate(ours(a)), theirs(a).neg());
        sameAs(abs(ours(a)), theirs(a).abs());
        sameAs(times(count, ours(a)), theirs(a).mul(count));
      }),
    );
  });

  test("compare and equal, and a key that equal ones alone share", () => {
    fc.assert(
      fc.property(pair, pair, (a, b) => {
        const order = theirs(a).compare(theirs(b));
        expect(Math.sign(compare(ours(a), ours(b)))).toBe(Math.sign(order));
        expect(equal(ours(a), ours(b))).toBe(order === 0);
        expect(keyOf(ours(a)) === keyOf(ours(b))).toBe(order === 0);
        expect(String(ours(a)) === String(ours(b))).toBe(order === 0);
      }),
    );
  });

  test("sign, wholeness, whole part and common denominator", () => {
    fc.assert(
      fc.property(pair, pair, (a, b) => {
        const [one, other] = [theirs(a), theirs(b)];
        const sign = Math.sign(one.compare(0));
        expect([isNegative, isZero, isPositive].map((is) => is(ours(a)))).toEqual([-1, 0, 1].map((s) => s === sign));
        expect(isWhole(ours(a))).toBe(one.d === 1n);
        sameAs(ratio(wholePart(ours(a))), one.floor());
        sameAs(ratio(commonDenominator([ours(a), ours(b)])), new Fraction(one.d).lcm(other.d));
      }),
    );
  });
});
