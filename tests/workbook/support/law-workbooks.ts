import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import * as SheetJS from "xlsx";
import { convert } from "../../libreoffice";
import { handmade, oneSheet, sheetXml } from "./handmade";
import { shopWorkbook } from "./shop-workbook";

/** Workbooks of several writers, blank and full, small enough that many things are tried with each. */
export async function lawWorkbooks(): Promise<Record<string, Uint8Array>> {
  const blank = new ExcelJS.Workbook();
  blank.addWorksheet("Sheet1");
  const full = new ExcelJS.Workbook();
  const bench = full.addWorksheet("Parts bench", { views: [{ state: "frozen", ySplit: 1 }] });
  bench.addRow(["Part", "Width", "Box"]).font = { bold: true };
  for (let i = 2; i <= 4; i++) {
    bench.addRow([`Drawer ${i - 1}`, 10 + i]);
    bench.getCell(`C${i}`).value = i === 2 ? { formula: "B2-1", result: 11 } : { sharedFormula: "C2", result: 9 + i };
  }
  full.addWorksheet("Totals").getCell("A1").value = { formula: "SUM('Parts bench'!B2:B4)", result: 39 };
  full.definedNames.add("'Parts bench'!$B$2:$B$4", "Widths");
  const sheetJs = SheetJS.utils.book_new();
  SheetJS.utils.book_append_sheet(
    sheetJs,
    { "!ref": "A1:C2", A1: { t: "n", v: 412 }, B1: { t: "n", v: 824, f: "A1*2" } },
    "Bench",
  );
  SheetJS.utils.book_append_sheet(sheetJs, SheetJS.utils.aoa_to_sheet([]), "Chest");
  const spilled =
    '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:B2">_xlfn.SEQUENCE(2,2)</f><v>1</v></c><c r="B1"><v>2</v></c><c r="D1"><f t="array" ref="D1:D3">A1:A3*2</f><v>2</v></c></row>' +
    '<row r="2"><c r="A2"><v>3</v></c><c r="B2"><v>4</v></c><c r="D2"><v>6</v></c></row><row r="3"><c r="A3"><f>SUM(A1:B2)</f><v>10</v></c><c r="D3"><v>20</v></c></row>';
  const excelJs = async (workbook: ExcelJS.Workbook) => new Uint8Array(await workbook.xlsx.writeBuffer());
  return {
    "a blank sheet as the spreadsheet program writes it": handmade({
      sheets: [{ name: "Sheet1", xml: sheetXml("").replace("<sheetData></sheetData>", "<sheetData/>") }],
    }),
    "an empty sheet": oneSheet(""),
    "a shop's workbook with names, a table, rules and a chart": shopWorkbook(),
    "spilled and older array formulas": oneSheet(spilled),
    "exceljs, blank": await excelJs(blank),
    "exceljs, full": await excelJs(full),
    LibreOffice: byLibreOffice(shopWorkbook()),
    SheetJS: new Uint8Array(SheetJS.write(sheetJs, { type: "array", bookType: "xlsx" }) as ArrayBuffer),
  };
}

/** The workbook as LibreOffice writes it after reading it. */
function byLibreOffice(bytes: Uint8Array): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), "written-"));
  try {
    const input = join(folder, "shop.xlsx");
    writeFileSync(input, bytes);
    return new Uint8Array(readFileSync(convert(input, join(folder, "out"), "xlsx")));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
