import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { WORKING } from "../../src/functions";

const sixteenths = (min: number, max: number) => fc.integer({ min: min * 16, max: max * 16 }).map((n) => n / 16);
const job = fc.record({
  width: sixteenths(10, 40),
  height: sixteenths(6, 20),
  depth: sixteenths(13, 29),
  side: fc.constantFrom(0.5, 0.625, 0.75),
  bottom: fc.constantFrom<number>(0.25, 0.375, 0.5),
  load: fc.integer({ min: 1, max: 150 }),
});
type Job = typeof job extends fc.Arbitrary<infer T> ? T : never;

const estimates = (table: unknown[][], standards: unknown[][]): Map<string, number> =>
  new Map(
    WORKING(table, "A1", standards)
      .filter(([name]) => /^(Load|Drawer's|Slide rating|Bottom sags)/.test(String(name)))
      .map(([name, value]) => [String(name).replace(/, .*/, ""), value as number]),
  );
const inInches = ({ width, height, depth, side, bottom, load }: Job, more: unknown[][] = []): Map<string, number> =>
  estimates(
    [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Load"],
      ["A", width, height, depth, 1, load],
    ],
    [["side thickness", side], ["bottom thickness", bottom], ...more],
  );
const NONE = Infinity;

describe("laws of loads", () => {
  test("a heavier load never needs a lower rating", () => {
    fc.assert(
      fc.property(job, fc.integer({ min: 0, max: 100 }), (one, more) => {
        const rating = (load: number) => inInches({ ...one, load }).get("Slide rating needed") ?? NONE;
        expect(rating(one.load + more)).toBeGreaterThanOrEqual(rating(one.load));
      }),
      { seed: 23, numRuns: 150 },
    );
  });

  test("a thicker bottom never sags more, and makes the drawer no lighter", () => {
    fc.assert(
      fc.property(job, (one) => {
        const [thin, thick] = [inInches(one), inInches({ ...one, bottom: one.bottom + 0.125 })];
        expect(thick.get("Bottom sags")!).toBeLessThanOrEqual(thin.get("Bottom sags") ?? NONE);
        expect(thick.get("Drawer's own weight")!).toBeGreaterThan(thin.get("Drawer's own weight")!);
      }),
      { seed: 29, numRuns: 100 },
    );
  });

  test("the same drawer in millimeters carries, weighs and sags the same, to 1e-9", () => {
    const KG = 0.45359237;
    fc.assert(
      fc.property(job, (one) => {
        const mm = (inches: number): number => Math.round(inches * 25.4 * 1e9) / 1e9;
        const common: [string, string][] = [
          ["groove depth", "1/4 in"],
          ["groove offset", "3/8 in"],
          ["bottom play", "1/16 in"],
          ["space below", "1/2 in"],
          ["space above", "1/4 in"],
          ["height step", "1/8 in"],
          ["front thickness", "3/4 in"],
          ["cabinet thickness", "3/4 in"],
          ["top reveal", "1/8 in"],
          ["end reveal", "1/16 in"],
          ["front step", "1/16 in"],
          ["side clearance", "1/2 in"],
          ["rear clearance", "1/2 in"],
          ["slide lengths", "12 in; 16 in; 20 in; 24 in; 28 in"],
        ];
        const inches = inInches(one, common);
        const metric = estimates(
          [
            ["Opening", "Width", "Height", "Depth", "Drawers", "Load"],
            ["A", mm(one.width), mm(one.height), mm(one.depth), 1, `${one.load} lb`],
          ],
          [["unit", "mm"], ["side thickness", mm(one.side)], ["bottom thickness", mm(one.bottom)], ...common],
        );
        const near = (name: string, factor: number): void => {
          const [a, b] = [inches.get(name), metric.get(name)];
          expect(a === undefined, name).toBe(b === undefined);
          if (a !== undefined) expect(Math.abs(b! / factor / a - 1), name).toBeLessThan(1e-9);
        };
        near("Load", KG);
        near("Drawer's own weight", KG);
        near("Bottom sags", 25.4);
      }),
      { seed: 31, numRuns: 100 },
    );
  });
});
