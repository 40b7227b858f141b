import { describe, expect, it } from "vitest";
import { parseFormula } from "../../../src/workbook/formula/parse";
import { unquotedLength } from "../../../src/workbook/formula/unquoted-length";
import { value } from "../support/sheet";

describe("unquotedLength(formula)", () => {
  it.each([
    ["DRAWER.BOXWIDTH(24 1/16)", '"24 1/16"'],
    ["DRAWER.BOXWIDTH(24 1/16,0.5)", '"24 1/16"'],
    ["DRAWER.BOXWIDTH(A1, 1 1/2 )", '"1 1/2"'],
    ["DRAWER.BOXWIDTH(595 mm)", '"595 mm"'],
    ["DRAWER.BOXWIDTH(59.5cm)", '"59.5cm"'],
    ['DRAWER.BOXWIDTH(5 1/2")', '"5 1/2 in"'],
    ['DRAWER.BOXWIDTH(24", "wood runner")', '"24 in"'],
    ['DRAWER.BOXWIDTH(23-7/16")', '"23-7/16 in"'],
    ["DRAWER.TAPE(1' 11 7/16\")", '"1 ft 11 7/16 in"'],
    ["DRAWER.TAPE(2 ft 3 in)", '"2 ft 3 in"'],
    ["DRAWER.TAPE(1')", '"1 ft"'],
    ["DRAWER.BOXWIDTH(5½)", '"5½"'],
    ["DRAWER.BOXWIDTH(½)", '"½"'],
    ["DRAWER.FRONTHEIGHTS(27,5 1/2; 1 part; 2 parts)", '"5 1/2; 1 part; 2 parts"'],
    ["DRAWER.FRONTHEIGHTS(27,2 parts)", '"2 parts"'],
    ['IF(A1="24 mm",DRAWER.TAPE(7 1/2),"")', '"7 1/2"'],
    ["24 1/16", '"24 1/16"'],
  ])("%s wants %s", (formula, quoted) => {
    expect(() => parseFormula(formula)).toThrow(SyntaxError);
    expect(unquotedLength(formula)).toBe(quoted);
  });

  it.each(["DRAWER.BOXWIDTH(24,,", 'IF(A1,"24 1/16" "x")', "1 +* 2", "'2 in'!A1 +", "A1 B2)", "2 3"])(
    "says nothing of a formula that is wrong in another way: %s",
    (formula) => {
      expect(() => parseFormula(formula)).toThrow(SyntaxError);
      expect(unquotedLength(formula)).toBeUndefined();
    },
  );
});

describe("a formula that cannot be read", () => {
  it("tells what to type, and never how a file names a function", () => {
    expect(value("{=_xldudf_DRAWER_BOXWIDTH(24 1/16)")).toBe(
      'kept: holds a length without quotes. Type "24 1/16", with the quotes',
    );
    expect(value("_xldudf_DRAWER_BOXWIDTH(24 A)+1")).toBe(
      "kept: cannot be read: “,” is expected after “=DRAWER.BOXWIDTH(24 ”",
    );
    expect(value("_xldudf_DRAWER_NOSUCH(24)")).toBe("kept: calls DRAWER.NOSUCH, which is not known here");
  });
});
