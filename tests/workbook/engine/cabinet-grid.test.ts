import { describe, expect, it } from "vitest";
import * as functions from "../../../src/functions/index";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { createEngine } from "../../../src/workbook/engine/index";
import { bookOf, type Given } from "../support/sheet";

const CABINETS = [
  ["Cabinet", "Width", "Height", "Depth", "Columns", "Drawers"],
  ["Press", 36, 34.5, 24, 2, 4],
];
const STOCK = [
  ["Length", "Width", "Price"],
  [96, 48, 60],
];
const RATES = [
  ["slide price", 18],
  ["pull price", 6],
  ["screw price", 0.06],
];
const at = (column: string, rows: readonly (readonly (string | number)[])[]): Given =>
  Object.fromEntries(
    rows.flatMap((row, y) =>
      row.map((value, x) => [`${String.fromCharCode(column.charCodeAt(0) + x)}${y + 1}`, value] as const),
    ),
  );
const GIVEN = { ...at("A", CABINETS), ...at("H", STOCK), ...at("L", RATES) };
const worked = (formula: string, more: Given = {}): unknown[][] =>
  createEngine({ functions: OWN_FUNCTIONS })
    .calculate(bookOf({ ...GIVEN, ...more, Z100: `{=${formula}` }))
    .results.at(-1)!.values as unknown[][];

const price = (width: number, columns: number): unknown =>
  functions.PRICE(functions.OPENINGS([CABINETS[0]!, ["Press", width, 34.5, 24, columns, 4]]), [], STOCK, RATES);

describe("what OPENINGS gives goes straight into another function", () => {
  it("PLAN of it is the plan of the table that it spills", () => {
    expect(worked("_xldudf_DRAWER_PLAN(_xldudf_DRAWER_OPENINGS(A1:F2))")).toEqual(
      functions.PLAN(functions.OPENINGS(CABINETS)),
    );
  });

  it("one cell of a grid over widths and columns is one formula", () => {
    const cabinet = (width: string, columns: string) =>
      `_xlfn.VSTACK(A1:F1,_xlfn.HSTACK("Press",${width},34.5,24,${columns},4))`;
    for (const [width, columns] of [
      [36, 1],
      [48, 2],
      [60, 3],
    ] as const) {
      const formula = `_xldudf_DRAWER_PRICE(_xldudf_DRAWER_OPENINGS(${cabinet("P1", "Q1")}),,H1:J2,L1:M3)`;
      expect(worked(formula, { P1: width, Q1: columns })).toEqual([[price(width, columns)]]);
    }
  });

  it("numbers that come with a format, as a program passes them from one function to the next, are read as they are", () => {
    globalThis.drawerHost = { showsNumberFormats: true };
    try {
      const table = functions.OPENINGS(CABINETS);
      expect(table[1]![2]).toEqual({ type: "Double", basicValue: 16.875, numberFormat: "# ??/??" });
      expect(functions.PRICE(table, [], STOCK, RATES)).toBe(price(36, 2));
    } finally {
      globalThis.drawerHost = undefined;
    }
  });
});
