import { describe, expect, test } from "vitest";
import { ratio, toDouble } from "../../src/core/length";
import { sag, type Edges } from "../../src/core/wood";
import { plateByDifferences } from "./plates";
import { origin, reference } from "./reference";

/** The sag over q a⁴ / D, a the short side. */
function coefficient(aspect: number, edges: Edges): number {
  const bottom = { width: ratio(Math.round(aspect * 100)), depth: ratio(100), thickness: ratio(1, 4), stiffness: 1e6 };
  const pressure = 1 / 100;
  const load = pressure * toDouble(bottom.width) * 100;
  const rigidity = 1e6 / 64 / (12 * (1 - 0.3 ** 2));
  return (sag(bottom, load, edges, "in") * rigidity) / (pressure * 100 ** 4);
}
const off = (ours: number, printed: number): number => Math.abs(ours / printed - 1);

describe(`edges that rest (${origin("plate.simply_supported.uniform")})`, () => {
  const { rule, values } = reference("plate.simply_supported.uniform") as unknown as {
    rule: string;
    values: [number, number][];
  };
  test.each(values)("long side %d short sides: %d q b⁴ / (E t³) within 0.6 %", (aspect, printed) => {
    expect(rule).toMatch(/within 0\.6 %/);
    expect(off(coefficient(aspect, "held") * 12 * (1 - 0.3 ** 2), printed)).toBeLessThan(0.006);
  });
});

describe(`edges that rest, the series (${origin("plate.simply_supported.series")})`, () => {
  test.each(Object.entries(reference("plate.simply_supported.series").values as Record<string, number>))(
    "long side %s short sides: %d q a⁴ / D within 0.4 %",
    (aspect, printed) =>
      expect(off(coefficient(aspect === "inf" ? 1000 : Number(aspect), "held"), printed)).toBeLessThan(0.004),
  );

  test("a very long bottom is a beam across: 5/384", () => expect(coefficient(1000, "held")).toBeCloseTo(5 / 384, 9));
});

describe(`edges that cannot tilt (${origin("plate.clamped.uniform")})`, () => {
  test.each(Object.entries(reference("plate.clamped.uniform").values as Record<string, number>))(
    "long side %s short sides: %d q a⁴ / D within 0.5 %",
    (aspect, printed) => expect(off(coefficient(Number(aspect), "clamped"), printed)).toBeLessThan(0.005),
  );

  // Taylor and Govindjee, Solution of clamped rectangular plate problems (2004), from memory.
  test("a square one: 0.00126531909 within 1e-6", () =>
    expect(off(coefficient(1, "clamped"), 0.00126531909)).toBeLessThan(1e-6));

  test("a very long one sags, 1.4 short sides from its ends, by 0.27 % more than a built-in beam's 1/384", () =>
    expect(coefficient(1000, "clamped") * 384).toBeCloseTo(1.0027, 4));
});

describe("the series against finite differences", () => {
  const deepest = (aspect: number, edges: Edges, n: number): number =>
    Math.max(...plateByDifferences(aspect, edges, n).flat());
  const middle = (aspect: number, edges: Edges, n: number): number => plateByDifferences(aspect, edges, n)[0]![0]!;

  /** The error goes with the square and the fourth power of the step: three grids tell the limit (Richardson). */
  function limit(at: typeof middle, aspect: number, edges: Edges): number {
    const [coarse, fine, finest] = [8, 16, 32].map((n) => at(aspect, edges, n)) as [number, number, number];
    const [first, second] = [(4 * fine - coarse) / 3, (4 * finest - fine) / 3];
    return (16 * second - first) / 15;
  }

  test.each([
    ["held", 1],
    ["held", 1.5],
    ["held", 2.5],
    ["held", 4],
    ["clamped", 1],
    ["clamped", 1.5],
    ["clamped", 2],
    ["clamped", 2.5],
    ["clamped", 3],
  ] as const)("%s, long side %d short sides, deepest at the middle, within 2e-6", (edges, aspect) =>
    expect(off(coefficient(aspect, edges), limit(middle, aspect, edges))).toBeLessThan(2e-6),
  );

  test.each([3.5, 4, 5])("clamped, long side %d short sides, deepest beside the middle, within 1e-4", (aspect) => {
    expect(off(coefficient(aspect, "clamped"), limit(deepest, aspect, "clamped"))).toBeLessThan(1e-4);
    expect(coefficient(aspect, "clamped") / limit(middle, aspect, "clamped")).toBeGreaterThan(1.0001);
  });
});

describe(`thickness as measured (${origin("plywood.thickness")})`, () => {
  const bottom = (thickness: number) => ({
    width: ratio(18),
    depth: ratio(20),
    thickness: ratio(Math.round(thickness * 1000), 1000),
    stiffness: 1e6,
  });
  const sheets = Object.entries(reference("plywood.thickness").values as Record<string, number[]>);

  test.each(sheets)(
    "a sheet sold as %s sags by the cube of what it is thinner or thicker",
    (_, [least, most, label]) => {
      const at = (thickness: number) => sag(bottom(thickness), 30, "held", "in");
      expect(at(least!) / at(label!)).toBeCloseTo((label! / least!) ** 3, 9);
      expect(at(most!)).toBeLessThan(at(label!));
    },
  );

  test("the thinnest sheet sold as 1/4 in sags 1.5 times as much as 1/4 in would", () => {
    const [least] = (reference("plywood.thickness").values as Record<string, number[]>)["1/4"]!;
    expect(sag(bottom(least!), 30, "held", "in") / sag(bottom(0.25), 30, "held", "in")).toBeCloseTo(1.488, 3);
  });
});
