import { describe, expect, it } from "vitest";
import { results, bookOf, value, type Given } from "../support/sheet";

/** Whole columns whose last row holds something: what lies between is not gone through, and counts all the same. */
const STRAY: Given = { A1: 3, A2: "oak", A5: 4, A1048576: 5, B1: 10, B2: 20, B5: 40, B7: 70, B1048576: 50 };

describe("whole columns with a stray cell in the last row", () => {
  it.each<[string, unknown]>([
    ["SUM(A:A)", 12],
    ["SUM(A:B)", 202],
    ["COUNT(A:A)", 3],
    ["COUNTA(A:A)", 4],
    ["COUNTBLANK(A:A)", 1_048_572],
    ["MAX(A:B)", 70],
    ["SUBTOTAL(9,A:A)", 12],
    ['COUNTIF(A:A,">3")', 2],
    ['COUNTIF(A:A,"")', 1_048_572],
    ['COUNTIF(A:A,"<>4")', 1_048_575],
    ['COUNTIFS(A:A,"",B:B,70)', 1],
    ['COUNTIFS(A:A,"",B:B,"")', 1_048_571],
    ['SUMIF(A:A,"oak",B:B)', 20],
    ['SUMIF(A:A,"",B:B)', 70],
    ['SUMIFS(B:B,A:A,"<>oak")', 170],
    ['AVERAGEIF(A:A,">3",B:B)', 45],
    ['MAXIFS(B:B,A:A,">=3",B:B,"<45")', 40],
    ["MATCH(5,A:A,0)", 1_048_576],
    ['VLOOKUP("OAK",A:B,2,FALSE)', 20],
    ["SUM(1:5)", 77],
  ])("=%s is %s", (formula, expected) => {
    const { D9, ...others } = STRAY;
    expect(value(formula, formula === "SUM(1:5)" ? { ...others, D9: D9 ?? 0 } : STRAY)).toBe(expected);
  });

  it("what a formula among them fills counts, and an error is found", () => {
    const given: Given = { ...STRAY, A10: "{=_xlfn.SEQUENCE(300)", D1: "=SUM(A:A)", D2: "=COUNT(A:A)" };
    expect(results(bookOf(given))).toMatchObject({ D1: 45_162, D2: 303 });
    expect(value("SUM(A:A)", { ...STRAY, A9: "=1/0" })).toBe("#DIV/0!");
  });
});

/** Long enough to be put in order, and searched more than once. */
const LIST: Given = Object.fromEntries(
  ["oak", "Ash", 7, 0.1, 1 / 3, true, "Ökotex", "cherry", "", 7, "a\u00adsh", "OAK", -2].map((item, i) => [
    `A${i + 1}`,
    item,
  ]),
);

describe("a list that is searched again and again gives what a search from its start gives", () => {
  const wanted = ["oak", "ASH", 7, "0.1", "0.3-0.2", "1/3", "TRUE", "ökotex", "Cherry", "", "7.000000000000001", "-2"];
  it.each([...wanted, "9", "pine", "FALSE", "=0+0"])("MATCH(%s)", (item) => {
    const text = typeof item === "number" || !/^[a-zö]*$/i.test(item) || /TRUE|FALSE/.test(item);
    const sought = text ? String(item).replace("=", "") : `"${item}"`;
    const search = (list: string): string => `IFERROR(MATCH(${sought},${list},0),"none")`;
    const again = Object.fromEntries([1, 2, 3].map((i) => [`C${i}`, `=${search("A$1:A$13")}`]));
    // Lists that are put together in the formula are new each time.
    const alone = results(bookOf({ ...LIST, C1: `{=${search("IF({1},A$1:A$13)")}` })).C1;
    const found = results(bookOf({ ...LIST, ...again }));
    expect([found.C1, found.C2, found.C3]).toEqual([alone, alone, alone]);
  });
});
