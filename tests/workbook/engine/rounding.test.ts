import fc from "fast-check";
import { expect, it } from "vitest";
import { bookOf, results, type Given } from "../support/sheet";

/** Numbers as people have them, those that end in a half at one of their digits, and any others. */
const number = fc
  .oneof(
    fc.tuple(fc.integer({ min: -2e6, max: 2e6 }), fc.integer({ min: 0, max: 6 })).map(([n, e]) => n / 10 ** e),
    fc.tuple(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 0, max: 8 })).map(([n, e]) => n / 2 ** e),
    fc
      .tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 9 }), fc.integer({ min: -3, max: 3 }))
      .map(([n, e, ulps]) => ((n + 0.5) / 10 ** e) * (1 + ulps * Number.EPSILON)),
    fc.double({ min: -999e12, max: 999e12, noNaN: true }),
  )
  // Where doubles end, a tenth of one may be none at all.
  .filter((n) => n === 0 || Math.abs(n) > 1e-300);

const STEPS = {
  ROUND: (rest: bigint, unit: bigint) => rest * 2n >= unit,
  ROUNDUP: (rest: bigint) => rest > 0n,
  ROUNDDOWN: () => false,
};

/** By whole numbers, from the fifteen digits that the spreadsheet program shows. */
function rounded(name: keyof typeof STEPS, value: number, places: number): number {
  const [digits, exponent] = Math.abs(value).toExponential(14).split("e") as [string, string];
  const units = BigInt(digits.replace(".", ""));
  const behind = 14 - Number(exponent) - places;
  if (behind <= 0) return Number(`${Math.sign(value) * Number(units)}e${Number(exponent) - 14}`);
  const unit = 10n ** BigInt(behind);
  const whole = units / unit + (STEPS[name](units % unit, unit) ? 1n : 0n);
  return Math.sign(value) * Number(`${whole}e${-places}`) + 0;
}

it.each(Object.keys(STEPS) as (keyof typeof STEPS)[])(
  "%s rounds what fifteen digits say, half away from nothing",
  (name) => {
    const cases = fc.array(fc.tuple(number, fc.integer({ min: -4, max: 10 })), { minLength: 50, maxLength: 200 });
    fc.assert(
      fc.property(cases, (given) => {
        const cells: Given = {};
        given.forEach(([value, places], i) => {
          cells[`A${i + 1}`] = value + 0;
          cells[`B${i + 1}`] = `=${name}(A${i + 1},${places})`;
        });
        const all = results(bookOf(cells));
        for (const [i, [value, places]] of given.entries())
          expect([value, places, all[`B${i + 1}`]]).toEqual([value, places, rounded(name, value, places)]);
      }),
      { numRuns: 100 },
    );
  },
);
