import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { OPENINGS, PLAN, WORKING } from "../../src/functions";
import { num, records, type Table } from "./jobs";

/** Whole numbers of a size no saw is set finer to: 64ths of an inch, tenths of a millimeter. */
const UNITS = { in: 64, mm: 10 } as const;
const job = fc.constantFrom<keyof typeof UNITS>("in", "mm").chain((unit) => {
  const scale = unit === "in" ? 1 : 25;
  const size = (min: number, max: number) =>
    fc.integer({ min: min * scale * UNITS[unit], max: max * scale * UNITS[unit] }).map((n) => n / UNITS[unit]);
  const cabinet = fc.record({
    Width: size(60, 120),
    Height: size(26, 40),
    Depth: size(18, 30),
    Columns: fc.oneof(
      fc.integer({ min: 1, max: 5 }),
      fc.constantFrom(
        "1 part; 2 parts",
        "1.5 parts; 1 part; 1 part",
        `${12 * scale} ${unit}; 1 part`,
        "2 parts; 5 parts",
      ),
    ),
    Drawers: fc.constantFrom(1, 3, "1 part; 2 parts"),
    "Toe kick": fc.oneof(fc.constant(""), size(3, 5)),
    "Back thickness": fc.oneof(fc.constant("none"), size(0, 1)),
    "Back inset": fc.oneof(fc.constant(""), size(0, 1)),
  });
  return fc.record({
    unit: fc.constant(unit),
    cabinets: fc.array(cabinet, { minLength: 1, maxLength: 3 }),
    construction: fc.constantFrom("frameless", "face frame"),
    thickness: size(1, 2),
    stile: size(1, 2),
    partition: fc.oneof(fc.constant(""), size(1, 2)),
  });
});

const tableOf = (cabinets: Record<string, string | number>[]): Table => [
  Object.keys(cabinets[0]!),
  ...cabinets.map((cabinet) => Object.values(cabinet)),
];

describe("laws of OPENINGS", () => {
  test("the outside of every cabinet comes back in WORKING as it was typed, to the last bit", () => {
    fc.assert(
      fc.property(job, ({ unit, cabinets, construction, thickness, stile, partition }) => {
        const standards = [
          ["unit", unit],
          ["construction", construction],
          ["cabinet thickness", thickness],
          ["stile width", stile],
          ["partition thickness", partition],
        ];
        const table = OPENINGS(tableOf(cabinets), standards);
        const rows = records(table);
        cabinets.forEach((cabinet, i) => {
          const own = rows.filter((row) => row["Cabinet"] === String(i + 1));
          for (const row of own) {
            const working = new Map(
              WORKING(table, `${String(row["Opening"])}1`, standards).map(([name, value]) => [name, value]),
            );
            for (const size of ["Width", "Height", "Depth"] as const)
              expect(working.get(`Cabinet outside ${size.toLowerCase()}`), size).toBe(cabinet[size]);
          }
        });
      }),
      { seed: 7, numRuns: 150 },
    );
  });

  test("every opening that is spilled is planned, and as many as there are columns", () => {
    fc.assert(
      fc.property(job, ({ unit, cabinets, construction }) => {
        const standards = [
          ["unit", unit],
          ["construction", construction],
        ];
        const table = OPENINGS(tableOf(cabinets), standards);
        const columns = cabinets.map(({ Columns }) =>
          typeof Columns === "number" ? Columns : Columns.split(";").length,
        );
        expect(table.length - 1).toBe(columns.reduce((a, b) => a + b));
        expect(
          new Set(
            PLAN(table, standards)
              .slice(1)
              .map(([, label]) => label),
          ).size,
        ).toBe(table.length - 1);
      }),
      { seed: 11, numRuns: 60 },
    );
  });

  test("a cabinet that is wider by so much has openings that are wider by so much in all", () => {
    fc.assert(
      fc.property(job, fc.integer({ min: 1, max: 64 }), ({ unit, cabinets }, more) => {
        const widths = (by: number) =>
          records(OPENINGS(tableOf(cabinets.map((one) => ({ ...one, Width: one.Width + by }))), [["unit", unit]]))
            .map((row) => num(row["Width"]))
            .reduce((a, b) => a + b);
        expect(widths(more) - widths(0)).toBeCloseTo(more * cabinets.length, 6);
      }),
      { seed: 13, numRuns: 60 },
    );
  });
});
