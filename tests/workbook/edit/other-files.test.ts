import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { expect, test } from "vitest";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";

const SHEET = "xl/worksheets/sheet1.xml";

/** A file of one sheet, given as the XML of its rows, and without the record of formulas that spill. */
function file(rows: string): Uint8Array {
  const sheet = { name: "Job", widths: [10], rows: [], merged: [], selected: "A1" };
  const parts = unzipSync(writeWorkbook({ styles: {}, sheets: [sheet] }));
  const changed = (part: string, from: RegExp, to: string) =>
    (parts[part] = strToU8(strFromU8(parts[part]!).replace(from, to)));
  changed(SHEET, /<sheetData><\/sheetData>/, `<sheetData>${rows}</sheetData>`);
  changed("[Content_Types].xml", /<Override PartName="\/xl\/metadata.xml"[^>]*>/, "");
  changed("xl/_rels/workbook.xml.rels", /<Relationship [^>]*metadata.xml"\/>/, "");
  delete parts["xl/metadata.xml"];
  return zipSync(parts);
}

const text = (bytes: Uint8Array, part: string): string => strFromU8(unzipSync(bytes)[part]!);

test("a workbook without the record of formulas that spill gets one with the first such formula", () => {
  const workbook = new EditedWorkbook(file('<row r="1"><c r="A1"><v>24</v></c></row>'));
  workbook.put({ sheet: 0, row: 0, column: 1, content: { formula: "=DRAWER.BOXWIDTH(A1)" } });
  const saved = workbook.save();
  expect(text(saved, "xl/metadata.xml")).toContain("XLDAPR");
  expect(text(saved, "[Content_Types].xml")).toContain('PartName="/xl/metadata.xml"');
  expect(text(saved, SHEET)).toContain(
    '<c r="B1" cm="1" s="1"><f t="array" ref="B1">_xldudf_DRAWER_BOXWIDTH(A1)</f><v>23</v></c>',
  );
  expect([...openWorkbook(saved).book.sheets[0]!.cells.values()].at(-1)!.formula!.kind).toBe("dynamic");
});

test("a plain formula adds no such record", () => {
  const workbook = new EditedWorkbook(file('<row r="1"><c r="A1"><v>24</v></c></row>'));
  workbook.put({ sheet: 0, row: 0, column: 1, content: { formula: "=A1*2" } });
  expect(Object.keys(unzipSync(workbook.save()))).not.toContain("xl/metadata.xml");
});

test("where the cell with a shared formula's text is changed, the others keep their formula", () => {
  const rows = [1, 2, 3].map((row) => {
    const formula = row === 1 ? '<f t="shared" ref="B1:B3" si="0">A1*$A$1</f>' : '<f t="shared" si="0"/>';
    return `<row r="${row}"><c r="A${row}"><v>${row + 1}</v></c><c r="B${row}">${formula}<v>0</v></c></row>`;
  });
  const workbook = new EditedWorkbook(file(rows.join("")));
  expect(workbook.content(0, 2, 1)).toEqual({ formula: "=A3*$A$1" });
  workbook.put({ sheet: 0, row: 0, column: 1, content: 7 });
  const again = new EditedWorkbook(workbook.save());
  expect(again.content(0, 2, 1)).toEqual({ formula: "=A3*$A$1" });
  expect(again.calculate().results.map(({ values }) => values[0]![0])).toEqual([6, 8]);
});

test("a style and everything around a cell stay", () => {
  const rows =
    '<row r="1" spans="1:2" x="kept"><c r="A1" s="0"><v>1</v></c><!-- kept too --><c r="B1"><v>2</v></c></row>';
  const workbook = new EditedWorkbook(file(rows));
  workbook.put({ sheet: 0, row: 0, column: 0, content: 5 });
  expect(text(workbook.save(), SHEET)).toContain(rows.replace("<v>1</v>", "<v>5</v>"));
});
