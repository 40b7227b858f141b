import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as XLSX from "xlsx";
import { parseLength, toDouble } from "../../src/core/length";
import { convert } from "../libreoffice";
import { PARTS_BENCH } from "../worked/plans";
import { METADATA } from "./support/handmade";

/** A workbook such as a shop has: its own sheets, names, formats and native sums, with our functions among them. */
async function shopWorkbook(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  const measured = book.addWorksheet("Measured", { views: [{ state: "frozen", ySplit: 1 }] });
  PARTS_BENCH.openings.forEach((row) => measured.addRow(row.map((cell) => (cell === "" ? null : cell))));
  measured.getColumn(2).width = 14;
  measured.getColumn(2).numFmt = "# ??/16";
  const standards = book.addWorksheet("Standards");
  PARTS_BENCH.standards.forEach((row) => standards.addRow(row));
  const plan = book.addWorksheet("Plan");
  plan.getCell("A1").value = { formula: "_xldudf_DRAWER_PLAN(Openings,Standards)" };
  plan.getCell("C2").numFmt = "# ??/??";
  const prices = book.addWorksheet("Prices & sums");
  const rows: [string, string][] = [
    ["Front area in sq ft", "SUMPRODUCT(Plan!C2:C9,Plan!D2:D9)/144"],
    ["Drawers", "ROWS(_xlfn.ANCHORARRAY(Plan!A1))-1"],
    ["Widest box", "MAX(INDEX(_xlfn.ANCHORARRAY(Plan!A1),0,6))"],
    ["Widest box on the tape", "_xldudf_DRAWER_TAPE(B3)"],
    ["Fronts at so much a square foot", "ROUND(B1*Rate,2)"],
    ["A box that cannot be", "_xldudf_DRAWER_BOXWIDTH(0.5)"],
  ];
  rows.forEach(([label, formula]) => prices.addRow([label, { formula }]));
  prices.getCell("B5").numFmt = '"$"#,##0.00';
  prices.addConditionalFormatting({
    ref: "B1:B5",
    rules: [{ type: "cellIs", operator: "greaterThan", priority: 1, formulae: [100], style: { font: { bold: true } } }],
  });
  book.definedNames.add("Measured!$A$1:$H$4", "Openings");
  book.definedNames.add("Standards!$A$1:$B$1", "Standards");
  prices.getCell("D1").value = 14.5;
  book.definedNames.add("'Prices & sums'!$D$1", "Rate");
  return asStored(new Uint8Array(await book.xlsx.writeBuffer()));
}

/** Formulas of ours as the spreadsheet program stores them: dynamic arrays, with the record that marks them. */
function asStored(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const edit = (name: string, change: (xml: string) => string) =>
    (parts[name] = strToU8(change(strFromU8(parts[name]!))));
  for (const name of Object.keys(parts).filter((part) => /worksheets\/sheet\d+\.xml$/.test(part))) {
    edit(name, (xml) =>
      xml.replace(
        /<c r="([A-Z]+\d+)"([^>]*)><f>(_xldudf_[^<]*|[^<]*ANCHORARRAY[^<]*)<\/f>(?:<v><\/v>|<v\/>)?<\/c>/g,
        '<c r="$1"$2 cm="1"><f t="array" ref="$1">$3</f></c>',
      ),
    );
  }
  parts["xl/metadata.xml"] = strToU8(METADATA);
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
  edit("[Content_Types].xml", (xml) =>
    xml.replace("</Types>", `<Override PartName="/xl/metadata.xml" ContentType="${type}"/></Types>`),
  );
  const relation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";
  edit("xl/_rels/workbook.xml.rels", (xml) =>
    xml.replace(
      "</Relationships>",
      `<Relationship Id="rIdMeta" Type="${relation}" Target="metadata.xml"/></Relationships>`,
    ),
  );
  return zipSync(parts);
}

let folder: string;
let before: Uint8Array;
let after: Uint8Array;
let printed: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "shop-"));
  before = await shopWorkbook();
  writeFileSync(join(folder, "shop.xlsx"), before);
  const command = ["run", "--silent", "recalculate", "--", join(folder, "shop.xlsx"), "-o", join(folder, "done.xlsx")];
  const { status, stdout, stderr } = spawnSync("npm", command, { encoding: "utf8" });
  printed = stdout;
  expect([status, stderr]).toEqual([0, ""]);
  after = readFileSync(join(folder, "done.xlsx"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const exact = (text: string) => toDouble(parseLength(text, "in"));

describe("a shop's own workbook, recalculated from the command line", () => {
  it("holds the whole plan of the bench, every size exact", () => {
    const plan = XLSX.utils.sheet_to_json<unknown[]>(XLSX.read(after).Sheets["Plan"]!, { header: 1 });
    const expected = PARTS_BENCH.plan
      .map((line) => line.split(" | "))
      .map(([drawer, ...sizes]) => [drawer, drawer![0], ...sizes.map(exact)]);
    expect(plan.slice(1)).toEqual(expected);
  });

  it("holds the shop's native sums over it, and what ours says of what cannot be", () => {
    const sums = XLSX.read(after).Sheets["Prices & sums"]!;
    const area = PARTS_BENCH.plan.reduce((sum, line) => {
      const [, width, height] = line.split(" | ");
      return sum + exact(width!) * exact(height!);
    }, 0);
    expect(sums["B1"].v).toBeCloseTo(area / 144, 10);
    expect([sums["B2"].v, sums["B3"].v, sums["B4"].v]).toEqual([8, 29, '29"']);
    expect(sums["B5"].v).toBe(Math.round((area / 144) * 14.5 * 100) / 100);
    expect(printed).toContain(
      "'Prices & sums'!B6: #VALUE! opening_width is 1/2 in. With 1/2 in for the slide on each side it must be more than 1 in.",
    );
  });

  it("keeps every part but the cells byte for byte", () => {
    const [old, now] = [unzipSync(before), unzipSync(after)];
    expect(Object.keys(now)).toEqual(Object.keys(old));
    const changed = Object.keys(old).filter((name) => Buffer.compare(old[name]!, now[name]!) !== 0);
    expect(changed.sort()).toEqual(["xl/worksheets/sheet3.xml", "xl/worksheets/sheet4.xml"]);
    const outside = (xml: Uint8Array) =>
      strFromU8(xml)
        .replace(/<sheetData>.*<\/sheetData>/s, "")
        .replace(/<dimension [^>]*>/, "");
    for (const name of changed) expect(outside(now[name]!)).toBe(outside(old[name]!));
  });

  it("opens in LibreOffice, which shows the same sums", () => {
    // The native sums are LibreOffice's own, over the cells that our functions filled.
    const everySheet = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";
    convert(join(folder, "done.xlsx"), join(folder, "csv"), everySheet);
    const csv = readFileSync(join(folder, "csv", "done-Prices & sums.csv"), "utf8");
    const shown = csv.split("\n").map((line) => line.split(",")[1]);
    const area = XLSX.read(after).Sheets["Prices & sums"]!["B1"].v as number;
    expect(Number(shown[0])).toBeCloseTo(area, 10);
    expect(shown[4]).toBe((Math.round(area * 14.5 * 100) / 100).toFixed(2));
  });
});
