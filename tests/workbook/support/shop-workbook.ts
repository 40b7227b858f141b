import { handmade, relationshipXml, sheetXml } from "./handmade";

const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006";
const TYPES = "application/vnd.openxmlformats-officedocument";
const rels = (inside: string) =>
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inside}</Relationships>`;

/**
 * A workbook whose sheets are referred to in every way that is known: Bench (with a table, and a drawing with a chart),
 * Cuts, Spare and the hidden Notes. The tab in front is Cuts.
 * @param odd whether an add-in's part names the sheet Bench too
 * @param slicer what is inside the part of a slicer, if there is one
 */
export function shopWorkbook({ odd = false, slicer = "" } = {}): Uint8Array {
  const bench = sheetXml(
    '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="inlineStr"><is><t>Width</t></is></c><c r="C1" t="inlineStr"><is><t>Box</t></is></c></row>' +
      [24, 30, 18]
        .map(
          (width, i) =>
            `<row r="${i + 2}"><c r="A${i + 2}" t="inlineStr"><is><t>Drawer ${i + 1}</t></is></c><c r="B${i + 2}"><v>${width}</v></c>${i === 0 ? '<c r="C2"><f>Bench!B2-1</f><v>23</v></c>' : ""}</row>`,
        )
        .join(""),
    { after: "" },
  ).replace(
    "</worksheet>",
    '<drawing r:id="rId2"/><tableParts count="1"><tablePart r:id="rId1"/></tableParts></worksheet>',
  );
  const cuts = sheetXml(
    '<row r="1"><c r="A1"><f>Bench!B2*2</f><v>48</v></c></row><row r="2"><c r="A2"><f>SUM(Openings[Width])</f><v>72</v></c></row><row r="3"><c r="A3"><f>SUM(Widths)</f><v>72</v></c></row>',
    {
      after:
        '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>A1&gt;Bench!$B$3</formula></cfRule></conditionalFormatting>' +
        '<dataValidations count="1"><dataValidation type="list" prompt="See Bench!A1" sqref="B1"><formula1>Bench!$A$2:$A$4</formula1></dataValidation></dataValidations>' +
        '<hyperlinks><hyperlink ref="C1" location="Bench!A1" tooltip="Bench!A1"/></hyperlinks>',
    },
  ).replace("<sheetData>", "<sheetData>");
  return handmade({
    properties: '<bookViews><workbookView firstSheet="0" activeTab="1"/></bookViews>',
    sheets: [
      {
        name: "Bench",
        xml: bench,
        rels:
          relationshipXml("rId1", "table", "../tables/table1.xml") +
          relationshipXml("rId2", "drawing", "../drawings/drawing1.xml"),
      },
      { name: "Cuts", xml: cuts },
      { name: "Spare", xml: sheetXml("") },
      { name: "Notes", xml: sheetXml("") },
    ],
    workbook:
      '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Bench!$A$1:$C$9</definedName>' +
      '<definedName name="_xlnm.Print_Titles" localSheetId="1">Cuts!$1:$1</definedName>' +
      '<definedName name="Widths">Bench!$B$2:$B$4</definedName></definedNames>',
    links: {
      sharedStrings: "sharedStrings.xml",
      calcChain: "calcChain.xml",
      ...(odd ? { odd: "odd.xml" } : {}),
      ...(slicer ? { slicerCache: "slicer.xml" } : {}),
    },
    contentTypes: [
      ["/xl/sharedStrings.xml", `${TYPES}.spreadsheetml.sharedStrings+xml`],
      ["/xl/calcChain.xml", `${TYPES}.spreadsheetml.calcChain+xml`],
      ["/xl/tables/table1.xml", `${TYPES}.spreadsheetml.table+xml`],
      ["/xl/drawings/drawing1.xml", `${TYPES}.drawing+xml`],
      ["/xl/charts/chart1.xml", `${TYPES}.drawingml.chart+xml`],
      ["/docProps/app.xml", `${TYPES}.extended-properties+xml`],
      ...[1, 2, 3, 4].map((i) => [`/xl/worksheets/sheet${i}.xml`, `${TYPES}.spreadsheetml.worksheet+xml`]),
      ["/xl/metadata.xml", `${TYPES}.spreadsheetml.sheetMetadata+xml`],
    ]
      .map(([name, type]) => `<Override PartName="${name}" ContentType="${type}"/>`)
      .join(""),
    parts: {
      "_rels/.rels": rels(
        relationshipXml("rId1", "officeDocument", "xl/workbook.xml") +
          relationshipXml("rId2", "extended-properties", "docProps/app.xml"),
      ),
      "docProps/app.xml":
        '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"><Application>Test</Application>' +
        '<HeadingPairs><vt:vector size="4" baseType="variant"><vt:variant><vt:lpstr>Worksheets</vt:lpstr></vt:variant><vt:variant><vt:i4>4</vt:i4></vt:variant><vt:variant><vt:lpstr>Named Ranges</vt:lpstr></vt:variant><vt:variant><vt:i4>2</vt:i4></vt:variant></vt:vector></HeadingPairs>' +
        '<TitlesOfParts><vt:vector size="6" baseType="lpstr"><vt:lpstr>Bench</vt:lpstr><vt:lpstr>Cuts</vt:lpstr><vt:lpstr>Spare</vt:lpstr><vt:lpstr>Notes</vt:lpstr><vt:lpstr>Bench!Print_Area</vt:lpstr><vt:lpstr>Cuts!Print_Titles</vt:lpstr></vt:vector></TitlesOfParts></Properties>',
      "xl/sharedStrings.xml":
        '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" count="1" uniqueCount="1"><si><t>Bench!A1 of the Bench</t></si></sst>',
      "xl/calcChain.xml":
        '<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="C2" i="1"/><c r="A1" i="2"/><c r="A2"/><c r="A3"/></calcChain>',
      "xl/tables/table1.xml":
        '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Openings" displayName="Openings" ref="A1:B4" totalsRowShown="0"><tableColumns count="2"><tableColumn id="1" name="Bench!A1 of the Bench"/><tableColumn id="2" name="Width"><calculatedColumnFormula>Bench!$B$2</calculatedColumnFormula></tableColumn></tableColumns></table>',
      "xl/drawings/drawing1.xml": `<xdr:wsDr xmlns:xdr="${DRAWING}/spreadsheetDrawing" xmlns:a="${DRAWING}/main"><xdr:sp textlink="Bench!$A$1"/><c:chart xmlns:c="${DRAWING}/chart" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rId1"/></xdr:wsDr>`,
      "xl/drawings/_rels/drawing1.xml.rels": rels(
        relationshipXml("rId1", "chart", "../charts/chart1.xml") + relationshipXml("rId2", "hyperlink", "#Bench!A1"),
      ),
      "xl/charts/chart1.xml": `<c:chartSpace xmlns:c="${DRAWING}/chart"><c:f>Bench!$B$2:$B$4</c:f></c:chartSpace>`,
      ...(slicer ? { "xl/slicer.xml": `<slicerCacheDefinition>${slicer}</slicerCacheDefinition>` } : {}),
      ...(odd ? { "xl/odd.xml": '<odd at="Bench!$A$1"/>' } : {}),
    },
  });
}
