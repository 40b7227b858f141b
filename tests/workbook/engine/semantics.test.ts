import { describe, expect, it } from "vitest";
import { bookOf, results, sheetOf, value } from "../support/sheet";

const BENCH = { A1: "Side", B1: 4, A2: "Front", B2: 2, A3: "Back", B3: 2, C1: true, C2: "7/16", D1: 46351 };

describe("formulas give what the spreadsheet program gives", () => {
  it.each<[string, unknown]>([
    ["-2^2", 4],
    ["2^3^2", 64],
    ["50%%", 0.005],
    ['"a"="A"', true],
    ['"10"+5', 15],
    ['"x">5', true],
    ["1=TRUE", false],
    ["0.1+0.2=0.3", true],
    ['0.1+0.2&""', "0.3"],
    ["1-0.9-0.1", 0],
    ["(1-0.9-0.1)*1E17", -2.7755575615628914],
    ["0^0", "#NUM!"],
    ["1/0", "#DIV/0!"],
    ["E9", 0],
    ['E9&"|"', "|"],
    ['E9=""', true],
    ["ISBLANK(E9)", true],
    ["C2", "7/16"],
    ['C2&""', "7/16"],
    ["ROUND(2.675,2)", 2.68],
    ["ROUND(-2.5,0)", -3],
    ["MOD(-3,2)", 1],
    ["MROUND(6.05,0.1)", 6],
    ["SUM(B1:B3)", 8],
    ["SUM(B:B)", 8],
    ["COUNTBLANK(B1:B5)", 2],
    ['SUMIF(A1:A3,"?ack",B1:B3)', 2],
    ['COUNTIFS(B1:B3,2,A1:A3,"<>back")', 1],
    ['VLOOKUP("front",A1:B3,2,FALSE)', 2],
    ["INDEX(A1:A3,MATCH(4,B1:B3,0))", "Side"],
    ['_xlfn.XLOOKUP("oak",A1:A3,B1:B3,"none")', "none"],
    ["SUMPRODUCT((B1:B3=2)*B1:B3)", 4],
    ["EDATE(DATE(2024,1,31),1)", 45351],
    ["YEAR(D1)", 2026],
    ['TEXT(23.4375,"# ??/16")', "23  7/16"],
    ['TEXT(5.9999,"# ??/16")', "6      "],
    ['TEXT(D1,"yyyy-mm-dd")', "2026-11-25"],
    ['SEARCH("?o","Front")', 2],
    ['CONVERT(100,"F","C")', 37.7777777777778],
    ['CONCAT("a",TRUE,1)', "aTRUE1"],
    ['CONVERT(1,"in","mm")', 25.4],
    ["SUM(OFFSET(B1,1,0,2))", 4],
    ['SUM(INDIRECT("B1:B2"))', 6],
    ["_xlfn.LET(_xlpm.w,B1,_xlpm.g,1/8,(_xlpm.w-_xlpm.g)/2)", 1.9375],
    ["_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2)(B1)", 8],
    ["IF(TRUE,,1)", 0],
    ["IFERROR(1/0,)", 0],
    ['IF("TRUE",1,2)', 1],
    ["SUM((B1,B3))", 6],
    ["SUM(A1:B3 B2:C2)", 2],
    ["SUM(B1:INDEX(B1:B3,2))", 6],
    ['"A1"+0', "#VALUE!"],
    ['COUNTIF({1}&"",1)', "#VALUE!"],
    ['COUNTIF(B1:B3,"A1")', 0],
    ['"€5"&""', "€5"],
    ['" 5 "+"8%"', 5.08],
    ['"1 1/2"+0', 1.5],
    ['"24:00"+0', 1],
    ['"12:30 PM"+0', 0.5208333333333334],
    ['" 2024-01-10 "+0', "#VALUE!"],
    ['"1e999"+0', "#VALUE!"],
    ["NOSUCHNAME+1", "#NAME?"],
  ])("=%s", (formula, expected) => {
    expect(value(formula, BENCH)).toBe(expected);
  });

  it("a formula that is no array formula takes from a range the cell in its own row or column", () => {
    const shown = results(
      bookOf({ A1: 1, A2: 2, A3: 3, B2: "=A1:A3*10", C2: "=ABS(A1:A3)", B9: "=A1:A3", D2: "=_xlfn.SINGLE(A1:A3)" }),
    );
    expect(shown).toEqual({ B2: 20, C2: 2, B9: "#VALUE!", D2: 2 });
  });

  it("functions that are made for arrays take them whole even there, and the first item is the value", () => {
    const given = { A1: 1, A2: 5, A3: 3 };
    expect(value("_xlfn._xlws.FILTER(A1:A3,A1:A3>2)", given)).toBe(5);
    expect(value("SUM(_xlfn._xlws.FILTER(A1:A3,A1:A3>2))", given)).toBe(8);
    expect(value("SUM(_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v*2)))", given)).toBe(18);
    expect(value("_xlfn.XLOOKUP(1,(A1:A3>2)*1,A1:A3)", given)).toBe(5);
    expect(value("SUM(A1:A3*2)", given)).toBe("#VALUE!");
  });

  it("an array formula takes the whole range", () => {
    expect(value("{=A1:A3*B1:B3", { A1: 1, A2: 2, A3: 3, B1: 5, B2: 6, B3: 7 })).toEqual([[5], [12], [21]]);
    expect(value('{=IF(A1:A2>1,"big",A1:A2)', { A1: 1, A2: 2 })).toEqual([[1], ["big"]]);
    expect(value("{=_xlfn._xlws.SORT(A1:A2,1,-1)", { A1: 1, A2: 2 })).toEqual([[2], [1]]);
    expect(value("{=_xlfn._xlws.FILTER(A1:A2,A1:A2>9)", { A1: 1, A2: 2 })).toBe("#CALC!");
    expect(value("{=_xlfn.MAP(A1:A2,_xlfn.LAMBDA(_xlpm.v,_xlpm.v+1))", { A1: 1, A2: 2 })).toEqual([[2], [3]]);
    expect(value("{=_xlfn.SEQUENCE(2,2)")).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });

  it("a function that sorts leaves the range that it was given alone", () => {
    const shown = results(bookOf({ A1: 3, A2: 1, C1: "{=_xlfn._xlws.SORT(A1:A2)", E1: "{=TRANSPOSE(A1:A2)" }));
    expect(shown.E1).toEqual([[3, 1]]);
  });
});

describe("names", () => {
  const names = [
    { name: "Gap", text: "1/8" },
    { name: "Gap", text: "3", sheet: 1 },
    { name: "Heights", text: "Bench!$B$1:$B$2" },
    { name: "Left", text: "Bench!A1" },
    { name: "Half", text: "_xlfn.LAMBDA(_xlpm.x,_xlpm.x/2)" },
  ];

  it("stand for constants, ranges, relative references and functions; a sheet's own comes first", () => {
    const book = bookOf(
      { B1: 4, B2: 5, A7: 9, D1: "=Gap", D2: "=SUM(Heights)", D3: "=half(8)", A8: "=Left" },
      { names },
    );
    book.sheets.push(sheetOf("Chest", { A1: "=Gap" }));
    const shown = results(book);
    expect(shown).toMatchObject({ D1: 0.125, D2: 9, D3: 4, "Chest!A1": 3 });
  });

  it("a relative reference in a name counts from A1 to the cell that uses it", () => {
    expect(results(bookOf({ B2: 7, B3: "=Above" }, { names: [{ name: "Above", text: "Bench!A1048576" }] })).B3).toBe(7);
  });

  it("tables are read by column, row, headers and totals", () => {
    const tables = [
      {
        name: "Parts",
        sheet: 0,
        area: { top: 0, left: 0, bottom: 3, right: 1 },
        headerRows: 1,
        totalRows: 1,
        columns: ["Part", "Size [in]"],
      },
    ];
    const given = { A1: "Part", B1: "Size [in]", A2: "Side", B2: 20, A3: "Back", B3: 10 };
    const shown = results(
      bookOf(
        {
          ...given,
          B4: "=SUBTOTAL(109,Parts[Size '[in']])",
          C2: "=Parts[[#This Row],[Size '[in']]]*2",
          D1: "=Parts[[#Headers],[Part]]",
          D2: "=COUNTA(Parts[#All])",
          D3: "=Parts[[#Totals],[Size '[in']]]",
          D9: "=Parts[@Part]",
        },
        { tables },
      ),
    );
    expect(shown).toEqual({ B4: 30, C2: 40, D1: "Part", D2: 7, D3: 30, D9: "#VALUE!" });
  });

  it("sheets are found whatever their case, and ranges go across them", () => {
    const book = bookOf({ A1: 1, B1: "=SUM('Bench:Tea chest'!A1)", B2: "='TEA CHEST'!A1" });
    book.sheets.push(sheetOf("Tea chest", { A1: 5 }));
    expect(results(book)).toEqual({ B1: 6, B2: 5 });
  });
});

describe("dates", () => {
  it("count from 1904 where the workbook says so", () => {
    const book = bookOf(
      {
        A1: 46351 - 1462,
        B1: "=YEAR(A1)",
        B2: "=DATE(2026,11,25)",
        B3: "=EDATE(A1,1)-A1",
        B4: '=TEXT(A1,"yyyy-mm-dd")',
      },
      { date1904: true },
    );
    expect(results(book)).toEqual({ B1: 2026, B2: 46351 - 1462, B3: 30, B4: "2026-11-25" });
  });

  it("TODAY and NOW are the moment that is handed in", () => {
    const now = new Date(2026, 10, 25, 12);
    expect(value("TODAY()", {}, { now })).toBe(46351);
    expect(value("NOW()", {}, { now })).toBeCloseTo(46351.5, 9);
  });
});

describe("order", () => {
  it("a chain of ten thousand cells is worked out from either end", () => {
    const given: Record<string, string | number> = { A1: 1 };
    for (let row = 2; row <= 10_000; row++) given[`A${row}`] = `=A${row - 1}+1`;
    expect(results(bookOf(given)).A10000).toBe(10_000);
    const upward: Record<string, string | number> = { A10000: 1 };
    for (let row = 1; row < 10_000; row++) upward[`A${row}`] = `=A${row + 1}+1`;
    expect(results(bookOf(upward)).A1).toBe(10_000);
  });
});
