import { describe, expect, test } from "vitest";
import { strToU8, unzipSync } from "fflate";
import { recalculate } from "../../../src/workbook";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { handmade, parts, sheetXml, zip } from "../support/handmade";

const ROWS = '<row r="1"><c r="A1"><v>3</v></c><c r="B1"><f>A1*2</f><v>0</v></c></row>';
const OTHER = '<row r="1"><c r="A1"><f>Bench!B1+1</f><v>0</v></c></row>';

/** A file of two sheets whose parts are named otherwise in the archive than where they are pointed to. */
function renamed(names: Record<string, string>): Uint8Array {
  const files = unzipSync(
    handmade({
      sheets: [
        { name: "Bench", xml: sheetXml(ROWS) },
        { name: "Rack", xml: sheetXml(OTHER) },
      ],
    }),
  );
  return zip(Object.fromEntries(Object.entries(files).map(([name, bytes]) => [names[name] ?? name, bytes])));
}

/** ISO/IEC 29500-2 (Open Packaging Conventions): part names are equal where only the case of ASCII letters differs; from memory. */
describe("a part whose name is written in other letters than the link to it", () => {
  const NAMES = {
    "xl/worksheets/sheet1.xml": "xl/Worksheets/Sheet1.XML",
    "xl/worksheets/sheet2.xml": "XL/worksheets/SHEET2.xml",
    "xl/_rels/workbook.xml.rels": "xl/_Rels/Workbook.xml.rels",
  };

  test("is that part: worked out, written where it was, and no other part is added", () => {
    const file = renamed(NAMES);
    const { bytes, report } = recalculate(file, { functions: {} });
    expect(report.kept).toEqual([]);
    expect(Object.keys(parts(bytes)).sort()).toEqual(Object.keys(parts(file)).sort());
    expect(parts(bytes)["xl/Worksheets/Sheet1.XML"]).toContain("<f>A1*2</f><v>6</v>");
    expect(parts(bytes)["XL/worksheets/SHEET2.xml"]).toContain("<f>Bench!B1+1</f><v>7</v>");
  });

  test("goes with its sheet", () => {
    const workbook = new EditedWorkbook(renamed(NAMES));
    workbook.changeSheets({ kind: "delete", id: workbook.sheets[1]!.id });
    const saved = parts(workbook.save());
    expect(Object.keys(saved).filter((name) => /sheet\d/i.test(name))).toEqual(["xl/Worksheets/Sheet1.XML"]);
    expect(saved["xl/_Rels/Workbook.xml.rels"]).not.toContain("sheet2");
  });

  test("is not two sheets, though the links to it differ", () => {
    const files = unzipSync(renamed({}));
    const links = "xl/_rels/workbook.xml.rels";
    const twice = parts(zip(files))[links]!.replace("worksheets/sheet2.xml", "Worksheets/SHEET1.xml");
    expect(() => recalculate(zip({ ...files, [links]: strToU8(twice) }), { functions: {} })).toThrow(
      "one and the same part",
    );
  });
});

const RACK =
  '<row r="1"><c r="A1"><f>Bench!B1+1</f><v>0</v></c><c r="B1"><f>Old!A1+1</f><v>42</v></c><c r="C1"><f>SUM(Bench:Old!B1)</f><v>0</v></c></row>';

/** The program keeps dialogs and macros of older kinds on sheets of their own. */
describe.each(["dialogsheet", "chartsheet", "xlMacrosheet"])("a %s beside worksheets", (type) => {
  const file = (): Uint8Array => {
    const files = unzipSync(
      handmade({
        sheets: [
          { name: "Bench", xml: sheetXml(ROWS) },
          { name: "Old", xml: `<${type}/>` },
          { name: "Rack", xml: sheetXml(RACK) },
        ],
      }),
    );
    const links = "xl/_rels/workbook.xml.rels";
    const text = parts(zip(files))[links]!.replace(/worksheet(" Target="worksheets\/sheet2)/, `${type}$1`);
    return zip({ ...files, [links]: strToU8(text) });
  };

  test("stays as it is, and worksheets keep their places; what refers to it keeps its value", () => {
    const { bytes, report } = recalculate(file(), { functions: {} });
    expect(parts(bytes)["xl/worksheets/sheet2.xml"]).toBe(`<${type}/>`);
    expect(report.kept.map(({ sheet, cell, reason }) => [`${sheet}!${cell}`, reason])).toEqual([
      ["Rack!B1", "refers to Old, which is no sheet of cells"],
    ]);
    const rack = parts(bytes)["xl/worksheets/sheet3.xml"]!;
    expect(rack).toContain("<f>Bench!B1+1</f><v>7</v>");
    expect(rack).toContain("<f>Old!A1+1</f><v>42</v>");
    expect(rack).toContain("<f>SUM(Bench:Old!B1)</f><v>6</v>");
  });
});
