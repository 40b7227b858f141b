import { describe, expect, it } from "vitest";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { mender } from "../../../src/workbook/edit/mended-formula";
import { recalculate } from "../../../src/workbook/edit/recalculate";
import { cellOf, handmade, oneSheet, parts, relationshipXml, sheetXml } from "../support/handmade";

const options = { functions: OWN_FUNCTIONS };

/** A cell as the spreadsheet program stores it that has no such function at hand. */
const unresolved = (cell: string, formula: string, mark = ' cm="1"') =>
  `<c r="${cell}"${mark} t="e"><f t="array" aca="1" ref="${cell}" ca="1">${formula}</f><v>#NAME?</v></c>`;

describe("names that the spreadsheet program left unresolved", () => {
  const file = oneSheet(`<row r="1"><c r="A1"><v>24</v></c>${unresolved("B1", "DRAWER.BOXWIDTH(A1,0.5)")}</row>`);

  it("are worked out and written in the form that it resolves", () => {
    const { bytes, report } = recalculate(file, options);
    expect(cellOf(bytes, "B1")).toBe(
      '<c r="B1" cm="1"><f t="array" ref="B1">_xldudf_DRAWER_BOXWIDTH(A1,0.5)</f><v>23</v></c>',
    );
    expect(report).toMatchObject({ mended: 1, recalculated: 1, changed: 1, kept: [], errors: [] });
    expect(recalculate(bytes, options)).toMatchObject({ bytes, report: { mended: 0, changed: 0 } });
  });

  it("leave every other part of the file as it is", () => {
    const [before, after] = [parts(file), parts(recalculate(file, options).bytes)];
    const differing = Object.keys(after).filter((name) => before[name] !== after[name]);
    expect(differing).toEqual(["xl/worksheets/sheet1.xml"]);
  });

  it("are worked out in the page too, and saved", () => {
    const workbook = new EditedWorkbook(file);
    expect(workbook.mended).toBe(1);
    expect(workbook.content(0, 0, 1)).toEqual({ formula: "=DRAWER.BOXWIDTH(A1,0.5)" });
    expect(workbook.calculate().results[0]!.values).toEqual([[23]]);
    expect(cellOf(workbook.save(), "B1")).toContain(">_xldudf_DRAWER_BOXWIDTH(A1,0.5)</f><v>23</v>");
  });

  it("in a cell of the older kind, as other programs write it, may spill from then on", () => {
    const { bytes } = recalculate(oneSheet('<row r="1"><c r="A1"><f>DRAWER.GRADUATED(10,2)</f></c></row>'), options);
    expect(cellOf(bytes, "A1")).toContain(
      'cm="1"><f t="array" ref="A1:A2">_xldudf_DRAWER_GRADUATED(10,2)</f><v>4.9375',
    );
    expect(cellOf(bytes, "A2")).toContain("<v>4.9375</v>");
  });

  it("without the record of formulas that spill get one", () => {
    const { bytes } = recalculate(
      oneSheet(`<row r="1">${unresolved("A1", "DRAWER.BOXWIDTH(24)", "")}</row>`, {
        links: { sheetMetadata: "none.xml" },
      }),
      options,
    );
    expect(cellOf(bytes, "A1")).toContain('ref="A1">_xldudf_DRAWER_BOXWIDTH(24)</f><v>23</v>');
  });

  it("in defined names and in tables' columns are mended too", () => {
    const table = `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Boxes" displayName="Boxes" ref="A1:B2"><tableColumns count="2"><tableColumn id="1" name="Opening"/><tableColumn id="2" name="Box"><calculatedColumnFormula>drawer.boxwidth(Boxes[[#This Row],[Opening]])</calculatedColumnFormula></tableColumn></tableColumns></table>`;
    const rows =
      '<row r="1"><c r="A1" t="inlineStr"><is><t>Opening</t></is></c><c r="B1" t="inlineStr"><is><t>Box</t></is></c></row>' +
      '<row r="2"><c r="A2"><v>24</v></c><c r="B2"><f>Narrow+1</f><v>0</v></c></row>';
    const { bytes, report } = recalculate(
      handmade({
        sheets: [
          { name: "Bench", xml: sheetXml(rows), rels: relationshipXml("rId1", "table", "../tables/table1.xml") },
        ],
        workbook:
          '<definedNames><definedName name="Narrow">DRAWER.BOXWIDTH(Bench!$A$2)</definedName><definedName name="Note">"DRAWER.BOXWIDTH(1)"</definedName></definedNames>',
        parts: { "xl/tables/table1.xml": table },
      }),
      options,
    );
    expect(parts(bytes)["xl/workbook.xml"]).toContain('name="Narrow">_xldudf_DRAWER_BOXWIDTH(Bench!$A$2)<');
    expect(parts(bytes)["xl/workbook.xml"]).toContain('name="Note">"DRAWER.BOXWIDTH(1)"<');
    expect(parts(bytes)["xl/tables/table1.xml"]).toContain(">_xldudf_DRAWER_BOXWIDTH(Boxes[[#This Row],[Opening]])<");
    expect(cellOf(bytes, "B2")).toContain("<v>24</v>");
    expect(report.mended).toBe(2);
  });

  it("in a shared formula are mended once for all its cells", () => {
    const rows =
      '<row r="1"><c r="A1"><v>24</v></c><c r="B1"><f t="shared" ref="B1:B2" si="0">DRAWER.BOXWIDTH(A1)</f></c></row>' +
      '<row r="2"><c r="A2"><v>30</v></c><c r="B2"><f t="shared" si="0"/></c></row>';
    const { bytes } = recalculate(oneSheet(rows), options);
    expect(cellOf(bytes, "B1")).toContain('si="0">_xldudf_DRAWER_BOXWIDTH(A1)</f><v>23</v>');
    expect(cellOf(bytes, "B2")).toContain("<v>29</v>");
  });
});

describe("a formula is mended", () => {
  const mend = (formula: string) => mender(OWN_FUNCTIONS, "DRAWER").formula(formula);

  it.each([
    ["DRAWER.BOXWIDTH(24)", "_xldudf_DRAWER_BOXWIDTH(24)"],
    ["drawer.boxwidth(24)", "_xldudf_DRAWER_BOXWIDTH(24)"],
    ["_xldudf_drawer_boxwidth(24)", "_xldudf_DRAWER_BOXWIDTH(24)"],
    ["_xlfn.DRAWER.BOXWIDTH(24)", "_xldudf_DRAWER_BOXWIDTH(24)"],
    ["_xludf.DRAWER.BOXWIDTH(24)", "_xldudf_DRAWER_BOXWIDTH(24)"],
    ["ROUND(DRAWER.BOXWIDTH(DRAWER.LENGTH(A1)),2)", "ROUND(_xldudf_DRAWER_BOXWIDTH(_xldudf_DRAWER_LENGTH(A1)),2)"],
    ["_xldudf_DRAWER_TAPE(DRAWER.BOXWIDTH(24))", "_xldudf_DRAWER_TAPE(_xldudf_DRAWER_BOXWIDTH(24))"],
    ["_xlfn.VSTACK(DRAWER.PARTS(A1:E4))", "_xlfn.VSTACK(_xldudf_DRAWER_PARTS(A1:E4))"],
    ["VSTACK(DRAWER.PARTS(A1:E4))", "_xlfn.VSTACK(_xldudf_DRAWER_PARTS(A1:E4))"],
    ["_xlfn.LET(_xlpm.w,DRAWER.BOXWIDTH(24),_xlpm.w*2)", "_xlfn.LET(_xlpm.w,_xldudf_DRAWER_BOXWIDTH(24),_xlpm.w*2)"],
    ["LET(w,DRAWER.BOXWIDTH(24),w*2)", "_xlfn.LET(_xlpm.w,_xldudf_DRAWER_BOXWIDTH(24),_xlpm.w*2)"],
    ['"DRAWER.TAPE(1)"&DRAWER.TAPE(1)', '"DRAWER.TAPE(1)"&_xldudf_DRAWER_TAPE(1)'],
  ])("%s", (stored, expected) => {
    expect(mend(stored)).toBe(expected);
    expect(mend(expected)).toBeUndefined();
  });

  it.each([
    "_xldudf_DRAWER_BOXWIDTH(24)",
    "_xldudf_DRAWER_NOSUCH(24)",
    "DRAWER.NOSUCH(24)",
    "TIMBER.BOXWIDTH(24)",
    "MYDRAWER.BOXWIDTH(24)",
    "DRAWER_BOXWIDTH(24)",
    "_xldudf_TIMBER_BOXWIDTH(24)",
    "VSTACK(A1:A2,DRAWER)",
    '"DRAWER.BOXWIDTH(24)"',
    "'DRAWER.BOXWIDTH'!A1",
    "BOXWIDTH(24)",
  ])("but not %s", (stored) => {
    expect(mend(stored)).toBeUndefined();
  });
});
