import { describe, expect, it } from "vitest";
import { recalculate } from "../../src/workbook";
import { fakes } from "./support/fakes";
import { cellOf, handmade, oneSheet, parts, relationshipXml, sheetOf, sheetXml, withPart } from "./support/handmade";

const options = { functions: fakes };

/** The bicycle workshop's parts bench: styles, row attributes, a shared formula, a text, and a part nobody knows. */
const BENCH = oneSheet(
  `<row r="1" spans="1:4" ht="30" customHeight="1" x14ac:dyDescent="0.25"><c r="A1" s="3" t="s"><v>0</v></c><c r="B1" s="1"><v>20</v></c></row>\n` +
    `<row r="2" spans="1:4" x14ac:dyDescent="0.25"><c r="A2" s="3" t="s"><v>1</v></c><c r="B2" s='1' cm="1"><f t="array" ref="B2">_xldudf_DRAWER_BOXWIDTH(B1)</f><v>5</v></c><c r="C2"><f t="shared" ref="C2:C3" si="0">B$1&amp;" in "&amp;'Tea chest'!$A1</f><v></v></c></row>` +
    `<row r="3"><c r="B3" t="b"><f>B2&gt;B1</f><v>1</v></c><c r="C3"><f t="shared" si="0"/></c><c r="D3"><f>LEN(A1)</f><v>10</v></c></row>`,
  {
    parts: {
      "xl/sharedStrings.xml": `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" count="2" uniqueCount="2"><si><r><t xml:space="preserve">Drawer </t></r><r><rPr><b/></rPr><t>box</t></r><rPh sb="0" eb="1"><t>reading aid</t></rPh></si><si><t>Width</t></si></sst>`,
      "xl/styles.xml": `<?xml version="1.0"?><styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><!-- kept as it is --></styleSheet>`,
      "customXml/item1.xml": "<made-by  hand='yes'/>",
      "xl/vbaProject.bin": "\u0000\u0001 not to be touched",
    },
    links: { sharedStrings: "sharedStrings.xml", styles: "styles.xml" },
    workbook: "",
  },
);

const withChest = (() => {
  const files = parts(BENCH);
  return handmade({
    sheets: [
      { name: "Bench", xml: files["xl/worksheets/sheet1.xml"]! },
      {
        name: "Tea chest",
        xml: sheetXml(
          '<row r="1"><c r="A1" t="inlineStr"><is><t>assam</t></is></c></row><row r="2"><c r="A2" t="inlineStr"><is><t>darjeeling</t></is></c></row>',
        ),
      },
    ],
    parts: Object.fromEntries(
      ["xl/sharedStrings.xml", "xl/styles.xml", "customXml/item1.xml", "xl/vbaProject.bin"].map((name) => [
        name,
        files[name]!,
      ]),
    ),
    links: { sharedStrings: "sharedStrings.xml", styles: "styles.xml" },
  });
})();

describe("recalculate(bytes)", () => {
  const { bytes, report } = recalculate(withChest, options);

  it("writes new values into their cells and leaves every other character of the sheet", () => {
    const before = sheetOf(withChest);
    const expected = before
      .replace("<v>5</v>", "<v>19</v>")
      .replace('<c r="C2">', '<c r="C2" t="str">')
      .replace("</f><v></v>", "</f><v>20 in assam</v>")
      .replace(
        '<c r="C3"><f t="shared" si="0"/></c>',
        '<c r="C3" t="str"><f t="shared" si="0"/><v>20 in darjeeling</v></c>',
      )
      .replace("<f>B2&gt;B1</f><v>1</v>", "<f>B2&gt;B1</f><v>0</v>");
    expect(sheetOf(bytes)).toBe(expected);
    expect(report).toMatchObject({ recalculated: 5, changed: 4, kept: [], errors: [] });
  });

  it("leaves every other part byte for byte, in the same order", () => {
    const before = parts(withChest);
    const after = parts(bytes);
    expect(Object.keys(after)).toEqual(Object.keys(before));
    const changed = Object.keys(before).filter((name) => before[name] !== after[name]);
    expect(changed).toEqual(["xl/worksheets/sheet1.xml"]);
  });

  it("gives the same bytes when it is run again", () => {
    const again = recalculate(bytes, options);
    expect(Buffer.compare(again.bytes, bytes)).toBe(0);
    expect(again.report.changed).toBe(0);
  });

  it("leaves the bytes that it was given as they were", () => {
    const copy = Buffer.from(withChest);
    recalculate(copy, options);
    expect(Buffer.compare(copy, withChest)).toBe(0);
  });
});

describe("values are written", () => {
  const written = (formula: string) =>
    cellOf(
      recalculate(oneSheet(`<row r="1"><c r="A1" s="7"><f>${formula}</f><v>9</v></c></row>`), options).bytes,
      "A1",
    );

  it.each([
    ["1/4", '<c r="A1" s="7"><f>1/4</f><v>0.25</v></c>'],
    ["10^21", '<c r="A1" s="7"><f>10^21</f><v>1E+21</v></c>'],
    ["10^-9", '<c r="A1" s="7"><f>10^-9</f><v>1E-9</v></c>'],
    ["1=1", '<c r="A1" s="7" t="b"><f>1=1</f><v>1</v></c>'],
    ["1/0", '<c r="A1" s="7" t="e"><f>1/0</f><v>#DIV/0!</v></c>'],
    ['""', '<c r="A1" s="7" t="str"><f>""</f><v></v></c>'],
    ['"a &amp; b"', '<c r="A1" s="7" t="str"><f>"a &amp; b"</f><v>a &amp; b</v></c>'],
    ['"&lt;b&gt;"', '<c r="A1" s="7" t="str"><f>"&lt;b&gt;"</f><v>&lt;b&gt;</v></c>'],
    ["CHAR(13)", '<c r="A1" s="7" t="str"><f>CHAR(13)</f><v>_x000D_</v></c>'],
    ["CHAR(9)", '<c r="A1" s="7" t="str"><f>CHAR(9)</f><v>\t</v></c>'],
  ])("=%s", (formula, expected) => {
    expect(written(formula)).toBe(expected);
  });

  it("a value that is stored with more digits than needed stays as it stands", () => {
    const row = '<row r="1"><c r="A1"><f>1/10</f><v>0.10000000000000001</v></c></row>';
    expect(recalculate(oneSheet(row), options).report.changed).toBe(0);
  });

  it("into cells whose place is only counted", () => {
    const row = "<row><c><v>2</v></c><c><f>A1*3</f></c></row><row><c><f>B1</f></c></row>";
    expect(sheetOf(recalculate(oneSheet(row), options).bytes)).toContain(
      "<row><c><v>2</v></c><c><f>A1*3</f><v>6</v></c></row><row><c><f>B1</f><v>6</v></c></row>",
    );
  });

  it("into a file whose elements bear a prefix", () => {
    const plain = sheetXml('<row r="1"><c r="A1"><f>1+1</f></c></row>');
    const prefixed = plain
      .replace(/<(\/?)(worksheet|dimension|sheetViews?|sheetFormatPr|sheetData|row|c|f|v|pageMargins)\b/g, "<$1x:$2")
      .replace("xmlns=", "xmlns:x=");
    const { bytes } = recalculate(handmade({ sheets: [{ name: "Bench", xml: prefixed }] }), options);
    expect(sheetOf(bytes)).toContain('<x:c r="A1"><x:f>1+1</x:f><x:v>2</x:v></x:c>');
  });

  it("reads the kinds of values that files hold", () => {
    const cells = `<c r="A1" t="b"><v>1</v></c><c r="B1" t="e"><v>#N/A</v></c><c r="C1" t="str"><v> x_x0041_</v></c><c r="D1" t="inlineStr"><is><r><t>a</t></r><r><t xml:space="preserve"> b</t></r></is></c><c r="E1"/>`;
    const formula = `<c r="F1"><f>A1&amp;ISNA(B1)&amp;C1&amp;D1&amp;ISBLANK(E1)</f></c>`;
    const { bytes } = recalculate(oneSheet(`<row r="1">${cells}${formula}</row>`), options);
    expect(cellOf(bytes, "F1")).toContain("<v>TRUETRUE xAa bTRUE</v>");
  });
});

describe("the workbook's parts", () => {
  it("sheets are found through the relationships, charts are passed over", () => {
    const bytes = handmade({
      sheets: [
        { name: "Bench", xml: sheetXml('<row r="1"><c r="A1"><f>Chest!A1+1</f></c></row>') },
        { name: "Chart", xml: '<chartsheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"/>' },
        { name: "Chest", xml: sheetXml('<row r="1"><c r="A1"><v>5</v></c></row>') },
      ],
    });
    const files = parts(bytes);
    files["xl/_rels/workbook.xml.rels"] = files["xl/_rels/workbook.xml.rels"]!.replace(
      /worksheet" Target="worksheets\/sheet2/,
      'chartsheet" Target="worksheets/sheet2',
    ).replace('Target="worksheets/sheet3.xml"', 'Target="/xl/worksheets/sheet3.xml"');
    const file = handmade({ sheets: [{ name: "x", xml: "" }], parts: files });
    expect(cellOf(recalculate(file, options).bytes, "A1")).toContain("<v>6</v>");
  });

  it("tables, sheet names and names with a scope are read from their parts", () => {
    const table = `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Parts" displayName="Parts" ref="A1:B3" totalsRowShown="0"><autoFilter ref="A1:B3"/><tableColumns count="2"><tableColumn id="1" name="Part"/><tableColumn id="2" name="Width"/></tableColumns></table>`;
    const rows = `<row r="1"><c r="A1" t="str"><v>Part</v></c><c r="B1" t="str"><v>Width</v></c></row><row r="2"><c r="B2"><v>4</v></c></row><row r="3" hidden="1"><c r="B3"><v>6</v></c></row><row r="4"><c r="B4"><f>SUM(Parts[Width])*Gap</f></c><c r="C4"><f>SUBTOTAL(9,Parts[Width])</f></c></row>`;
    const bytes = handmade({
      sheets: [{ name: "Bench", xml: sheetXml(rows), rels: relationshipXml("t1", "table", "../tables/table1.xml") }],
      workbook: `<definedNames><definedName name="Gap">3</definedName><definedName name="Gap" localSheetId="0">2</definedName></definedNames>`,
      parts: { "xl/tables/table1.xml": table },
    });
    const { bytes: out } = recalculate(bytes, options);
    expect(cellOf(out, "B4")).toContain("<v>20</v>");
    expect(cellOf(out, "C4")).toContain("<v>4</v>");
  });

  it("macros stay as they are", () => {
    const files = parts(withChest);
    const types = files["[Content_Types].xml"]!.replace(
      "openxmlformats-officedocument.spreadsheetml.sheet.main",
      "ms-excel.sheet.macroEnabled.main",
    );
    const file = withPart(withChest, "[Content_Types].xml", types);
    const after = parts(recalculate(file, options).bytes);
    expect(after["xl/vbaProject.bin"]).toBe(files["xl/vbaProject.bin"]);
    expect(after["[Content_Types].xml"]).toBe(types);
  });

  it("dates count from 1904 where the workbook says so", () => {
    const bytes = oneSheet('<row r="1"><c r="A1"><f>DATE(1904,1,2)</f></c></row>', {
      properties: '<workbookPr date1904="1"/>',
    });
    expect(cellOf(recalculate(bytes, options).bytes, "A1")).toContain("<v>1</v>");
  });
});

describe("formulas that keep their values", () => {
  const rows = `<row r="1"><c r="A1"><f>CUBEVALUE("x")</f><v>5</v></c><c r="B1"><f>A1+1</f><v>0</v></c></row><row r="2"><c r="A2"><f t="dataTable" ref="A2:A3" dt2D="0" dtr="0" r1="B1"/><v>8</v></c></row><row r="3"><c r="A3"><v>9</v></c></row><row r="4"><c r="A4"><f>[1]Sheet1!A1</f><v>7</v></c></row><row r="5"><c r="A5"><f t="shared" si="4"/><v>1</v></c></row>`;
  const { bytes, report } = recalculate(oneSheet(rows), options);

  it("are listed with their cell and what they lack", () => {
    expect(report.kept).toEqual([
      { sheet: "Bench", cell: "A1", reason: "calls CUBEVALUE, which is not known here", functions: ["CUBEVALUE"] },
      { sheet: "Bench", cell: "A2", reason: "is a what-if data table", functions: [] },
      { sheet: "Bench", cell: "A4", reason: "refers to another workbook, [1]Sheet1!A1", functions: [] },
      { sheet: "Bench", cell: "A5", reason: "shares a formula that the file does not hold", functions: [] },
    ]);
  });

  it("stay as they stand, and others go on from them", () => {
    expect(sheetOf(bytes)).toBe(sheetOf(oneSheet(rows)).replace("<f>A1+1</f><v>0</v>", "<f>A1+1</f><v>6</v>"));
  });
});

it("errors of custom functions are reported by sheet, cell and message", () => {
  const row = `<row r="1"><c r="A1" cm="1"><f t="array" ref="A1">_xldudf_DRAWER_BOXWIDTH("wide")</f><v>1</v></c><c r="B1"><f>A1</f><v>1</v></c></row>`;
  expect(recalculate(oneSheet(row), options).report.errors).toEqual([
    { sheet: "Bench", cell: "A1", error: "#VALUE!", message: "opening_width: “wide” is no length." },
  ]);
});

it("an array formula that says it fills a whole sheet keeps its value", () => {
  const row = '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:XFD1048576">1+1</f><v>5</v></c></row>';
  expect(recalculate(oneSheet(row), options).report.kept).toMatchObject([
    { cell: "A1", reason: "fills too many cells" },
  ]);
});
