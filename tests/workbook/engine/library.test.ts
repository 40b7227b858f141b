import { describe, expect, it } from "vitest";
import { value } from "../support/sheet";

const CHEST = { A1: 3, A2: 1, A3: 2, A4: 1, B1: "b", B2: "a", B3: "C", B4: "a", D1: "7/16-x-12" };
const array = (formula: string) => value(`{=${formula}`, CHEST);

describe("arrays", () => {
  it.each<[string, unknown]>([
    [
      "_xlfn._xlws.SORT(A1:B4,{1,2},{-1,1})",
      [
        [3, "b"],
        [2, "C"],
        [1, "a"],
        [1, "a"],
      ],
    ],
    ["_xlfn._xlws.SORT(B1:B4)", [["a"], ["a"], ["b"], ["C"]]],
    ["_xlfn._xlws.SORT({3,1,2},1,1,TRUE)", [[1, 2, 3]]],
    ["_xlfn.SORTBY(B1:B4,A1:A4,1,B1:B4,-1)", [["a"], ["a"], ["C"], ["b"]]],
    ['_xlfn.UNIQUE({"a";"A";"b"})', [["a"], ["b"]]],
    ["_xlfn.UNIQUE(B1:B4,FALSE,TRUE)", [["b"], ["C"]]],
    ['_xlfn._xlws.FILTER(B1:B4,A1:A4=1,"none")', [["a"], ["a"]]],
    ["_xlfn.TAKE(A1:B4,-1)", [[1, "a"]]],
    ["_xlfn.DROP(A1:B4,2,1)", [["C"], ["a"]]],
    [
      "_xlfn.VSTACK(A1:B1,A2)",
      [
        [3, "b"],
        [1, "#N/A"],
      ],
    ],
    [
      "_xlfn.HSTACK(A1:A2,B1:B2)",
      [
        [3, "b"],
        [1, "a"],
      ],
    ],
    [
      "_xlfn.CHOOSECOLS(A1:B2,2,1)",
      [
        ["b", 3],
        ["a", 1],
      ],
    ],
    ["_xlfn.TOCOL(A1:B2)", [[3], ["b"], [1], ["a"]]],
    [
      "_xlfn.WRAPROWS(A1:A3,2)",
      [
        [3, 1],
        [2, "#N/A"],
      ],
    ],
    [
      "_xlfn.EXPAND(A1:A2,2,2,0)",
      [
        [3, 0],
        [1, 0],
      ],
    ],
    ["_xlfn.BYROW(A1:A2,_xlfn.LAMBDA(_xlpm.r,SUM(_xlpm.r)*2))", [[6], [2]]],
    ["_xlfn.SCAN(0,A1:A3,_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b))", [[3], [4], [6]]],
    ["_xlfn.REDUCE(0,A1:A3,_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b))", 6],
    [
      "_xlfn.MAKEARRAY(2,2,_xlfn.LAMBDA(_xlpm.r,_xlpm.c,_xlpm.r*10+_xlpm.c))",
      [
        [11, 12],
        [21, 22],
      ],
    ],
    ["_xlfn.XLOOKUP({1;2},A1:A4,B1:B4)", [["a"], ["C"]]],
    ["_xlfn.XLOOKUP(1,A1:A4,A1:B4)", [[1, "a"]]],
    ["SUM(A1:_xlfn.XLOOKUP(2,A1:A4,A1:A4))", 6],
    ["VLOOKUP({1;3},A1:B4,2,FALSE)", [["a"], ["b"]]],
    [
      "INDEX(A1:B4,{1;3},{1,2})",
      [
        [3, "b"],
        [2, "C"],
      ],
    ],
    ["COUNTIF(B1:B4,B1:B2)", [[1], [2]]],
    ['IFERROR(A1:A2/{1;0},"none")', [[3], ["none"]]],
    [
      "CHOOSE({1,2},A1:A2,B1:B2)",
      [
        [3, "b"],
        [1, "a"],
      ],
    ],
    [
      "A1:A2+{10,20}",
      [
        [13, 23],
        [11, 21],
      ],
    ],
    ["A1:A3*{1;2}", [[3], [2], ["#N/A"]]],
    ["LARGE(A1:A4,{1,2})", [[3, 2]]],
    ["FREQUENCY(A1:A4,{1,2})", [[2], [1], [1]]],
  ])("=%s", (formula, expected) => {
    expect(array(formula)).toEqual(expected);
  });

  it("pieces of a text stay texts", () => {
    expect(array('_xlfn.TEXTSPLIT(D1,"-")')).toEqual([["7/16", "x", "12"]]);
    expect(array('_xlfn.TEXTSPLIT("a=1;b","=",";",,,"")')).toEqual([
      ["a", "1"],
      ["b", ""],
    ]);
    expect(array('_xlfn.TEXTAFTER(D1,"-",2)')).toBe("12");
    expect(array("_xlfn.VSTACK(D1,A1)")).toEqual([["7/16-x-12"], [3]]);
  });

  it("an array larger than the memory bears is not made", () => {
    expect(array("_xlfn.SEQUENCE(1048576,16384)")).toBe(
      "kept: makes an array of 17179869184 cells; at most 2000000 are made by one function here",
    );
  });
});

describe("criteria", () => {
  it.each<[string, number]>([
    ['COUNTIF(B1:B4,"A")', 2],
    ['COUNTIF(B1:B4,"<>a")', 2],
    ['COUNTIF(B1:B5,"")', 1],
    ['COUNTIF(B1:B5,"<>")', 4],
    ['COUNTIF(A1:A4,">=2")', 2],
    ['COUNTIF(A1:A4,"1")', 2],
    ['COUNTIF(D1:D1,"7?16*")', 1],
    ['COUNTIF(D1:D1,"*~?*")', 0],
    ['SUMIF(B1:B4,"a",A1)', 2],
    ['SUMIFS(A1:A4,B1:B4,"a",A1:A4,1)', 2],
  ])("=%s", (formula, expected) => {
    expect(value(formula, CHEST)).toBe(expected);
  });
});
