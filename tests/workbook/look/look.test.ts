import ExcelJS from "exceljs";
import { expect, test } from "vitest";
import { readLook } from "../../../src/workbook/look/index";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";

async function lookOf(fill: (sheet: ExcelJS.Worksheet) => void): Promise<ReturnType<typeof readLook>> {
  const workbook = new ExcelJS.Workbook();
  fill(workbook.addWorksheet("Job", { views: [{ state: "frozen", xSplit: 1, ySplit: 2, showGridLines: false }] }));
  return readLook(openWorkbook(new Uint8Array(await workbook.xlsx.writeBuffer())));
}

test("reads fonts, fills, borders, alignments and number formats of cells", async () => {
  const look = await lookOf((sheet) => {
    const cell = sheet.getCell("B2");
    cell.value = 1;
    cell.font = { name: "Georgia", size: 14, bold: true, italic: true, color: { argb: "FF8C3D14" } };
    cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FFFBF1DC" } };
    cell.border = { bottom: { style: "thick", color: { argb: "FF112233" } } };
    cell.alignment = { horizontal: "right", vertical: "top", wrapText: true, indent: 2 };
    cell.numFmt = "# ??/??";
  });
  expect(look.styles[look.sheets[0]!.cells.get("1 1")!]).toEqual({
    font: { name: "Georgia", size: 14, bold: true, italic: true, color: "8c3d14" },
    fill: "fbf1dc",
    borders: { bottom: { line: "thick", color: "112233" } },
    horizontal: "right",
    vertical: "top",
    wrap: true,
    indent: 2,
    format: "# ??/??",
  });
});

test("reads widths, heights, hidden rows, panes and grid lines of sheets", async () => {
  const look = await lookOf((sheet) => {
    sheet.getColumn(2).width = 20;
    sheet.getRow(3).height = 30;
    sheet.getCell("A4").value = 1;
    sheet.getRow(4).hidden = true;
    sheet.getCell("A5").value = 1;
  });
  const [sheet] = look.sheets;
  expect(sheet!.columns.get(1)).toMatchObject({ width: 145, hidden: false });
  expect(sheet!.rows.get(2)).toMatchObject({ height: 40 });
  expect(sheet!.rows.get(3)).toMatchObject({ hidden: true });
  expect(sheet).toMatchObject({ gridlines: false, frozen: { rows: 2, columns: 1 } });
});

test("reads colors of the theme, lighter and darker", async () => {
  const look = await lookOf((sheet) => {
    sheet.getCell("A1").font = { color: { theme: 1 } };
    sheet.getCell("A1").fill = {
      type: "pattern",
      pattern: "solid",
      fgColor: { theme: 0, tint: -0.5 } as unknown as ExcelJS.Color,
    };
    sheet.getCell("A1").value = 1;
  });
  const style = look.styles[look.sheets[0]!.cells.get("0 0")!]!;
  expect([style.font.color, style.fill]).toEqual(["000000", "808080"]);
});

test("knows which sheets the file hides", async () => {
  const look = await lookOf((sheet) => {
    sheet.workbook.addWorksheet("Prices", { state: "hidden" });
    sheet.workbook.addWorksheet("Offcuts");
  });
  expect([...look.hidden]).toEqual([1]);
});
