import { describe, expect, test } from "vitest";
import { parseFormula } from "../../../src/workbook/formula/parse";
import { withoutSheet, withSheetRenamed } from "../../../src/workbook/formula/sheet-names";

describe("withSheetRenamed(formula, from Bench)", () => {
  test.each<[formula: string, name: string, expected: string]>([
    ["Bench!A1", "Shop", "Shop!A1"],
    ["bench!A1+BENCH!$B$2", "Shop", "Shop!A1+Shop!$B$2"],
    ["Bench!A1:B2", "What if", "'What if'!A1:B2"],
    ["'Bench'!A1", "it's", "'it''s'!A1"],
    ["SUM(Bench:Saw!A1)", "Shop", "SUM(Shop:Saw!A1)"],
    ["SUM('Plan A:Bench'!A1)", "Shop", "SUM('Plan A:Shop'!A1)"],
    ["SUM(Bench!A1:Bench!B2)", "Shop", "SUM(Shop!A1:Shop!B2)"],
    ["A1:Bench!B2", "Shop", "A1:Shop!B2"],
    ["Bench!Widths*2", "Shop", "Shop!Widths*2"],
    ["_xlfn.ANCHORARRAY(Bench!A1)", "Shop", "_xlfn.ANCHORARRAY(Shop!A1)"],
    ["Bench!A1#", "Q1", "'Q1'!A1#"],
    ["Bench!A1", "R2", "'R2'!A1"],
    ["Bench!A1", "True", "'True'!A1"],
    ["Bench!A1", "2027", "'2027'!A1"],
    ["Bench!A1", "Möbel", "Möbel!A1"],
    ["Bench!#REF!", "Shop", "Shop!#REF!"],
  ])("%s to %s is %s", (formula, name, expected) => expect(withSheetRenamed(formula, "Bench", name)).toBe(expected));

  test.each([
    '"Bench!A1"',
    'INDIRECT("Bench!A1")',
    "[1]Bench!A1",
    "'[book.xlsx]Bench'!A1",
    "'C:\\shop\\[book.xlsx]Bench'!A1",
    "WorkBench!A1",
    "Bench.old!A1",
    "Table1[[#This Row],[Bench!A1]]",
    "#REF!A1+#N/A",
    "Bench+1",
    "'Work Bench'!A1",
  ])("%s stays", (formula) => expect(withSheetRenamed(formula, "Bench", "Shop")).toBe(formula));
});

describe("withoutSheet(formula, Bench)", () => {
  const order = ["Job", "Bench", "Saw", "Cuts"];
  test.each([
    ["Bench!A1", "#REF!A1"],
    ["SUM('Bench'!$A$1:$B$2)*2", "SUM(#REF!$A$1:$B$2)*2"],
    ["Bench!Widths", "#REF!Widths"],
    ["Bench!#REF!", "#REF!"],
    ["SUM(Bench:Cuts!A1)", "SUM(Saw:Cuts!A1)"],
    ["SUM(Bench:Saw!A1)", "SUM(Saw!A1)"],
    ["SUM(Job:Bench!A1)", "SUM(Job!A1)"],
    ["SUM(Cuts:Bench!A1)", "SUM(Cuts:Saw!A1)"],
    ["SUM(Job:Saw!A1)", "SUM(Job:Saw!A1)"],
    ["SUM(Openings[Width])+Openings", "SUM(#REF!)+#REF!"],
    ["Openings[[#This Row],[It''s]:[Bench!A1]]", "#REF!"],
    ['"Bench!A1"&Saw!A1', '"Bench!A1"&Saw!A1'],
  ])("%s is %s", (formula, expected) => {
    expect(withoutSheet(formula, "Bench", order, ["Openings"])).toBe(expected);
    expect(() => parseFormula(expected)).not.toThrow();
  });
});
