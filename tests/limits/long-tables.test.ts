import { describe, expect, test } from "vitest";
import { ALTERNATES, CUTS, LAYOUT, MOUNTING, PARTS, PLAN, SHEETS } from "../../src/functions";
import { createEngine } from "../../src/workbook/engine";
import { bookOf, type Given } from "../workbook/support/sheet";

type Call = (...args: unknown[]) => unknown;

const long = (headings: string[], row: unknown[], count: number): unknown[][] => [
  headings,
  ...Array.from({ length: count }, () => row),
];
const openings = (count: number) => long(["Width", "Height", "Depth", "Drawers"], [24, 26.25, 23.25, 1], count);
const parts = (count: number) => long(["Part", "Length", "Width", "Qty"], ["Side", 22, 8, 1], count);
const stock = (count: number) => long(["Length", "Width"], [96, 48], count);
const standards = (count: number) => long(["Standard", "Value"], ["Gap", 0.125], count);

describe("a table that is longer than is planned at once is refused before anything is worked out", () => {
  test.each<[string, unknown, unknown[]]>([
    ["openings", PLAN, [openings(100_000)]],
    ["openings", PARTS, [openings(100_000)]],
    ["openings", MOUNTING, [openings(100_000)]],
    ["standards", PLAN, [openings(1), standards(100_000)]],
    ["standards", ALTERNATES, [openings(1), long(["Standard", "Now", "Then"], ["Gap", 0.125, 0.25], 100_000)]],
    ["parts", CUTS, [parts(100_000), stock(1)]],
    ["parts", SHEETS, [parts(100_000), stock(1)]],
    ["stock", LAYOUT, [parts(1), stock(100_000)]],
  ])("%s: %o", (table, call, args) => {
    expect(() => (call as Call)(...args)).toThrow(`${table} has 100,000 rows. At most 5,000 are planned at once.`);
  });

  test("rows that hold nothing, or the zeros that some hosts pass for nothing, are none", () => {
    const rows = [...openings(1), ...Array.from({ length: 200_000 }, (_, i) => [i % 2 ? 0 : "", 0, null, 0])];
    expect((PLAN as Call)(rows)).toHaveLength(2);
  });

  test("in a workbook, the cell has the message", () => {
    const given: Given = { F1: "=_xldudf_DRAWER_PLAN(A:D)" };
    openings(20_000).forEach((row, i) =>
      row.forEach((cell, c) => (given[`${"ABCD"[c]}${i + 1}`] = cell as string | number)),
    );
    const { results } = createEngine({ functions: { PLAN: PLAN as Call } }).calculate(bookOf(given));
    expect(results[0]!.values[0]![0]).toMatchObject({
      code: "#VALUE!",
      message: "openings has 20,000 rows. At most 5,000 are planned at once.",
    });
  });
});
