import { describe, expect, test } from "vitest";
import { formulaCall } from "../../src/shop-pages/formula-call";

const range = (address: string, sheet?: string, isSpilled = false) => ({
  range: { address, isSpilled, ...(sheet !== undefined && { sheet }) },
});

describe("formulaCall(formula)", () => {
  test("takes a call apart: ranges, what has spilled, texts, numbers, truths, and what is left out", () => {
    expect(formulaCall(`=DRAWER.LAYOUT('Cut list'!A5#,Prices!$A$4:$H$10,,-1.5,"quick")`)).toEqual({
      name: "LAYOUT",
      args: [
        range("A5", "Cut list", true),
        range("A4:H10", "Prices"),
        { value: undefined },
        { value: -1.5 },
        { value: "quick" },
      ],
    });
    expect(formulaCall('= @drawer.Plan( b2 , TRUE,"a ""b"", (c" )')).toEqual({
      name: "PLAN",
      args: [range("B2"), { value: true }, { value: 'a "b", (c' }],
    });
    expect(formulaCall("=DRAWER.PLAN('It''s (a), sheet'!A1:B2)")!.args).toEqual([range("A1:B2", "It's (a), sheet")]);
  });

  test("keeps what only the spreadsheet can work out as it stands, its commas too", () => {
    expect(formulaCall("=DRAWER.PLAN(VSTACK(A1:B2,D1:E2),openings,{1,2})")!.args).toEqual([
      { other: "VSTACK(A1:B2,D1:E2)" },
      { other: "openings" },
      { other: "{1,2}" },
    ]);
  });

  test.each([
    "=A1",
    "=DRAWER.PLAN(A1)+DRAWER.PLAN(B1)",
    "=SUM(DRAWER.PLAN(A1))",
    "DRAWER.PLAN(A1)",
    "=OTHER.PLAN(A1)",
    "=DRAWER.PLAN(A1",
  ])("knows no call in %s", (formula) => expect(formulaCall(formula)).toBeUndefined());
});
