import { describe, expect, test } from "vitest";
import { wakingFormula } from "../../src/taskpane/waking-formula";

const NAMES = new Set(["BOXWIDTH", "PLAN"]);
const waking = (formula: unknown) => wakingFormula(formula, NAMES);

describe("wakingFormula", () => {
  test.each([
    ["=DRAWER.BOXWIDTH(24)"],
    ["=drawer.boxwidth( A1 )"],
    ["=ROUND(2*DRAWER.BOXWIDTH (A1), 2)"],
    ["=LET(x, DRAWER.PLAN(A1#), TAKE(x, 1))"],
    [`='It''s "mine"'!A1 + DRAWER.BOXWIDTH("24")`],
  ])("is the formula itself where it calls a function of ours: %s", (formula) => expect(waking(formula)).toBe(formula));

  test("is what was typed where the program shows the name as the file holds it", () => {
    expect(waking("=_xldudf_DRAWER_BOXWIDTH(24)+_xldudf_DRAWER_PLAN(A1)")).toBe("=DRAWER.BOXWIDTH(24)+DRAWER.PLAN(A1)");
    expect(waking('=_xldudf_DRAWER_BOXWIDTH("_xldudf_DRAWER_PLAN(1)")')).toBe(
      '=DRAWER.BOXWIDTH("_xldudf_DRAWER_PLAN(1)")',
    );
  });

  test.each([
    ["=DRAWER.NOSUCH(24)"],
    ['="DRAWER.BOXWIDTH(24)"&foo'],
    ["='DRAWER.PLAN('!A1"],
    ["=MYDRAWER.BOXWIDTH(24)"],
    ["=X.DRAWER.BOXWIDTH(24)"],
    ["=DRAWER.BOXWIDTH"],
    ["=foo(1)"],
    ["DRAWER.BOXWIDTH(24)"],
    ["#NAME?"],
    [""],
    [5],
  ])("is none where none of ours is called: %j", (formula) => expect(waking(formula)).toBeUndefined());
});
