import ExcelJS from "exceljs";
import { strToU8, unzipSync, zipSync } from "fflate";
import { METADATA } from "../../src/workbook/edit/dynamic-mark";

/** A workbook as the spreadsheet program leaves it: one formula of ours, a style, a second sheet, a part of its own. */
export async function shopWorkbook(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Job");
  sheet.addRow(["Opening", "Box"]);
  sheet.addRow([24, null]);
  sheet.getCell("A1").font = { bold: true };
  sheet.getCell("A2").numFmt = "# ??/??";
  sheet.getCell("B2").value = { formula: "_xldudf_DRAWER_BOXWIDTH(A2)", result: 23 } as ExcelJS.CellFormulaValue;
  workbook.addWorksheet("Notes").getCell("A1").value = "Ask about the key.";
  const parts = unzipSync(new Uint8Array(await workbook.xlsx.writeBuffer()));
  const text = (part: string) => new TextDecoder().decode(parts[part]);
  const inserted = (part: string, before: string, what: string) => {
    parts[part] = strToU8(text(part).replace(before, what + before));
  };
  parts["xl/worksheets/sheet1.xml"] = strToU8(
    text("xl/worksheets/sheet1.xml").replace(/<c r="B2"([^>]*)><f>/, '<c r="B2"$1 cm="1"><f t="array" ref="B2">'),
  );
  parts["xl/metadata.xml"] = strToU8(METADATA);
  parts["customXml/item1.xml"] = strToU8("<shop:note xmlns:shop='urn:shop'>left as it is</shop:note>");
  inserted("[Content_Types].xml", "</Types>", `<Override PartName="/xl/metadata.xml" ContentType="${TYPE}"/>`);
  inserted(
    "xl/_rels/workbook.xml.rels",
    "</Relationships>",
    `<Relationship Id="rIdM" Type="${LINK}" Target="metadata.xml"/>`,
  );
  return zipSync(parts);
}

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const LINK = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";
