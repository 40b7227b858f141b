import { readFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import * as SheetJS from "xlsx";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { recalculate } from "../../src/workbook";
import { convert } from "../libreoffice";
import { fakes } from "./support/fakes";
import { parts, withPart } from "./support/handmade";
import { shownBy } from "./support/shown-by";

const run = (file: Uint8Array) => recalculate(file, { functions: fakes });

/** Puts another value in place of a number that some cell holds, in every sheet. */
function expectOnlySheetsDiffer(before: Uint8Array, after: Uint8Array): void {
  const [old, now] = [parts(before), parts(after)];
  expect(Object.keys(now)).toEqual(Object.keys(old));
  const changed = Object.keys(old).filter((name) => old[name] !== now[name]);
  expect(changed.filter((name) => !name.startsWith("xl/worksheets/"))).toEqual([]);
  const outside = (text: string) => text.replace(/<sheetData>.*<\/sheetData>/s, "");
  for (const name of changed) expect(outside(now[name]!)).toBe(outside(old[name]!));
}

describe("a workbook made with exceljs", () => {
  async function made(): Promise<Uint8Array> {
    const workbook = new ExcelJS.Workbook();
    const bench = workbook.addWorksheet("Parts bench", { views: [{ state: "frozen", ySplit: 1 }] });
    bench.addRow(["Part", "Width", "Box"]).font = { bold: true };
    for (let i = 2; i <= 5; i++) {
      bench.addRow([`Drawer ${i - 1}`, 10 + i]);
      bench.getCell(`C${i}`).value = i === 2 ? { formula: "B2-1", result: 0 } : { sharedFormula: "C2", result: 0 };
    }
    bench.getCell("D1").value = { richText: [{ text: "Clear " }, { text: "width", font: { italic: true } }] };
    bench.getCell("E1").value = { formula: 'LEN(D1)&" letters"', result: "" };
    bench.getCell("F1").value = { formula: "'Parts bench'!C5>Total", result: false };
    bench.getCell("G1").value = new Date(Date.UTC(2026, 10, 25));
    bench.getCell("G2").value = { formula: "WEEKDAY(G1)", result: 0 };
    workbook.definedNames.add("'Parts bench'!$C$5", "Total");
    return new Uint8Array(await workbook.xlsx.writeBuffer());
  }

  it("is recalculated, shared formulas and rich text too, and only its sheet changes", async () => {
    const file = await made();
    const { bytes, report } = run(file);
    expect(report.kept).toEqual([]);
    expectOnlySheetsDiffer(file, bytes);
    const read = new ExcelJS.Workbook();
    await read.xlsx.load(bytes.slice().buffer as ArrayBuffer);
    const sheet = read.worksheets[0]!;
    expect(["C2", "C3", "C4", "C5", "E1", "G2"].map((cell) => sheet.getCell(cell).result)).toEqual([
      11,
      12,
      13,
      14,
      "11 letters",
      4,
    ]);
  });
});

describe("a workbook made with SheetJS", () => {
  it("is recalculated without its values, and only its sheets change", () => {
    const workbook = SheetJS.utils.book_new();
    const bench: SheetJS.WorkSheet = {
      "!ref": "A1:C3",
      A1: { t: "n", v: 412 },
      A2: { t: "s", v: "oak & ash" },
      A3: { t: "b", v: true },
      B1: { t: "n", f: "A1/25.4" },
      B2: { t: "s", f: 'SUBSTITUTE(A2," & ","+")' },
      C1: { t: "n", f: "Chest!A1:A2*2", F: "C1:C2" } as SheetJS.CellObject,
      C2: { t: "n", F: "C1:C2" } as SheetJS.CellObject,
    };
    SheetJS.utils.book_append_sheet(workbook, bench, "Bench");
    SheetJS.utils.book_append_sheet(workbook, SheetJS.utils.aoa_to_sheet([[3], [4]]), "Chest");
    const file = new Uint8Array(
      SheetJS.write(workbook, { type: "array", bookType: "xlsx", compression: true }) as ArrayBuffer,
    );
    const { bytes } = run(file);
    expectOnlySheetsDiffer(file, bytes);
    const read = SheetJS.read(bytes, { type: "array" }).Sheets.Bench!;
    expect(read.B1!.v).toBeCloseTo(412 / 25.4, 12);
    expect([read.B2!.v, read.C1!.v, read.C2!.v]).toEqual(["oak+ash", 6, 8]);
  });
});

describe("a workbook made with LibreOffice", () => {
  let folder: string;
  let file: Uint8Array;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "chest-"));
    const source = new URL("../workbooks/tea-chest.fods", import.meta.url).pathname;
    file = new Uint8Array(readFileSync(convert(source, folder, "xlsx")));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("agrees with what LibreOffice worked out: not a byte changes", () => {
    const { bytes, report } = run(file);
    expect(report).toMatchObject({ recalculated: 7, changed: 0, kept: [], errors: [] });
    expect(Buffer.compare(bytes, file)).toBe(0);
  });

  it("opens in LibreOffice after recalculation, and shows our values", () => {
    const files = parts(file);
    const altered = files["xl/worksheets/sheet1.xml"]!.replace("<v>22</v>", "<v>40</v>");
    expect(altered).not.toBe(files["xl/worksheets/sheet1.xml"]);
    const { bytes, report } = run(withPart(file, "xl/worksheets/sheet1.xml", altered));
    expect(report.changed).toBe(4);
    const csv = readFileSync(shownBy(bytes, folder), "utf8");
    expect(csv.split("\n").slice(0, 4)).toEqual([
      "Tea,Tins,Drawers",
      "Assam,40,7",
      "Sencha,9,2",
      "ASSAM & Sencha,49,9",
    ]);
  });
});
