import { describe, expect, test } from "vitest";
import { toStored } from "../../../src/workbook/edit/formula-text";
import { shifted, toTyped } from "../../../src/workbook/formula/typed-text";

const PAIRS: [typed: string, stored: string][] = [
  ["=A1+1", "A1+1"],
  ["=DRAWER.BOXWIDTH(A2)", "_xldudf_DRAWER_BOXWIDTH(A2)"],
  ['=DRAWER.LENGTH("DRAWER.LENGTH(A1#)")', '_xldudf_DRAWER_LENGTH("DRAWER.LENGTH(A1#)")'],
  ["=SUM(A1#)", "SUM(_xlfn.ANCHORARRAY(A1))"],
  ["=ROWS(Bench!$C$5#)-1", "ROWS(_xlfn.ANCHORARRAY(Bench!$C$5))-1"],
  ["=SUM('What if'!B10#)", "SUM(_xlfn.ANCHORARRAY('What if'!B10))"],
  ["=FILTER(A1:A3,A1:A3>2)", "_xlfn._xlws.FILTER(A1:A3,A1:A3>2)"],
  ["=XLOOKUP(1,A:A,B:B)", "_xlfn.XLOOKUP(1,A:A,B:B)"],
  ["=LET(gap,1/8,h,A1,h-gap)", "_xlfn.LET(_xlpm.gap,1/8,_xlpm.h,A1,_xlpm.h-_xlpm.gap)"],
  ["=MAP(A1:A3,LAMBDA(x,x*2))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2))"],
  ['=LOG10(A1)&"#"', 'LOG10(A1)&"#"'],
  ["=IF(A1=#N/A,1,TRUE)", "IF(A1=#N/A,1,TRUE)"],
  ["='it''s'!A1", "'it''s'!A1"],
  ["=ROWS(Widths#)", "ROWS(_xlfn.ANCHORARRAY(Widths))"],
  ["=SUM(INDEX(A1:A3,2)#)", "SUM(_xlfn.ANCHORARRAY(INDEX(A1:A3,2)))"],
  ["=LET(xyz1,2,xyz1*A1)", "_xlfn.LET(_xlpm.xyz1,2,_xlpm.xyz1*A1)"],
  ['="ANCHORARRAY(A1)"', '"ANCHORARRAY(A1)"'],
];

describe("a formula", () => {
  test.each(PAIRS)("%s is stored as %s, and read back as it was typed", (typed, stored) => {
    expect(toStored(typed)).toBe(stored);
    expect(toTyped(stored)).toBe(typed);
  });

  test("calls a function of ours in capitals, however it was typed", () => {
    expect(toStored("=drawer.boxwidth(a2)")).toBe("_xldudf_DRAWER_BOXWIDTH(a2)");
  });

  test("of a namespace or name that is not ours stays as it was typed", () => {
    expect(toStored("=OTHER.BOXWIDTH(A2)+DRAWER.NOSUCH(A2)")).toBe("OTHER.BOXWIDTH(A2)+DRAWER.NOSUCH(A2)");
  });

  test.each(
    'A1 $B$2 Bench!A1 #REF! Bench!#REF! Widths Parts[Width] INDEX(A1:A3,2) (A1:B2) (A1,B2) (-A1) {1,2} 5 "x" TRUE A1#'.split(
      " ",
    ),
  )("that asks for what %s spills is stored and read back", (operand) => {
    expect(toStored(`=SUM(${operand}#)`)).toMatch(/^SUM\(_xlfn\.ANCHORARRAY\(.*\)\)$/);
    expect(toTyped(toStored(`=SUM(${operand}#)`))).toBe(`=SUM(${operand}#)`);
  });

  test("keeps the function where a mark would say less", () => {
    for (const stored of [
      "_xlfn.ANCHORARRAY(A1:B2 C1)",
      "_xlfn.ANCHORARRAY(A1+1)",
      "_xlfn.ANCHORARRAY(-A1)",
      "_xlfn.ANCHORARRAY()",
    ])
      expect(toTyped(stored)).toBe(`=${stored.replace("_xlfn.", "")}`);
  });

  test("moves with its cell, but not where it is absolute or a text", () => {
    expect(shifted('A1+$B1+C$2+$D$3+Sheet2!E5&"A1"', 2, 1)).toBe('B3+$B3+D$2+$D$3+Sheet2!F7&"A1"');
    expect(shifted("LOG10(Z9)", 1, 1)).toBe("LOG10(AA10)");
    expect(shifted("SUM(A:$B,3:$4,Sheet2!C:C)", 2, 1)).toBe("SUM(B:$B,5:$4,Sheet2!D:D)");
    expect(shifted("Parts[A1]+Parts[[#This Row],[B2]]", 2, 1)).toBe("Parts[A1]+Parts[[#This Row],[B2]]");
    expect(shifted("B2", -2, -2)).toBe("XFD1048576");
  });
});
