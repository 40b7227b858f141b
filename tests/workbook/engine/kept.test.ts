import { describe, expect, it } from "vitest";
import { createEngine } from "../../../src/workbook/engine";
import { bookOf, results, value, type Given } from "../support/sheet";

describe("what cannot be worked out keeps its stored value and is listed", () => {
  it.each([
    ["CUBEVALUE(1)", "calls CUBEVALUE, which is not known here"],
    ["IF(FALSE,CUBEVALUE(1),2)", "calls CUBEVALUE, which is not known here"],
    ["_xldudf_OTHER_CUT(1)", "calls OTHER.CUT, which is not known here"],
    ["DRAWER.BOXWIDTH(1)", "calls DRAWER.BOXWIDTH, which is not known here"],
    ["[1]Sheet1!A1*2", "refers to another workbook, [1]Sheet1!A1"],
    ["1+", "cannot be read: A value is expected after “=1+”"],
    ['"11/12/2026"+0', "reads the text “11/12/2026” as a number, which depends on the country"],
    ["Z100+1", "refers to itself in a circle"],
    ["IF(TRUE,1,Z100)", "refers to itself in a circle"],
    ['INDIRECT("Z100")', "refers to itself in a circle"],
  ])("=%s", (formula, reason) => {
    expect(value(formula)).toBe(`kept: ${reason}`);
  });

  it("cells that depend on a kept one use its stored value", () => {
    const book = bookOf({ A1: "=CUBEVALUE(1)", B1: "=A1*2" });
    book.sheets[0]!.cells.get(0)!.value = 21;
    expect(results(book).B1).toBe(42);
  });

  it("every cell of a circle is listed, the cells beside it are worked out", () => {
    const shown = results(bookOf({ A1: "=B1+1", B1: "=C1+1", C1: "=A1+1", D1: "=1+1", E1: "=A1+1" }));
    const circle = "kept: refers to itself in a circle";
    expect(shown).toMatchObject({ A1: circle, B1: circle, C1: circle, D1: 2, E1: 1 });
  });

  it("circles that share cells are listed whole, whatever the order", () => {
    const circle = "kept: refers to itself in a circle";
    const shown = results(
      bookOf({ A1: "=SUM(B1:C1)", B1: "=A1", C1: "=SUM(B1:B2)", D1: "=SUM(B1:C1)", B2: 7, E1: "=SUM(B2:B3)" }),
    );
    expect(shown).toEqual({ A1: circle, B1: circle, C1: circle, D1: 0, E1: 7 });
  });

  it("a circle through a range that another of its cells reads too is listed whole", () => {
    const circle = "kept: refers to itself in a circle";
    const shown = results(bookOf({ A1: "=SUM(B1:B2)+C1", B1: "=A1", C1: "=SUM(B1:B2)" }));
    expect(shown).toEqual({ A1: circle, B1: circle, C1: circle });
  });

  it("a range that is too large to go through is not gone through", () => {
    expect(value("COUNTIF(A1:Y1048576,1)", { XFD1048576: 1 })).toMatch(/^kept: reads 26214400 cells at once/);
    expect(value("SUM(A:A)", { A1048576: 1, A1: 2 })).toBe(3);
  });

  it("names the functions that are missing, once each", () => {
    const book = bookOf({ A1: "=CUBESET(1)+CUBEVALUE(1)+CUBESET(2)" });
    const [kept] = createEngine({ functions: {} }).calculate(book).kept;
    expect(kept!.functions).toEqual(["CUBESET", "CUBEVALUE"]);
  });

  it("a spill that drives itself on and on is given up after twenty rounds", () => {
    const given: Given = { A1: "{=_xlfn.SEQUENCE(COUNT(C1:C400)+1)", C1: "{=_xlfn.SEQUENCE(COUNT(A1:A400)+1)" };
    const outcome = createEngine({ functions: {} }).calculate(bookOf(given));
    expect(outcome.kept.length).toBeGreaterThan(0);
    expect(outcome.rounds).toBeLessThanOrEqual(20);
  });
});
