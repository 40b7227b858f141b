import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FIT } from "../../src/functions";
import { num, records } from "./jobs";

const table = [
  ["Width", "Height", "Depth", "Drawers"],
  [18, 20, 20.5, 1],
];
const JOINTS = ["butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"];
const sixtyFourths = fc.integer({ min: 0, max: 8 }).map((n) => n / 64);

interface Tolerances {
  o: number;
  c: number;
  t: number;
  low: number;
  high: number;
}
const tolerances = fc.record({
  o: sixtyFourths,
  c: sixtyFourths,
  t: sixtyFourths,
  low: sixtyFourths,
  high: sixtyFourths,
});

const fit = (joint: string, { o, c, t, low, high }: Tolerances) =>
  records(
    FIT(table, [
      ["corner joint", joint],
      ["joint depth", "1/4"],
      ["opening tolerance", `${o}`],
      ["cut tolerance", `${c}`],
      ["thickness tolerance", `${t}`],
      ["slide tolerance low", `${low}`],
      ["slide tolerance high", `${high}`],
    ]),
  )[0]!;

describe("laws of fit", () => {
  test("least ≤ likely least ≤ nominal ≤ likely most ≤ most, as far above the nominal as below", () => {
    fc.assert(
      fc.property(fc.constantFrom(...JOINTS), tolerances, (joint, values) => {
        const row = fit(joint, values);
        const sizes = ["Least", "Likely least", "Nominal", "Likely most", "Most"].map((name) => num(row[name]));
        expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
        expect(sizes[0]! + sizes[4]!).toBeCloseTo(2 * sizes[2]!, 12);
        expect(sizes[1]! + sizes[3]!).toBeCloseTo(2 * sizes[2]!, 12);
      }),
    );
  });

  test("the verdict says what the numbers say", () => {
    fc.assert(
      fc.property(fc.constantFrom(...JOINTS), tolerances, (joint, values) => {
        const row = fit(joint, values);
        const n = (name: string) => num(row[name]);
        const [binds, loose] = [n("Likely least") < n("Allowed least"), n("Likely most") > n("Allowed most")];
        const always = n("Least") >= n("Allowed least") && n("Most") <= n("Allowed most");
        const start = always
          ? "Fits even"
          : binds && loose
            ? "May bind or be loose"
            : binds
              ? "May bind:"
              : loose
                ? "May be loose:"
                : "Fits in all likelihood";
        expect(String(row["Verdict"]).startsWith(start)).toBe(true);
      }),
    );
  });
});

/** A box as it is cut and an opening as it was measured: what each side is left with. */
function sideSpace(joint: string, { o, c, t }: Tolerances, error: (tolerance: number) => number): number {
  const [opening, side] = [18 + error(o), 0.5 + error(t)];
  const ends = joint === "rabbet" || joint === "dado" ? 16.5 : joint === "butt" ? 16 : 17;
  const end = ends + error(c);
  // Both sides come from one sheet; the depths of both rabbets are cut apart.
  const box =
    joint === "butt"
      ? end + 2 * side
      : joint === "rabbet" || joint === "dado"
        ? end + 2 * side - (0.25 + error(c)) - (0.25 + error(c))
        : end;
  return (opening - box) / 2;
}

/** Chance from a seed, from 0 to 1. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const BOXES = 100_000;

/**
 * A tolerance is twice the spread of the error, as a person means it who says "within 1/64": errors are normal with
 * that spread, and those past the tolerance are caught and cut again. Spread evenly up to the tolerance, which no shop
 * does, fewer lie inside the root of the squares.
 */
const ERRORS = {
  "normal, the tolerance twice the spread": {
    least: 0.95,
    error: (next: () => number) => (tolerance: number) => {
      for (;;) {
        const normal = Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
        if (Math.abs(normal) <= 2) return (normal * tolerance) / 2;
      }
    },
  },
  "even up to the tolerance": {
    least: 0.9,
    error: (next: () => number) => (tolerance: number) => (2 * next() - 1) * tolerance,
  },
};

describe.each(Object.entries(ERRORS))("100,000 boxes with errors that are %s", (_, { least, error }) => {
  test.each(JOINTS)("%s: all within the worst case, nearly all within the likely one", (joint) => {
    const values = { o: 1 / 32, c: 1 / 64, t: 1 / 64, low: 0, high: 1 / 32 };
    const row = fit(joint, values);
    const draw = error(chance(20261125));
    let [inside, likely] = [0, 0];
    for (let i = 0; i < BOXES; i++) {
      const space = sideSpace(joint, values, draw);
      if (space > num(row["Least"]) - 1e-12 && space < num(row["Most"]) + 1e-12) inside++;
      if (space > num(row["Likely least"]) && space < num(row["Likely most"])) likely++;
    }
    expect(inside).toBe(BOXES);
    expect(likely / BOXES, `${(likely / BOXES) * 100} %`).toBeGreaterThan(least);
    expect(likely).toBeLessThan(BOXES);
  });
});
