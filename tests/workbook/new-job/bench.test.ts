import { describe, expect, test } from "vitest";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { CellError } from "../../../src/workbook/engine/index";
import { BENCH, DEFAULT_CHOICES, newJob } from "../../../src/workbook/new-job/index";
import type { Unit } from "../../../src/core/length/index";

/** What each sheet's tables show, by the sheet's name. */
function tablesOf(unit: Unit): Record<string, unknown[][]> {
  const workbook = new EditedWorkbook(writeWorkbook(newJob({ ...DEFAULT_CHOICES[unit], filled: BENCH[unit] })));
  const { results } = workbook.calculate();
  const errors = results.flatMap(({ values }) => values.flat()).filter((value) => value instanceof CellError);
  expect(errors).toEqual([]);
  const tables = results.filter(({ row, column }) => row === 4 && column === 0);
  return Object.fromEntries(tables.map(({ sheet, values }) => [workbook.sheets[sheet]!.name, values as unknown[][]]));
}

/** Columns of a table, by their headings, one row a drawer. */
const columns = ([headings, ...rows]: unknown[][], ...names: string[]): unknown[][] =>
  rows.map((row) => names.map((name) => row[headings!.indexOf(name)]));

describe("the parts bench as a new job", () => {
  // Worked by hand with exact fractions, as the example's own sheets are tested against.
  test("in inches is the example: every drawer as it was worked by hand", () => {
    const { Plan, Checks } = tablesOf("in") as Record<string, unknown[][]>;
    const names = ["Drawer", "Front width", "Front height", "Box width", "Box height", "Box depth", "Box bottom"];
    expect(columns(Plan!, ...names, "Inside width", "Inside height")).toEqual([
      ["A1", 19, 5.5, 17, 4, 22, 21.8125, 16, 3.375],
      ["A2", 19, 10.9375, 17, 9.5, 22, 10.75, 16, 8.875],
      ["A3", 19, 10.9375, 17, 9.5, 22, 0.5, 16, 8.875],
      ["B1", 24.625, 9.125, 23, 7.5, 22, 18.1875, 22, 6.875],
      ["B2", 24.625, 9.125, 23, 7.5, 22, 8.9375, 22, 6.875],
      ["B3", 24.625, 9.125, 23, 7.5, 22, 0.5, 22, 6.875],
      ["C1", 31, 9.125, 29, 7.75, 22, 18.1875, 27.5, 6.875],
      ["C2", 31, 18.375, 29, 16.75, 22, 0.5, 27.5, 15.875],
    ]);
    expect(columns(Checks!, "Level").flat()).not.toContain("wrong");
  });

  test("has a twin in millimeters, in round sizes of its own", () => {
    const { Plan, Checks, "Cut list": cutList, Hardware: hardware } = tablesOf("mm") as Record<string, unknown[][]>;
    // 12.7 mm beside each box are what side-mount slides take (common practice).
    expect(columns(Plan!, "Drawer", "Box width", "Box depth")).toEqual(
      ["A1", "A2", "A3", "B1", "B2", "B3", "C1", "C2"].map((drawer) => [
        drawer,
        { A: 424.6, B: 574.6, C: 724.6 }[drawer[0]!],
        550,
      ]),
    );
    for (const [height] of columns(Plan!, "Box height")) expect(Number(height) % 5).toBe(0);
    expect(columns(Plan!, "Front height")[0]).toEqual([140]);
    const bottoms = columns(cutList!, "Part", "Thickness").filter(([part]) => part === "Bottom");
    expect(new Set(bottoms.map(([, thickness]) => thickness))).toEqual(new Set([6, 12]));
    // A front 140 high, less a band of 1 on either edge.
    const fronts = columns(cutList!, "Part", "Drawer", "Length").filter(([part]) => part === "Front");
    expect(fronts[0]).toEqual(["Front", "A1", 138]);
    // 550 less box front and back of 12, more two dadoes 3 deep, less a play of 0.8.
    const dividers = columns(cutList!, "Part", "Drawer", "Qty", "Length").filter(([part]) => part === "Divider");
    expect(dividers).toEqual([
      ["Divider", "A1", 3, 531.2],
      ["Divider", "B1", 2, 531.2],
    ]);
    // Twice width and height of each front: 614 + 2 × 750 + 845 + 2 × 846 + 1005 + 1238, doubled, in tenths of a meter.
    const bought = columns(hardware!, "Item", "Qty", "Unit").filter(([item]) => String(item).startsWith("Edge band"));
    expect(bought).toEqual([["Edge band", 13.8, "meter"]]);
    expect(columns(Checks!, "Level").flat()).not.toContain("wrong");
  });
});
