import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { abs, add, divide, isZero, less, multiply, ratio, type Rational } from "../../src/core/length";
import {
  airTemperature,
  equilibriumMoisture,
  evenLoad,
  movement,
  sag,
  SPECIES,
  tipping,
  type Bottom,
  type Edges,
} from "../../src/core/wood";

const sixteenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => ratio(n, 16));
const species = fc.constantFrom(...SPECIES);
const cut = fc.constantFrom("flat" as const, "quarter" as const);
const moisture = fc.integer({ min: 0, max: 300 }).map((n) => ratio(n, 10));
const width = sixteenths(1, 800);

describe("laws of moving wood", () => {
  test("no change of moisture, no movement", () =>
    fc.assert(fc.property(width, species, moisture, cut, (w, s, m, c) => isZero(movement(w, s, m, m, c)))));

  test("there and back is nothing to first order: what is left is the square of the share that it moved by", () =>
    fc.assert(
      fc.property(width, species, moisture, moisture, cut, (w, s, from, to, c) => {
        const there = movement(w, s, from, to, c);
        const left = add(there, movement(add(w, there), s, to, from, c));
        const share = divide(there, w);
        return !less(multiply(w, multiply(share, share)), abs(left));
      }),
    ));

  test.each(SPECIES.map((s) => [s.name, s] as const))("flat sawn moves more than quarter sawn: %s", (_, s) => {
    const [flat, quarter] = (["flat", "quarter"] as const).map((c) => movement(ratio(12), s, ratio(8), ratio(12), c));
    expect(less(quarter!, flat!)).toBe(true);
  });

  test("wood is the moister, the moister the air, from nothing in dry air to less than 32 % in air that is full", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 270 }),
        fc.integer({ min: 0, max: 999 }),
        fc.integer({ min: 1, max: 100 }),
        (t, tenths, more) => {
          const [drier, moister] = [tenths / 10, Math.min(100, (tenths + more) / 10)];
          const [low, high] = [drier, moister].map((h) => equilibriumMoisture(airTemperature(t, "F"), h)) as [
            number,
            number,
          ];
          return low >= 0 && high > low && high < 32 && equilibriumMoisture(airTemperature(t, "F"), 0) === 0;
        },
      ),
    ));

  test("Fahrenheit and Celsius are one temperature", () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 130 }), fc.integer({ min: 1, max: 100 }), (t, h) => {
        const [f, c] = [airTemperature((t * 9) / 5 + 32, "F"), airTemperature(t, "C")].map((celsius) =>
          equilibriumMoisture(celsius, h),
        ) as [number, number];
        return Math.abs(f / c - 1) < 1e-12;
      }),
    ));
});

const EDGES: Edges[] = ["held", "clamped"];
const bottom: fc.Arbitrary<Bottom> = fc.record({
  width: sixteenths(64, 800),
  depth: sixteenths(64, 800),
  thickness: sixteenths(4, 24),
  stiffness: fc.integer({ min: 300_000, max: 2_000_000 }),
});
const load = fc.integer({ min: 1, max: 300 });
const inMillimeters = (length: Rational): Rational => multiply(length, ratio(127, 5));
/** Exact by definition: pound, inch, standard gravity (NIST SP 811, SP 330). */
const [KG, MPA] = [0.45359237, (0.45359237 * 9.80665) / 25.4 ** 2];

describe("laws of sagging bottoms", () => {
  test("a thicker bottom never sags more, a heavier load never less", () =>
    fc.assert(
      fc.property(bottom, load, fc.constantFrom(...EDGES), (b, l, edges) => {
        const at = sag(b, l, edges, "in");
        const thicker = { ...b, thickness: add(b.thickness, ratio(1, 64)) };
        return at > 0 && sag(thicker, l, edges, "in") < at && sag(b, l + 1, edges, "in") > at;
      }),
    ));

  test("clamped edges sag less than held ones, and it does not matter which side is called the width", () =>
    fc.assert(
      fc.property(bottom, load, (b, l) => {
        const [held, clamped] = EDGES.map((edges) => sag(b, l, edges, "in")) as [number, number];
        const turned = sag({ ...b, width: b.depth, depth: b.width }, l, "clamped", "in");
        return clamped < held / 3 && turned === clamped;
      }),
    ));

  test("inches, pounds and psi tell the same as millimeters, kilograms and megapascals, to 1e-9", () =>
    fc.assert(
      fc.property(bottom, load, fc.constantFrom(...EDGES), (b, l, edges) => {
        const twin = {
          width: inMillimeters(b.width),
          depth: inMillimeters(b.depth),
          thickness: inMillimeters(b.thickness),
          stiffness: b.stiffness * MPA,
        };
        return Math.abs(sag(twin, l * KG, edges, "mm") / 25.4 / sag(b, l, edges, "in") - 1) < 1e-9;
      }),
    ));

  test("a longer bottom under the same pressure never sags less, until its ends are far apart", () =>
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 280 }), fc.constantFrom(...EDGES), (hundredths, edges) => {
        const at = (n: number) =>
          sag({ width: ratio(n), depth: ratio(100), thickness: ratio(1), stiffness: 1e6 }, n * 100, edges, "in");
        return at(hundredths + 1) > at(hundredths);
      }),
    ));

  test("resting edges: the single series is the double series of Navier, to 1e-6", () =>
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 800 }), (hundredths) => {
        const aspect = hundredths / 100;
        const b = { width: ratio(hundredths, 100), depth: ratio(1), thickness: ratio(1, 10), stiffness: 1e6 };
        const rigidity = 1e3 / (12 * (1 - 0.3 ** 2));
        return Math.abs((sag(b, aspect, "held", "in") * rigidity) / navier(aspect) - 1) < 1e-6;
      }),
      { numRuns: 30 },
    ));
});

/** Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, article 28: the middle, the short side being 1. */
function navier(aspect: number): number {
  let sum = 0;
  for (let m = 399; m > 0; m -= 2)
    for (let n = 399; n > 0; n -= 2) sum += ((m + n) % 4 === 2 ? 1 : -1) / (m * n * (m ** 2 + (n / aspect) ** 2) ** 2);
  return (16 / Math.PI ** 6) * sum;
}

describe("laws of loads", () => {
  test("square feet and square meters tell the same load, to 1e-9", () =>
    fc.assert(
      fc.property(width, width, fc.integer({ min: 1, max: 100 }), (w, d, rate) => {
        const pascals = (rate * KG * 9.80665) / 0.3048 ** 2;
        const twin = evenLoad(inMillimeters(w), inMillimeters(d), pascals, "mm");
        return Math.abs(twin / KG / evenLoad(w, d, rate, "in") - 1) < 1e-9;
      }),
    ));

  const drawer = fc.record({ weight: fc.integer({ min: 1, max: 200 }), reach: fc.integer({ min: -20, max: 30 }) });
  test("another drawer pulled out in front of the line never makes a cabinet safer, one behind it never less safe", () =>
    fc.assert(
      fc.property(fc.array(drawer, { maxLength: 5 }), drawer, drawer, (drawers, front, other) => {
        const out = [...drawers, { ...front, reach: Math.abs(front.reach) + 1 }];
        const [before, after] = [tipping(150, 10, out), tipping(150, 10, [...out, other])];
        return other.reach > 0 ? after < before : after >= before;
      }),
    ));

  test("one drawer balances its cabinet exactly where the moments are equal", () =>
    fc.assert(
      fc.property(load, load, (w, reach) => Math.abs(tipping(w, reach, [{ weight: reach, reach: w }]) - 1) < 1e-12),
    ));
});
