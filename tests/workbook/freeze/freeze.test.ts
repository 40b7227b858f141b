import { beforeAll, describe, expect, it } from "vitest";
import type * as SheetJS from "xlsx";
import { cellName } from "../../../src/workbook/address";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { CellError, type CustomFunction } from "../../../src/workbook/engine/index";
import { partsBenchFile } from "../support/parts-bench";
import { freeze, type Stamp } from "../../../src/workbook/freeze/index";
import { recalculate } from "../../../src/workbook/index";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { DEFAULT_CHOICES, newJob } from "../../../src/workbook/new-job/index";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { fakes } from "../support/fakes";
import { cellOf, handmade, oneSheet, parts, relationshipXml, sheetOf, sheetXml } from "../support/handmade";
import { lawWorkbooks } from "../support/law-workbooks";
import { readByLibreOffice } from "../support/read-by-libreoffice";

const STAMP: Stamp = { date: "2026-05-04", version: "1.2.3" };
const NOW = new Date(2026, 4, 4);
type Functions = Record<string, CustomFunction>;
const ours = (bytes: Uint8Array, only?: string) => freeze(bytes, { functions: OWN_FUNCTIONS, now: NOW }, STAMP, only);
const faked = (bytes: Uint8Array, only?: string) => freeze(bytes, { functions: fakes, now: NOW }, STAMP, only);

/** Every value of a workbook, cell by cell, as the engine finds it anew. */
function valuesOf(bytes: Uint8Array, functions: Functions = OWN_FUNCTIONS, only?: string): Record<string, unknown> {
  const { book } = openWorkbook(recalculate(bytes, { functions, now: NOW }).bytes);
  const shown = (value: unknown) => (value instanceof CellError ? value.code : value);
  return Object.fromEntries(
    book.sheets
      .filter(({ name }) => only === undefined || name === only)
      .flatMap(({ name, cells }) =>
        [...cells.values()].map(({ row, column, value }) => [`${name}!${cellName(row, column)}`, shown(value)]),
      ),
  );
}

const formulasOf = (bytes: Uint8Array): string[] =>
  openWorkbook(bytes).book.sheets.flatMap(({ cells }) =>
    [...cells.values()].flatMap(({ formula }) => (formula ? [formula.text] : [])),
  );

const everyText = (bytes: Uint8Array): string => Object.values(parts(bytes)).join("\n");

const dynamic = (cell: string, formula: string, ref = cell) =>
  `<c r="${cell}" cm="1"><f t="array" ref="${ref}">${formula}</f><v>0</v></c>`;

describe("a frozen workbook holds the results of our functions as values", () => {
  let bench: Uint8Array;
  let frozenBench: Uint8Array;
  beforeAll(() => {
    bench = partsBenchFile();
    frozenBench = ours(bench).bytes;
  });

  it("no call of ours is left, no value is another, and every native formula stays", () => {
    for (const [before, after] of [
      [bench, frozenBench],
      ...[DEFAULT_CHOICES.in, DEFAULT_CHOICES.mm].map((choices) => [
        writeWorkbook(newJob(choices)),
        ours(writeWorkbook(newJob(choices))).bytes,
      ]),
    ] as const) {
      expect(everyText(after)).not.toMatch(/_xldudf_|DRAWER\./i);
      expect(valuesOf(after)).toEqual(valuesOf(before));
      const native = formulasOf(before).filter((formula) => !/_xldudf_/i.test(formula));
      expect(formulasOf(after)).toHaveLength(native.length);
    }
    expect(formulasOf(frozenBench).length).toBeGreaterThan(50);
  });

  it("freeze(freeze(x)) is freeze(x), byte for byte, whole and one sheet alone", () => {
    expect(Buffer.compare(ours(frozenBench).bytes, frozenBench)).toBe(0);
    const quote = ours(bench, "Quote").bytes;
    expect(Buffer.compare(ours(quote, "Quote").bytes, quote)).toBe(0);
  });

  it("a sheet alone has the values that it had", () => {
    for (const name of ["Quote", "What if", "Plan", "Price grid"]) {
      const { bytes } = ours(bench, name);
      expect(openWorkbook(bytes).workbook.sheets.map((sheet) => sheet.name)).toEqual([name]);
      expect(everyText(bytes), name).not.toMatch(/_xldudf_|#REF!/);
      expect(valuesOf(bytes, OWN_FUNCTIONS, name), name).toEqual(valuesOf(bench, OWN_FUNCTIONS, name));
    }
  });

  it("LibreOffice works it out to the same values, and knows every name in it", () => {
    const files = [frozenBench, ours(writeWorkbook(newJob(DEFAULT_CHOICES.in))).bytes, ours(bench, "What if").bytes];
    let same = 0;
    readByLibreOffice(files).forEach((read, i) => {
      for (const [place, value] of Object.entries(valuesOf(files[i]!))) {
        if (value === "") continue;
        const [, sheet, cell] = /^(.*)!([A-Z]+\d+)$/.exec(place)!;
        const found = read.Sheets[sheet!]![cell!] as SheetJS.CellObject | undefined;
        const there = found?.t === "e" ? found.w : found?.v;
        if (typeof value !== "number") expect(there, `${i} ${place}`).toBe(value);
        // It writes fifteen digits.
        else expect(Math.abs(Number(there) - value), `${i} ${place}`).toBeLessThanOrEqual(1e-13 * Math.abs(value));
        same++;
      }
    });
    expect(same).toBeGreaterThan(3_000);
  });

  it("files of other writers that call nothing of ours stay as they are, byte for byte; each of their sheets alone keeps its values", async () => {
    for (const [name, file] of Object.entries(await lawWorkbooks())) {
      const worked = recalculate(file, { functions: OWN_FUNCTIONS, now: NOW }).bytes;
      expect(Buffer.compare(ours(file).bytes, worked), name).toBe(0);
      for (const { name: sheet } of openWorkbook(file).workbook.sheets) {
        const { bytes } = ours(file, sheet);
        expect(valuesOf(bytes), `${name}, ${sheet}`).toEqual(valuesOf(file, OWN_FUNCTIONS, sheet));
        const names = openWorkbook(bytes).book.names.map(({ text }) => text);
        expect(
          names.filter((text) => text.includes("#REF!")),
          `${name}, ${sheet}`,
        ).toEqual([]);
      }
    }
  });
});

describe("what refers to a result goes on referring to it", () => {
  const file = handmade({
    sheets: [
      {
        name: "Plan",
        xml: sheetXml(
          `<row r="1">${dynamic("A1", "_xldudf_DRAWER_COUNTDOWN(4)", "A1:A4")}<c r="C1"><f t="shared" ref="C1:C2" si="0">SUM(_xlfn.ANCHORARRAY(A$1))</f></c></row>` +
            `<row r="2"><c r="A2"><v>3</v></c><c r="C2"><f t="shared" si="0"/></c></row>` +
            `<row r="3"><c r="D3"><f t="array" ref="D3:D4">_xlfn.ANCHORARRAY(A1)*2</f></c>${dynamic("E3", "_xlfn.ANCHORARRAY($A$1)*2", "E3:E6")}</row>`,
          {
            after:
              '<conditionalFormatting sqref="C1"><cfRule type="expression" priority="1"><formula>C1&gt;MAX(_xlfn.ANCHORARRAY($A$1))</formula></cfRule></conditionalFormatting>' +
              '<dataValidations count="1"><dataValidation type="list" sqref="F1"><formula1>_xlfn.ANCHORARRAY($A$1)</formula1></dataValidation></dataValidations>',
          },
        ),
      },
      { name: "Sum", xml: sheetXml('<row r="1"><c r="A1"><f>SUM(All)+ROWS(_xlfn.ANCHORARRAY(Plan!A1))</f></c></row>') },
    ],
    workbook: '<definedNames><definedName name="All">_xlfn.ANCHORARRAY(Plan!$A$1)</definedName></definedNames>',
  });

  it("A1# becomes the range that was spilled, in cells, arrays, names, rules and lists", () => {
    const { bytes, frozen } = faked(file);
    expect(frozen).toBe(1);
    expect(cellOf(bytes, "A1")).toBe('<c r="A1"><v>4</v></c>');
    expect(cellOf(bytes, "C1")).toContain("<f>SUM(A$1:A$4)</f>");
    expect(cellOf(bytes, "C2")).toContain("<f>SUM(A$1:A$4)</f>");
    expect(cellOf(bytes, "D3")).toContain('<f t="array" ref="D3:D4">A1:A4*2</f>');
    expect(cellOf(bytes, "E3")).toContain("$A$1:$A$4*2</f>");
    expect(cellOf(bytes, "A1", 2)).toContain("ROWS(Plan!A1:A4)");
    expect(parts(bytes)["xl/workbook.xml"]).toContain(">Plan!$A$1:$A$4<");
    expect(sheetOf(bytes)).toContain("<formula>C1&gt;MAX($A$1:$A$4)</formula>");
    expect(sheetOf(bytes)).toContain("<formula1>$A$1:$A$4</formula1>");
    expect(everyText(bytes)).not.toMatch(/ANCHORARRAY|_xldudf_/);
    expect(valuesOf(bytes)).toEqual(valuesOf(file, fakes));
  });

  it("one sheet alone takes values from the others, and leaves names that led there", () => {
    const { bytes } = faked(file, "sum");
    expect(openWorkbook(bytes).workbook.sheets.map(({ name }) => name)).toEqual(["Sum"]);
    expect(cellOf(bytes, "A1", 2)).toBe('<c r="A1"><v>14</v></c>');
    expect(parts(bytes)["xl/workbook.xml"]).not.toContain("definedName");
    expect(everyText(bytes)).not.toContain("#REF!");
  });

  it("rules and lists that read other sheets go with them; the others stay, and are counted", () => {
    const after =
      '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>A1&gt;Plan!$A$1</formula></cfRule></conditionalFormatting>' +
      '<conditionalFormatting sqref="A2"><cfRule type="expression" priority="2"><formula>A2&gt;1</formula></cfRule></conditionalFormatting>' +
      '<dataValidations count="2"><dataValidation type="list" sqref="B1"><formula1>Plan!$A$1:$A$4</formula1></dataValidation><dataValidation type="list" sqref="B2"><formula1>"a,b"</formula1></dataValidation></dataValidations>';
    const two = handmade({
      sheets: [
        { name: "Plan", xml: sheetXml("") },
        { name: "Sum", xml: sheetXml("", { after }) },
      ],
    });
    const { bytes } = faked(two, "Sum");
    const [text] = Object.entries(parts(bytes)).flatMap(([name, xml]) => (/sheet2\.xml$/.test(name) ? [xml] : []));
    expect(text).not.toContain("Plan!");
    expect(text!.match(/<conditionalFormatting/g)).toHaveLength(1);
    expect(text).toContain('<dataValidations count="1">');
    expect(text).toContain('"a,b"');
  });

  it("a formula that reads formulas as texts, a what-if data table and a name that calls ours become values too", () => {
    const one = oneSheet(
      `<row r="1">${dynamic("A1", "_xldudf_DRAWER_COUNTDOWN(2)", "A1:A2")}<c r="B1" t="str"><f>_xlfn.FORMULATEXT(A1)</f><v>=…</v></c><c r="C1"><f t="dataTable" ref="C1:C2" dt2D="0" dtr="0" r1="A1"/><v>7</v></c></row>` +
        '<row r="2"><c r="A2"><v>1</v></c><c r="C2"><v>8</v></c><c r="D2"><f>SUM(Down)</f></c></row>',
      { workbook: '<definedNames><definedName name="Down">_xldudf_DRAWER_COUNTDOWN(3)</definedName></definedNames>' },
    );
    const { bytes, frozen } = faked(one);
    expect(frozen).toBe(4);
    expect(formulasOf(bytes)).toEqual([]);
    expect(cellOf(bytes, "C1")).toBe('<c r="C1"><v>7</v></c>');
    expect(cellOf(bytes, "D2")).toBe('<c r="D2"><v>6</v></c>');
    expect(parts(bytes)["xl/workbook.xml"]).toContain(">{3;2;1}</definedName>");
  });

  it("a table's column keeps its values and forgets the formula, which a new row would call", () => {
    const table =
      '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="T" displayName="T" ref="A1:A3" totalsRowCount="1"><tableColumns count="1"><tableColumn id="1" name="Box" totalsRowFunction="custom"><calculatedColumnFormula>_xldudf_DRAWER_BOXWIDTH(20)</calculatedColumnFormula><totalsRowFormula>_xldudf_DRAWER_BOXWIDTH(9)</totalsRowFormula></tableColumn></tableColumns></table>';
    const xml = sheetXml(
      `<row r="1"><c r="A1" t="inlineStr"><is><t>Box</t></is></c></row><row r="2">${dynamic("A2", "_xldudf_DRAWER_BOXWIDTH(20)")}</row><row r="3">${dynamic("A3", "_xldudf_DRAWER_BOXWIDTH(9)")}</row>`,
    );
    const { bytes } = faked(
      handmade({
        sheets: [{ name: "Bench", xml, rels: relationshipXml("rId1", "table", "../tables/table1.xml") }],
        parts: { "xl/tables/table1.xml": table },
      }),
    );
    expect(parts(bytes)["xl/tables/table1.xml"]).toContain('<tableColumn id="1" name="Box"></tableColumn>');
    expect(cellOf(bytes, "A2")).toBe('<c r="A2"><v>19</v></c>');
  });
});

describe("what a frozen cell holds", () => {
  it("an error stays the error that it is, so that formulas which count on it go on", () => {
    const { bytes, report } = faked(
      oneSheet(`<row r="1">${dynamic("A1", "_xldudf_DRAWER_SLIDELENGTH(4)")}<c r="B1"><f>IFERROR(A1,0)</f></c></row>`),
    );
    expect(cellOf(bytes, "A1")).toBe('<c r="A1" t="e"><v>#N/A</v></c>');
    expect(cellOf(bytes, "B1")).toContain("<f>IFERROR(A1,0)</f><v>0</v>");
    expect(report.errors).toEqual([{ sheet: "Bench", cell: "A1", error: "#N/A", message: "No slide is so short." }]);
  });

  it("texts, their styles, and the formats that results bring where a cell has none", () => {
    const { bytes } = ours(
      oneSheet(
        `<row r="1">${dynamic("A1", '_xldudf_DRAWER_BOXWIDTH("24 1/16")')}${dynamic("B1", "_xldudf_DRAWER_TAPE(0.5)").replace('r="B1"', 'r="B1" s="0"')}</row>`,
      ),
    );
    const { sheets } = openWorkbook(bytes).book;
    expect([...sheets[0]!.cells.values()].map(({ value }) => value)).toEqual([23.0625, '1/2"']);
    expect(parts(bytes)["xl/styles.xml"]).toContain('numFmtId="13"');
    expect(cellOf(bytes, "A1")).toMatch(/<c r="A1" s="1"><v>23.0625<\/v><\/c>/);
    expect(cellOf(bytes, "B1")).toContain('s="0" t="inlineStr"');
  });
});

describe("when it was, and by what", () => {
  const cell = dynamic("A1", "_xldudf_DRAWER_BOXWIDTH(20)");
  const footed = (footer: string) => {
    const xml = sheetXml(`<row r="1">${cell}</row>`).replace("</worksheet>", `${footer}</worksheet>`);
    return handmade({ sheets: [{ name: "Bench", xml }] });
  };
  const LINE = "&amp;L&amp;8Values of 2026-05-04, Groove &amp;&amp; Reveal 1.2.3";

  it("stands in the file's properties, beside those that are there", () => {
    const { bytes } = faked(footed(""));
    const all = parts(bytes);
    expect(all["docProps/custom.xml"]).toContain('name="Values of"><vt:lpwstr');
    expect(all["docProps/custom.xml"]).toContain(">2026-05-04<");
    expect(all["docProps/custom.xml"]).toContain("Groove &amp; Reveal 1.2.3");
    expect(all["_rels/.rels"]).toContain('Target="docProps/custom.xml"');
    expect(all["[Content_Types].xml"]).toContain('PartName="/docProps/custom.xml"');
  });

  it.each([
    ["no foot at all", "", `<headerFooter><oddFooter>${LINE}</oddFooter></headerFooter>`],
    [
      "a head",
      "<headerFooter><oddHeader>&amp;CBench</oddHeader></headerFooter>",
      `<headerFooter><oddHeader>&amp;CBench</oddHeader><oddFooter>${LINE}</oddFooter></headerFooter>`,
    ],
    [
      "a foot in the middle",
      "<headerFooter><oddFooter>Page &amp;P</oddFooter></headerFooter>",
      `<headerFooter><oddFooter>${LINE}&amp;CPage &amp;P</oddFooter></headerFooter>`,
    ],
    [
      "a foot at the left, which stays",
      "<headerFooter><oddFooter>&amp;LMine</oddFooter></headerFooter>",
      "<headerFooter><oddFooter>&amp;LMine</oddFooter></headerFooter>",
    ],
  ])("stands at the left of the printed foot, beside %s", (_, before, after) => {
    expect(sheetOf(faked(footed(before)).bytes)).toContain(after);
  });

  it("says which sheets there are where one is asked for that is not", () => {
    expect(() => faked(footed(""), "Bend")).toThrow("The workbook has no sheet “Bend”; it has “Bench”.");
  });
});
