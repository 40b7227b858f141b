import { describe, expect, it, test } from "vitest";
import { sheetOf, bookOf, results, value } from "../support/sheet";

/** What it shows is told by the program's documentation: the formula as the formula bar has it, #N/A without one. */
describe("FORMULATEXT", () => {
  it("gives a formula as it is typed: functions without prefixes, ours with their namespace, spills with their mark", () => {
    const given = {
      A1: "=SUM(B1:B3)*2",
      A2: "{=_xlfn._xlws.FILTER(B1:B3,B1:B3>1)",
      A9: '=_xldudf_DRAWER_BOXWIDTH(B1,,"in")',
      A10: "{=SUM(_xlfn.ANCHORARRAY(A2))",
      B1: 1,
      B2: 2,
      B3: 3,
    };
    expect(value("_xlfn.FORMULATEXT(A1)", given)).toBe("=SUM(B1:B3)*2");
    expect(value("_xlfn.FORMULATEXT($A$2)", given)).toBe("=FILTER(B1:B3,B1:B3>1)");
    expect(value("_xlfn.FORMULATEXT(A10)", given)).toBe("=SUM(A2#)");
  });

  it("is #N/A of what holds no formula, and gives its own without a circle", () => {
    expect(value("_xlfn.FORMULATEXT(A1)", { A1: 5 })).toBe("#N/A");
    expect(value("_xlfn.FORMULATEXT(A1)")).toBe("#N/A");
    expect(value("{=_xlfn.FORMULATEXT(Z100)")).toBe("=FORMULATEXT(Z100)");
  });

  test.each([
    ["a range of several cells", "_xlfn.FORMULATEXT(A1:A2)", {}],
    ["a cell that another's array fills", "_xlfn.FORMULATEXT(A2)", { A1: "{=_xlfn.SEQUENCE(3)" }],
    ["a formula of an older kind that would spill today", "_xlfn.FORMULATEXT(A1)", { A1: "=B1:B3" }],
    ["a formula that is shown otherwise than it is stored", "_xlfn.FORMULATEXT(A1)", { A1: "{=_xlfn.SINGLE(B1:B3)" }],
  ])("keeps the file's value for %s", (_, formula, given) => {
    expect(value(formula, given)).toMatch(/^kept: calls FORMULATEXT with /);
  });
});

/** By the program's documentation. */
describe("CELL", () => {
  it("tells the place and the contents of a range's first cell", () => {
    const given = { B3: "oak", C4: 7 };
    expect(value('CELL("address",B3:C4)', given)).toBe("$B$3");
    expect(value('CELL("row",B3:C4)', given)).toBe(3);
    expect(value('CELL("COL",B3:C4)', given)).toBe(2);
    expect(value('CELL("contents",B3:C4)', given)).toBe("oak");
    expect(value('CELL("contents",OFFSET(B3,1,1))', given)).toBe(7);
  });

  it("follows what its reference leads to", () => {
    expect(value('CELL("address",INDEX(A1:C9,4,2))')).toBe("$B$4");
    expect(value('CELL("row",5)')).toBe("#VALUE!");
    expect(value("CELL(1/0,A1)")).toBe("#DIV/0!");
  });

  it("keeps the file's value for what hangs on the file, the window or the last change", () => {
    for (const formula of [
      'CELL("filename",A1)',
      'CELL("width",A1)',
      'CELL("address")',
      'CELL("contents",A1)',
      'CELL("shape",A1)',
    ])
      expect(value(formula), formula).toMatch(/^kept: calls CELL with /);
    const other = bookOf({ A1: '=CELL("address",Rates!B2)' });
    other.sheets.push(sheetOf("Rates", {}));
    expect(results(other)["A1"]).toMatch(/^kept: calls CELL with the address of a cell of another sheet/);
  });
});
