import { describe, expect, it } from "vitest";
import { createEngine } from "../../../src/workbook/engine";
import type { Book } from "../../../src/workbook/engine/engine";
import { bookOf, type Given } from "../support/sheet";

const FRACTION = "# ??/??";
const length = (basicValue: number) => ({ type: "Double", basicValue, numberFormat: FRACTION });

/** A length, a yield that happens to be the same number, and a table with both. */
const functions = {
  HALF: () => length(0.5),
  YIELD: () => 0.5,
  FAULTY: () => {
    throw new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, "No such drawer.");
  },
  /** Hands the first error that it is given on, as the functions do whose argument is a cell with an error. */
  THROUGH: (...given: unknown[]) => {
    if (given.flat(2).includes("#VALUE!")) throw new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue);
    if (given.flat(2).includes("#N/A")) throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable);
    throw new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, "No error was given.");
  },
  TABLE: () => [
    ["Part", "Length", "Yield"],
    ["Side", length(20), 0.5],
    ["Back", length(0.5), 0.25],
    ["Base", length(7), new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "No sheet fits.")],
  ],
};

/** The formats of a formula's cells beside these, row by row: F where they are the fraction's. */
function formats(formula: string, given: Given = {}, more: Partial<Book> = {}): string[] {
  return of("Z100", { ...given, Z100: formula }, more);
}

function of(address: string, given: Given, more: Partial<Book> = {}): string[] {
  const outcome = createEngine({ functions }).calculate(bookOf(given, more));
  const keys = Object.keys(given).filter((key) => /^\{?=/.test(String(given[key])));
  const result = outcome.results[keys.indexOf(address)]!;
  return result.values.map((row, y) =>
    row.map((_, x) => (result.formats?.[y]?.[x] === FRACTION ? "F" : (result.formats?.[y]?.[x] ?? "."))).join(""),
  );
}

const TABLE = "{=_xldudf_DRAWER_TABLE()";
const SPILLED = ["...", ".F.", ".F.", ".F."];

describe("a number format that a function of ours gives", () => {
  it("reaches its cell, and no other cell that holds the same number", () => {
    expect(formats("=_xldudf_DRAWER_HALF()")).toEqual(["F"]);
    expect(formats("=_xldudf_DRAWER_YIELD()", { A1: "=_xldudf_DRAWER_HALF()" })).toEqual(["."]);
    expect(formats(TABLE)).toEqual(SPILLED);
  });

  it.each([
    ["a cell", "=A1", ["F"]],
    ["a spilled range", "{=_xlfn.ANCHORARRAY(B1)", SPILLED],
    ["part of it", "{=C2:D3", ["F.", "F."]],
    ["one cell of it, in an older formula", "=@C$1:C$100", ["."]],
    ["a cell by its place", "=INDEX(B1:D4,2,2)", ["F"]],
    ["a cell that a text names", '=INDIRECT("C2")', ["F"]],
    ["a defined name", "=Wide", ["F"]],
    ["the branch that is chosen", "=IF(A1>9,A2,_xldudf_DRAWER_HALF())", ["F"]],
    ["the branch that is not chosen gives nothing", "=IF(A1<9,A2,_xldudf_DRAWER_HALF())", ["."]],
    ["branches cell by cell", "{=IF({TRUE;FALSE},A1,A2)", ["F", "."]],
    ["a value that is no error", '=IFERROR(_xldudf_DRAWER_HALF(),"")', ["F"]],
    ["what stands in for an error", "=IFERROR(1/0,A1)", ["F"]],
    ["a choice", "=CHOOSE(2,A2,A1)", ["F"]],
    ["a case", '=SWITCH("b","a",A2,"b",A1)', ["F"]],
    ["a case for all others", '=SWITCH("c","a",A2,A1)', ["F"]],
    ["the first that holds", "=_xlfn.IFS(FALSE,A2,TRUE,A1)", ["F"]],
    ["a name that LET gives", "=_xlfn.LET(_xlpm.w,_xldudf_DRAWER_HALF(),_xlpm.w)", ["F"]],
    ["a call of LAMBDA", "=_xlfn.LAMBDA(_xlpm.w,_xlpm.w)(A1)", ["F"]],
    ["each call of MAP", "{=_xlfn.MAP({1;2},_xlfn.LAMBDA(_xlpm.i,_xldudf_DRAWER_HALF()))", ["F", "F"]],
    ["stacked tables", `{=_xlfn.VSTACK(${TABLE.slice(2)},{1,2,3})`, [...SPILLED, "..."]],
    ["tables side by side", "{=_xlfn.HSTACK(A2,_xlfn.ANCHORARRAY(B1))", ["....", "..F.", "..F.", "..F."]],
    ["the first rows", "{=_xlfn.TAKE(_xlfn.ANCHORARRAY(B1),2)", ["...", ".F."]],
    ["all but the first row", "{=_xlfn.DROP(_xlfn.ANCHORARRAY(B1),1)", [".F.", ".F.", ".F."]],
    ["chosen columns", "{=_xlfn.CHOOSECOLS(_xlfn.ANCHORARRAY(B1),3,2)", ["..", ".F", ".F", ".F"]],
    ["rows as columns", "{=TRANSPOSE(C1:D3)", [".FF", "..."]],
    ["filtered rows", '{=_xlfn._xlws.FILTER(B1:D4,B1:B4="Back")', [".F."]],
    ["sorted rows", "{=_xlfn._xlws.SORT(B2:C4,2)", [".F", ".F", ".F"]],
    ["sorted columns", "{=_xlfn._xlws.SORT(C2:D3,1,1,TRUE)", [".F", ".F"]],
    ["rows sorted by others", "{=_xlfn.SORTBY(B2:C4,C2:C4)", [".F", ".F", ".F"]],
    ["rows that do not repeat", "{=_xlfn.UNIQUE(C2:D3)", ["F.", "F."]],
    ["what is looked up", '=_xlfn.XLOOKUP("Back",B1:B4,C1:C4)', ["F"]],
    ["what is looked up in a table", '=VLOOKUP("Back",B1:D4,2,FALSE)', ["F"]],
    ["the yield beside it", '=VLOOKUP("Side",B1:D4,3,FALSE)', ["."]],
    ["a plus sign", "=+A1", ["F"]],
  ])("goes on with a value that is handed on unchanged: %s", (_, formula, expected) => {
    const names = [{ name: "Wide", text: "_xldudf_DRAWER_HALF()" }];
    expect(formats(formula, { A1: "=_xldudf_DRAWER_HALF()", A2: 0.5, B1: TABLE }, { names })).toEqual(expected);
  });

  it.each(["=A1*2", "=A1+A1", "=-A1", "=SUM(A1,A1)", "=ROUND(_xldudf_DRAWER_HALF(),2)", "=A1&A1", "=A1>1"])(
    "does not pass to what is worked out anew: %s",
    (formula) => {
      expect(formats(formula, { A1: "=_xldudf_DRAWER_HALF()" })).toEqual(["."]);
    },
  );

  it("is gone where the formula no longer gives it", () => {
    expect(of("B1", { A1: 1, B1: '=IF(A1=1,"",_xldudf_DRAWER_HALF())' })).toEqual(["."]);
  });

  it("does not depend on which number it is: a yield and a length that are the same are told apart when sorted", () => {
    const outcome = createEngine({ functions }).calculate(
      bookOf({ A1: "=_xldudf_DRAWER_HALF()", A2: "=_xldudf_DRAWER_YIELD()", B1: "{=_xlfn._xlws.SORT(A1:A2)" }),
    );
    expect(outcome.results.find(({ column }) => column === 1)!.formats).toEqual([[FRACTION], [undefined]]);
  });

  it("may be that of a number which was typed", () => {
    const book = bookOf({ A1: 0.5, B1: "=A1" });
    book.sheets[0]!.cells.forEach((cell) => cell.column === 0 && (cell.format = FRACTION));
    expect(createEngine({ functions }).calculate(book).results[0]!.formats).toEqual([[FRACTION]]);
  });
});

describe("a message of a function of ours", () => {
  it.each([
    ["=A1", "No such drawer."],
    ['=IF(TRUE,A1,"")', "No such drawer."],
    ["{=_xlfn.TAKE(_xlfn.VSTACK(1,A1),-1)", "No such drawer."],
    ["{=_xlfn.TAKE(_xlfn.ANCHORARRAY(B1),-1,-1)", "No sheet fits."],
    ["{=_xlfn.VSTACK(_xldudf_DRAWER_FAULTY())", "No such drawer."],
    ["=_xldudf_DRAWER_THROUGH(1,A1)", "No such drawer."],
    ["=_xldudf_DRAWER_THROUGH(_xldudf_DRAWER_THROUGH(A1))", "No such drawer."],
    ["=_xldudf_DRAWER_THROUGH(_xlfn.ANCHORARRAY(B1))", "No sheet fits."],
    ["=_xldudf_DRAWER_THROUGH(_xlfn.ANCHORARRAY(B1),A1)", "No such drawer."],
    ["{=_xldudf_DRAWER_THROUGH(CHOOSE({1,2},1,A1))", "No such drawer."],
    ["=_xldudf_DRAWER_THROUGH(INDEX(A1:A2,1))", "No such drawer."],
  ])("goes on with its error: %s", (formula, message) => {
    const { results } = createEngine({ functions }).calculate(
      bookOf({ A1: "=_xldudf_DRAWER_FAULTY()", B1: TABLE, Z100: formula }),
    );
    expect(results[2]!.values[0]![0]).toMatchObject({ message });
  });

  it.each([
    ["the function has its own to give", "=_xldudf_DRAWER_THROUGH(1)", "No error was given."],
    ["an error of another kind comes first", "=_xldudf_DRAWER_THROUGH(1/0,A1*0)", "No such drawer."],
    ["the cell's error has none", "=_xldudf_DRAWER_THROUGH(NA(),A9)", undefined],
  ])("is never made up: %s", (_, formula, message) => {
    const { results } = createEngine({ functions }).calculate(
      bookOf({ A1: "=_xldudf_DRAWER_FAULTY()", Z100: formula }),
    );
    expect((results[1]!.values[0]![0] as { message?: string }).message).toBe(message);
  });
});
