import { describe, expect, test } from "vitest";
import { parseCell } from "../../../src/workbook/address";
import { EditedWorkbook, type Content } from "../../../src/workbook/edit/index";
import { handmade, sheetOf } from "../support/handmade";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** A sheet with that in place of its rows' element; `x` stands for the prefix of its elements. */
const sheet = (data: string, prefix = ""): string => {
  const p = prefix ? `${prefix}:` : "";
  return `<?xml version="1.0" encoding="UTF-8"?>\n<${p}worksheet xmlns${prefix && `:${prefix}`}="${MAIN}"><${p}sheetPr/><${p}dimension ref="A1"/><${p}sheetFormatPr defaultRowHeight="15"/>${data}<${p}pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/></${p}worksheet>`;
};

const TYPED: [cell: string, content: Content][] = [
  ["A1", "Bench"],
  ["B1", 24],
  ["C1", { formula: "=DRAWER.BOXWIDTH(B1)" }],
  ["B3", true],
  ["A3", { formula: "=B1*2" }],
  ["D2", "#N/A"],
];

describe("a sheet whose rows are written as", () => {
  test.each<[string, string, string?]>([
    ["an element that closes itself", "<sheetData/>"],
    ["one that closes itself after a space", "<sheetData />"],
    ["an empty element", "<sheetData></sheetData>"],
    ["an element of white space", "<sheetData>\n  </sheetData>"],
    ["an empty element with a prefix", "<x:sheetData></x:sheetData>", "x"],
    ["an element with a prefix that closes itself", "<x:sheetData/>", "x"],
    ["nothing at all", ""],
    ["nothing at all, with a prefix", "", "x"],
    ["a row that closes itself", '<sheetData><row r="1"/></sheetData>'],
    ["a row that closes itself, with a prefix", '<x:sheetData><x:row r="1" /></x:sheetData>', "x"],
    ["an empty row", '<sheetData><row r="1"></row></sheetData>'],
    ["rows without numbers", "<sheetData><row/><row/><row/></sheetData>"],
    ["cells that close themselves", '<sheetData><row r="1" spans="1:2"><c r="A1"/><c r="B1" /></row></sheetData>'],
    ["cells without names", "<sheetData><row><c/><c></c></row></sheetData>"],
    [
      "a cell with empty elements",
      '<sheetData><row r="1"><c r="A1" t="s"><v/></c><c r="B1"><f/><v/></c></row></sheetData>',
    ],
    ["a cell with an empty inline text", '<sheetData><row r="1"><c r="B1" t="inlineStr"><is/></c></row></sheetData>'],
    ["rows far below", '<sheetData><row r="9"><c r="I9"><v>1</v></c></row></sheetData>'],
  ])("%s takes what is typed, in its place", (_, data, prefix) => {
    const workbook = new EditedWorkbook(handmade({ sheets: [{ name: "Job", xml: sheet(data, prefix) }] }));
    for (const [cell, content] of TYPED) workbook.put({ sheet: 0, ...parseCell(cell)!, content });
    const saved = workbook.save();
    const again = new EditedWorkbook(saved);
    for (const [cell, content] of TYPED) {
      const { row, column } = parseCell(cell)!;
      expect(again.content(0, row, column), cell).toEqual(content);
    }
    expect(again.calculate().results.map(({ values }) => values)).toEqual([[[23]], [[48]]]);
    const text = sheetOf(saved);
    expect(text.indexOf("sheetFormatPr")).toBeLessThan(text.indexOf("sheetData"));
    expect(text.indexOf("sheetData")).toBeLessThan(text.indexOf("<" + (prefix ? "x:" : "") + "row"));
    expect(text.lastIndexOf("row>")).toBeLessThan(text.lastIndexOf("sheetData>"));
    expect(text.lastIndexOf("sheetData>")).toBeLessThan(text.indexOf("pageMargins"));
    expect(text).toContain("<v>23</v>".replace(/v/g, prefix ? "x:v" : "v"));
  });
});

test("an error value that is typed is stored as one", () => {
  const workbook = new EditedWorkbook(handmade({ sheets: [{ name: "Job", xml: sheet("<sheetData/>") }] }));
  workbook.put({ sheet: 0, row: 0, column: 0, content: "#N/A" });
  workbook.put({ sheet: 0, row: 0, column: 1, content: { formula: "=ISNA(A1)" } });
  expect(workbook.calculate().results[0]!.values).toEqual([[true]]);
  expect(sheetOf(workbook.save())).toContain('<c r="A1" t="e"><v>#N/A</v></c>');
});

test("a row that says which columns it has goes on telling the truth", () => {
  const data = '<sheetData><row r="1" spans="2:2"><c r="B1"><v>1</v></c></row></sheetData>';
  const workbook = new EditedWorkbook(handmade({ sheets: [{ name: "Job", xml: sheet(data) }] }));
  for (const cell of ["A1", "D1"]) workbook.put({ sheet: 0, ...parseCell(cell)!, content: cell });
  expect(sheetOf(workbook.save())).toContain('<row r="1" spans="1:4">');
});

test("the range in use grows to what is typed", () => {
  const workbook = new EditedWorkbook(handmade({ sheets: [{ name: "Job", xml: sheet("<sheetData/>") }] }));
  workbook.put({ sheet: 0, row: 4, column: 2, content: "typed" });
  expect(sheetOf(workbook.save())).toContain('<dimension ref="A1:C5"/>');
});
