import { describe, expect, it } from "vitest";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { CellError, createEngine } from "../../../src/workbook/engine/index";
import { bookOf, type Given } from "../support/sheet";

/** A table from a cell on, row by row. */
const table = (top: number, rows: (string | number | null)[][]): Given =>
  Object.fromEntries(
    rows.flatMap((row, y) => row.map((value, x) => [`${String.fromCharCode(65 + x)}${top + y}`, value] as const)),
  );

const OPENINGS = [
  ["Opening", "Width", "Height", "Depth", "Drawers"],
  ["A", 18, 26.25, 23.25, 3],
  ["B", "wide", 26.25, 23.25, 3],
];

/** What the first error of a formula says, or its first text that names a row. */
function said(formula: string, given: Given): string | undefined {
  const { results } = createEngine({ functions: OWN_FUNCTIONS }).calculate(bookOf({ ...given, Z100: `{=${formula}` }));
  const cells = results.at(-1)!.values.flat();
  const error = cells.find((value) => value instanceof CellError) as CellError | undefined;
  return error ? error.message : (cells.find((value) => typeof value === "string" && /row/.test(value)) as string);
}

describe("a message names the row of the sheet as well as that of the table", () => {
  it.each(["PLAN", "PARTS", "PIECES", "MOUNTING", "FIT", "HARDWARE", "SETUPS"])("%s(openings)", (name) => {
    expect(said(`_xldudf_DRAWER_${name}(A5:E7)`, table(5, OPENINGS))).toMatch(
      /^openings, row 3 \(row 7 of the sheet\), Width is "wide", which is no length\./,
    );
  });

  it("OPENINGS(cabinets)", () => {
    const cabinets = [
      ["Width", "Height", "Depth", "Columns", "Drawers"],
      [40, 30, 23, "two", 3],
    ];
    expect(said("_xldudf_DRAWER_OPENINGS(A5:E6)", table(5, cabinets))).toContain(
      "cabinets, row 2 (row 6 of the sheet), Columns",
    );
  });

  it("CHECKS(openings), in its findings", () => {
    expect(said("_xldudf_DRAWER_CHECKS(A5:E7)", table(5, OPENINGS))).toContain("openings, row 3 (row 7 of the sheet)");
  });

  it("in standards and rates, and where two rows are named", () => {
    const good = table(1, OPENINGS.slice(0, 2));
    const standards = (...rows: [string, string | number][]) => ({ ...good, ...table(11, rows) });
    const plan = "_xldudf_DRAWER_PLAN(A1:E2,A11:B12)";
    expect(said(plan, standards(["unit", "in"], ["kerv", 1]))).toContain("standards, row 2 (row 12 of the sheet)");
    expect(said(plan, standards(["kerf", 1], ["Kerf", 1]))).toContain("in rows 1 and 2 (rows 11 and 12 of the sheet)");
    expect(said('_xldudf_DRAWER_WORKING(A1:E2,"A1",A11:B12)', standards(["unit", "in"], ["kerv", 1]))).toContain(
      "standards, row 2 (row 12 of the sheet)",
    );
  });

  it("in parts and stock", () => {
    const given = {
      ...table(5, [
        ["Length", "Width", "Qty"],
        [20, "wide", 1],
      ]),
      ...table(21, [
        ["Length", "Width"],
        [96, 48],
        [96, "wide"],
      ]),
    };
    expect(said("_xldudf_DRAWER_SHEETS(A5:C6,A21:B22)", given)).toContain("parts, row 2 (row 6 of the sheet), Width");
    expect(said('_xldudf_DRAWER_SHEETS(_xlfn.VSTACK({"Length","Width","Qty"},{20,9,1}),A21:B23)', given)).toContain(
      "stock, row 3 (row 23 of the sheet), Width",
    );
  });

  it("but not where both are one, or where a formula made the table", () => {
    expect(said("_xldudf_DRAWER_PLAN(A1:E3)", table(1, OPENINGS))).toMatch(/^openings, row 3, Width/);
    expect(said("_xldudf_DRAWER_PLAN(_xlfn.VSTACK(A5:E7))", table(5, OPENINGS))).toMatch(/^openings, row 3, Width/);
  });

  it("each in its own words where equal tables stand in several places", () => {
    const given = { ...table(5, OPENINGS), ...table(21, OPENINGS) };
    expect(said("_xldudf_DRAWER_PARTS(A5:E7)", given)).toContain("(row 7 of the sheet)");
    expect(said("_xldudf_DRAWER_PARTS(A21:E23)", given)).toContain("(row 23 of the sheet)");
  });
});
