import { readFileSync } from "node:fs";
import { describe, expect, it, test } from "vitest";
import { formulaKind } from "../../../src/workbook/engine/formula-kind";
import { PROVEN_FUNCTIONS } from "../../../src/workbook/engine/proven";
import { isNewFunction } from "../../../src/workbook/engine/index";
import { signatureOf } from "../../../src/workbook/engine/library";
import { bookOf, results, type Given } from "../support/sheet";

/** The parts that the formulas of the folder are about. */
const BENCH: Given = Object.fromEntries(
  [
    ["Part", "Qty", "Length", "Date"],
    ["Side", 4, 22.5, 46351],
    ["Front", 2, 18.0625, 46352],
    ["Back", 2, 17.5, 46380],
    ["Bottom", 1, 9.25, 45000.75],
    ["Rail", 3, 8.125, 60],
  ].flatMap((row, y) => row.map((value, x) => [`${"ABCD"[x]}${y + 1}`, value])),
);

describe("formulaKind(stored)", () => {
  test.each([
    ["A1+SUM(B1:B3)*2", "plain"],
    ["IF(A1>2,ROUND(A1,1),B1)", "plain"],
    ["VLOOKUP(A1,B:C,2,FALSE)", "plain"],
    ["COUNTIF(A:A,B1)+SUMIF(A:A,B1,C:C)", "plain"],
    ["AND(A1:A3)", "plain"],
    ["DATE(A1,2,3)", "plain"],
    ["VLOOKUP(A1:A3,B:C,2,FALSE)", "dynamic"],
    ["COUNTIF(A:A,B1:B3)", "dynamic"],
    ["YEAR(A1:A3)", "dynamic"],
    ["SUM(B1:B3*2)", "dynamic"],
    ["SUM(IF(A1:A3>1,A1:A3))", "dynamic"],
    ["A1:A3", "dynamic"],
    ["INDEX(A:A,2)", "dynamic"],
    ["TRANSPOSE(A1:A3)", "dynamic"],
    ["FREQUENCY(A1:A3,B1:B2)", "dynamic"],
    ["_xldudf_DRAWER_BOXWIDTH(A1)", "dynamic"],
    ["_xlfn.SEQUENCE(3)", "dynamic"],
    ["SUM(_xlfn.ANCHORARRAY(A1))", "dynamic"],
    ["NOSUCH(A1)", "dynamic"],
  ])("%s is stored as a %s one", (stored, kind) => {
    expect(formulaKind(stored)).toBe(kind);
  });

  test("of each older function whose arguments are ranges is plain where ranges are given", () => {
    const older = [...PROVEN_FUNCTIONS].filter((name) => signatureOf(name) === "R" && !isNewFunction(name));
    expect(older.length).toBeGreaterThan(20);
    expect(older.filter((name) => formulaKind(`${name}(A1:A3)`) === "dynamic")).toEqual([]);
  });

  it("is plain only where the two kinds come out as the same", () => {
    const formulas = ["native-formulas.txt", "native-combinations.txt"].flatMap((name) =>
      readFileSync(new URL(`../../workbooks/${name}`, import.meta.url), "utf8").split("\n"),
    );
    const plain = formulas.filter((formula) => formula !== "" && formulaKind(formula) === "plain");
    expect(plain.length).toBeGreaterThan(150);
    const [older, newer] = ["=", "{="].map((mark) =>
      results(bookOf({ ...BENCH, ...Object.fromEntries(plain.map((formula, i) => [`Z${i + 50}`, mark + formula])) })),
    );
    expect(older).toEqual(newer);
  });
});
