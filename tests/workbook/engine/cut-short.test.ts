import { describe, expect, test } from "vitest";
import { bookOf, results, value } from "../support/sheet";

describe("a formula about cells beyond those in use is worked out to the end of its ranges", () => {
  test.each<[string, unknown]>([
    ["{=SUM(ROW(A1:A50000))", 1_250_025_000],
    ["SUMPRODUCT(COLUMN(A1:XFD1)*1)", 134_225_920],
    ["SUMPRODUCT(ROW(A:A)*0)", 0],
    ['SUMPRODUCT(MID("12345",ROW(INDIRECT("1:5")),1)*1)', 15],
    ['SUMPRODUCT(--(A1:A100=""))', 98],
    ["SUMPRODUCT(--ISBLANK(A1:A100))", 98],
    ["SUMPRODUCT(A1:A100-5)", -497],
    ["SUMPRODUCT((A1:A100>1)*ROW(A1:A100))", 2],
    ['SUMPRODUCT((A:A<>"")*ROW(A:A))', 3],
    ["SUMPRODUCT((A1:A100>0)*(ROW(A1:A100)>1)*A1:A100)", 2],
    ["SUMPRODUCT(A1:A100*2)", 6],
  ])("%s", (formula, expected) => {
    expect(value(formula, { A1: 1, A2: 2 })).toBe(expected);
  });

  test("an array that spills is as long as its range", () => {
    const shown = results(bookOf({ A1: 1, A2: 2, C1: '{=IF(A1:A9="","none",A1:A9)' }));
    expect(shown.C1).toEqual([[1], [2], ...Array.from({ length: 7 }, () => ["none"])]);
  });

  test("a range that is too long for that keeps its value", () => {
    expect(value('SUMPRODUCT(--(A1:Y1000000=""))', { A1: 1 })).toMatch(/^kept: makes an array of 25000000 cells/);
  });
});
