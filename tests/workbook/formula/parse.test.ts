import { describe, expect, it } from "vitest";
import { parseFormula } from "../../../src/workbook/formula/parse";

describe("parseFormula(text)", () => {
  it("binds a sign tighter than a power, and powers from the left", () => {
    expect(parseFormula("-2^2")).toMatchObject({
      kind: "binary",
      operator: "^",
      left: { kind: "unary", operator: "-" },
    });
    expect(parseFormula("2^3^2")).toMatchObject({
      kind: "binary",
      left: { kind: "binary", operator: "^" },
      right: { value: 2 },
    });
  });

  it("takes the stored prefixes off names, but not those of custom functions", () => {
    expect(parseFormula("_xlfn._xlws.SORT(A1:A3)")).toMatchObject({ kind: "call", name: "SORT" });
    expect(parseFormula("_xlfn.LET(_xlpm.w,1,_xlpm.w)")).toMatchObject({
      name: "LET",
      args: [{ name: "w" }, {}, { name: "w" }],
    });
    expect(parseFormula("_xldudf_DRAWER_TAPE(A1)")).toMatchObject({ name: "_XLDUDF_DRAWER_TAPE" });
  });

  it("reads quoted sheet names with their apostrophes doubled", () => {
    expect(parseFormula("'Tea merchant''s chest'!$B2")).toMatchObject({
      kind: "reference",
      sheet: "Tea merchant's chest",
      from: { row: 1, column: 1, rowAbsolute: false, columnAbsolute: true },
    });
  });

  it.each([
    ["Parts[Width]", { items: [], first: "Width", last: "Width" }],
    ["Parts[[#This Row],[Width]]", { items: ["row"], first: "Width" }],
    ["Parts[@Width]", { items: ["row"], first: "Width" }],
    ["Parts[#All]", { items: ["all"] }],
    ["Parts[[#Headers],[#Data],[Length]:[Width]]", { items: ["headers", "data"], first: "Length", last: "Width" }],
    ["Parts[Size '[in']]", { first: "Size [in]" }],
    ["Parts[No'#]", { first: "No#" }],
    ["Parts[]", { items: [] }],
  ])("reads the table reference %s", (text, expected) => {
    expect(parseFormula(text)).toMatchObject({ kind: "table", table: "Parts", ...expected });
  });

  it("reads whole columns and rows, arrays, errors, texts with quotes, and arguments left out", () => {
    expect(parseFormula("SUM(A:B,3:3)")).toMatchObject({ args: [{ whole: "columns" }, { whole: "rows" }] });
    expect(parseFormula('{1,-2;"a",TRUE}')).toMatchObject({
      kind: "array",
      rows: [
        [{ value: 1 }, { kind: "unary" }],
        [{ value: "a" }, { value: true }],
      ],
    });
    expect(parseFormula("#N/A")).toMatchObject({ kind: "error", code: "#N/A" });
    expect(parseFormula('"23 7/16"""')).toMatchObject({ kind: "text", value: '23 7/16"' });
    expect(parseFormula("IF(,1,)")).toMatchObject({ args: [{ kind: "missing" }, { value: 1 }, { kind: "missing" }] });
  });

  it("takes a space between ranges as their intersection, and elsewhere as nothing", () => {
    expect(parseFormula("A1:C3 B2:D4")).toMatchObject({ kind: "join", operator: " " });
    expect(parseFormula("A1 + B1")).toMatchObject({ kind: "binary", operator: "+" });
  });

  it("marks references to other workbooks", () => {
    expect(parseFormula("[1]Sheet1!A1+1")).toMatchObject({ left: { kind: "external", text: "[1]Sheet1!A1" } });
    expect(parseFormula("'[2]My sheet'!A1")).toMatchObject({ kind: "external" });
  });

  it.each(["1+", "SUM(1", "A1:", ")", "{1,2;3}", '"open', "1 2"])("refuses %s", (text) => {
    expect(() => parseFormula(text)).toThrow(SyntaxError);
  });
});
