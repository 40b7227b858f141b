import { describe, expect, it } from "vitest";
import { bookOf, results, value, type Given } from "../support/sheet";

const LONG = "a".repeat(32_767);
const STARS = "*a*a*a*a*b";

/** A long text, a criterion with many stars, and a table of the kind that database functions want. */
const SHEET: Given = {
  A1: 5,
  A2: 3,
  B1: LONG,
  B2: LONG,
  C1: 1,
  C2: 2,
  D1: "t",
  E1: "n",
  D2: LONG,
  E2: 1,
  G1: "t",
  G2: STARS,
};

const STEPS = /^kept: takes more than the 50000000 steps that one formula may take here$/;
const DEEP = /^kept: (leads more than 1000 steps deep into itself|asks for more than there is room for)$/;
const ARRAY = /^kept: makes an array of \d+ cells; at most \d+ are made/;
const HANDED = /^kept: hands \d+ cells to [A-Z.]+; at most 2000000 are handed over here$/;
const UNPROVEN = /^kept: calls [A-Z.]+, which is not proven to come out here as in the spreadsheet program$/;
const TEXT = /^kept: makes a text of \d+ characters with [A-Z]+; a cell holds 32767$/;

describe("a formula that asks for too much keeps its value; the rest of its kind is worked out", () => {
  it.each<[string, unknown]>([
    [`COUNTIF(B1,"${STARS}")`, 0],
    [`COUNTIF(B1,"*a*a*a*a*")`, 1],
    [`COUNTIFS(B1:B2,"${STARS}",B1:B2,"*")`, 0],
    [`SUMIF(B1:B2,"${STARS}",A1:A2)`, 0],
    [`SUMIFS(A1:A2,B1:B2,"*a*a*a*a")`, 8],
    [`AVERAGEIF(B1:B2,"${STARS}",A1:A2)`, "#DIV/0!"],
    [`AVERAGEIFS(A1:A2,B1:B2,"${STARS}")`, "#DIV/0!"],
    [`MAXIFS(A1:A2,B1:B2,"${STARS}")`, 0],
    [`MINIFS(A1:A2,B1:B2,"*a?a*")`, 3],
    [`SEARCH("a*a*a*a*b",B1)`, "#VALUE!"],
    [`SEARCH("a*a*a*a",B1)`, 1],
    [`MATCH("${STARS}",B1:B2,0)`, "#N/A"],
    [`MATCH("*a*a*a*a*",B1:B2,0)`, 1],
    [`XMATCH("${STARS}",B1:B2,2)`, "#N/A"],
    [`XLOOKUP("${STARS}",B1:B2,A1:A2,"none",2)`, "none"],
    [`VLOOKUP("${STARS}",B1:C2,2,FALSE)`, "#N/A"],
    [`HLOOKUP("${STARS}",B1:C2,2,FALSE)`, "#N/A"],
    [`DSUM(D1:E2,"n",G1:G2)`, "kept: calls DSUM with several stars in one criterion"],
    [`DCOUNT(D1:E2,"n",G1:G2)`, "kept: calls DCOUNT with several stars in one criterion"],
    [`DGET(D1:E2,"n",G1:G2)`, UNPROVEN],
    [`LEN(B1&B1)`, "#VALUE!"],
    [`LEN(CONCAT(B1,B1))`, "#VALUE!"],
    [`LEN(TEXTJOIN(",",TRUE,B1,B1))`, "#VALUE!"],
    [`REPT("a",1E9)`, TEXT],
    [`REPT(B1,2)`, TEXT],
    [`SUBSTITUTE(B1,"a",B1)`, TEXT],
    [`LEN(REDUCE("x",SEQUENCE(60),LAMBDA(x,y,x&x)))`, "#VALUE!"],
    [`{=TEXTSPLIT(REPT("a;",5000)&REPT("b,",10000),",",";")`, ARRAY],
    ["{=EXPAND(A1,1048576,16384)", ARRAY],
    ["{=EXPAND(A1,1E300,1E300)", /^kept: makes an array of/],
    ["{=MUNIT(20000)", ARRAY],
    ["{=SEQUENCE(1E15)", ARRAY],
    ["{=SUM(SEQUENCE({1000000;1000000},2))", STEPS],
    ["{=RANDARRAY(1048576,16384)", UNPROVEN],
    ["{=MAKEARRAY(1048576,16384,LAMBDA(r,c,r*c))", ARRAY],
    ["{=SUM(REDUCE(1,SEQUENCE(64),LAMBDA(a,b,VSTACK(a,a))))", STEPS],
    ["{=SUM(REDUCE(1,SEQUENCE(64),LAMBDA(a,b,HSTACK(a,a))))", STEPS],
    ["{=HSTACK(SEQUENCE(100000),SEQUENCE(,16384))", ARRAY],
    ["{=SUM(SEQUENCE(50000)*SEQUENCE(,16384))", ARRAY],
    ["{=MAX(IF(SEQUENCE(50000)>SEQUENCE(,16384),1,0))", ARRAY],
    ["{=MMULT(SEQUENCE(100000),SEQUENCE(,16384))", ARRAY],
    ["{=MMULT(SEQUENCE(300,300),SEQUENCE(300,300))", STEPS],
    ["{=MDETERM(SEQUENCE(400,400))", STEPS],
    ["{=MINVERSE(SEQUENCE(400,400))", UNPROVEN],
    ["{=WRAPROWS(SEQUENCE(1000),1E9)", ARRAY],
    ["{=WRAPCOLS(SEQUENCE(1000),1E9)", ARRAY],
    ["{=CHOOSECOLS(SEQUENCE(100000),SEQUENCE(,16384,1,0))", ARRAY],
    ["{=INDEX(SEQUENCE(1000),SEQUENCE(100000,1,1,0),SEQUENCE(,1000,1,0))", ARRAY],
    ["{=SUM(UNIQUE(SEQUENCE(100000,1,1,0)))", 1],
    ["{=FREQUENCY(SEQUENCE(100000),SEQUENCE(100000))", STEPS],
    ["{=PERCENTRANK.INC(SEQUENCE(100000),SEQUENCE(10000))", UNPROVEN],
    ["MODE(SEQUENCE(100000))", STEPS],
    ["SUM(TOCOL(VSTACK(SEQUENCE(200000),SEQUENCE(200000))))", 40_000_200_000],
    ["{=ROWS(VSTACK(SEQUENCE(1000000,2),1))", HANDED],
    ["{=SUM(MATCH(SEQUENCE(100000),SEQUENCE(100000),0))", 5_000_050_000],
    ["REDUCE(0,SEQUENCE(10000),LAMBDA(a,b,REDUCE(0,SEQUENCE(10000),LAMBDA(c,d,c+d))))", STEPS],
    ["LET(f,LAMBDA(g,n,IF(n<1,1,g(g,n-1)+g(g,n-1))),f(f,60))", STEPS],
    ["LET(f,LAMBDA(g,n,g(g,n+1)+0),f(f,1)+0)", DEEP],
    ["LET(f,LAMBDA(g,n,IF(n<1,0,1+g(g,n-1))),f(f,100))", 100],
    ["WORKDAY(45000,1E15)", STEPS],
    ["WORKDAY.INTL(45000,1E15,1)", STEPS],
    ["NETWORKDAYS(1,1E9)", STEPS],
    ["BINOM.DIST(5E8,1E9,0.5,TRUE)", UNPROVEN],
    ["BINOM.DIST.RANGE(1E9,0.5,1,5E8)", UNPROVEN],
    ["BINOM.INV(1E9,0.5,0.9)", UNPROVEN],
    ["NEGBINOM.DIST(1E9,1E9,0.5,TRUE)", UNPROVEN],
    ["HYPGEOM.DIST(5E8,1E9,1E9,2E9,TRUE)", UNPROVEN],
    ["POISSON.DIST(1E9,1E9,TRUE)", UNPROVEN],
    ["BESSELK(1.5,1E9)", UNPROVEN],
    ["BESSELY(1.5,1E9)", UNPROVEN],
    ["CUMPRINC(0.01,1E9,1000,1,1E9,0)", UNPROVEN],
    ["DB(1000,1,1E9,5E8)", UNPROVEN],
    ["VDB(1000,1,1E9,0,5E8)", UNPROVEN],
    ["EDATE(45000,1E9)", /^#(NUM|VALUE)!$/],
    [`1${"+1".repeat(3000)}`, 3001],
    [`${"(".repeat(5000)}1${")".repeat(5000)}`, /^kept: cannot be read: It is nested more than 256 deep/],
    [`${"-".repeat(5000)}1`, /^kept: cannot be read: It is nested more than 256 deep/],
  ])("=%.70s", (formula, expected) => {
    const found = value(formula, SHEET);
    if (expected instanceof RegExp) expect(String(found)).toMatch(expected);
    else expect(found).toBe(expected);
  });
});

describe("a workbook that asks for too much", () => {
  it("names that lead to names forty times over, twice each, are given up", () => {
    const names = Array.from({ length: 40 }, (_, i) => ({
      name: `TWO${i}_`,
      text: i === 39 ? "1" : `TWO${i + 1}_+TWO${i + 1}_`,
    }));
    expect(results(bookOf({ A1: "=TWO0_", B1: "=TWO30_" }, { names }))).toEqual({
      A1: expect.stringMatching(STEPS) as string,
      B1: 512,
    });
  });

  it("names that lead to themselves are given up", () => {
    const names = [
      { name: "ONE_", text: "OTHER_+1" },
      { name: "OTHER_", text: "ONE_+1" },
    ];
    expect(results(bookOf({ A1: "=ONE_+0" }, { names })).A1).toMatch(DEEP);
  });

  it("a variable handed on under another name has that name", () => {
    expect(value("LET(f,LAMBDA(g,n,g&n),x,2,f(x,x))")).toBe("22");
    expect(value("LET(a,1,b,a,a+b)")).toBe(2);
  });

  it("what array formulas fill is bounded in all, and what was asked for before stays", () => {
    const given: Given = {};
    for (const column of ["A", "B", "C", "D", "E", "F"]) given[`${column}1`] = "{=SEQUENCE(200000)";
    const shown = results(bookOf(given));
    expect(shown.B1).toHaveLength(200_000);
    expect(shown.C1).toBe("kept: fills cells beyond the 500000 that array formulas fill here in all");
  });

  it.each([600, 3000])("a chain of %i cells, each found by INDIRECT, is worked out to its end", (length) => {
    const given: Given = { [`A${length}`]: 1 };
    for (let i = 1; i < length; i++) given[`A${i}`] = `=INDIRECT("A"&${i + 1})+1`;
    const shown = results(bookOf(given));
    expect(shown.A1).toBe(length);
    expect(shown[`A${length - 1}`]).toBe(2);
  });

  it.each([2, 100, 1000])("a circle of %i cells that find one another by INDIRECT keeps all its values", (length) => {
    const given: Given = { B1: "=A1+1" };
    for (let i = 1; i <= length; i++) given[`A${i}`] = `=INDIRECT("A"&${(i % length) + 1})+1`;
    const { B1, ...circle } = results(bookOf(given));
    expect(new Set(Object.values(circle))).toEqual(new Set(["kept: refers to itself in a circle"]));
    expect(B1).toBe(1);
  });

  it("a circle that is closed by INDIRECT is one with what it is closed over", () => {
    const shown = results(bookOf({ A1: '=INDIRECT("A3")', A2: "=A1+1", A3: "=A2+1", B1: "=7" }));
    const circle = "kept: refers to itself in a circle";
    expect(shown).toEqual({ A1: circle, A2: circle, A3: circle, B1: 7 });
  });
});
