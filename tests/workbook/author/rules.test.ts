import ExcelJS from "exceljs";
import { expect, test } from "vitest";
import { writeWorkbook, type SheetDefinition } from "../../../src/workbook/author/index";

/** A workbook of one sheet, as another library reads it. */
async function read(sheet: Partial<SheetDefinition>): Promise<ExcelJS.Worksheet> {
  const rows = [{ cells: [{ style: "plain", content: 1 }] }];
  const sheets = [{ name: "Offer", widths: [10], rows, merged: [], selected: "A1", ...sheet }];
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(Buffer.from(writeWorkbook({ styles: { plain: {} }, sheets })) as never);
  return workbook.getWorksheet("Offer")!;
}

test("writeWorkbook: a sheet says how it is printed", async () => {
  const { pageSetup, headerFooter } = await read({
    page: { orientation: "portrait", paper: "A4", onePage: true, footer: "&CPage &P of &N" },
  });
  expect(pageSetup).toMatchObject({
    orientation: "portrait",
    paperSize: 9,
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 1,
    horizontalCentered: true,
  });
  expect(headerFooter.oddFooter).toBe("&CPage &P of &N");
});

test("writeWorkbook: a sheet that says nothing is as wide as a page and as long as it takes", async () => {
  const { pageSetup } = await read({});
  expect(pageSetup).toMatchObject({ orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 });
});

test("writeWorkbook: rules are what others read: scales, and looks where a formula is true, in their order", async () => {
  const look = { font: { bold: true, color: "8C3D14" }, fill: "FFD766", format: '"$"0.00' };
  const sheet = await read({
    rules: [
      { area: "A1:C9", when: '=AND(A1<5,$B1<>"")', look },
      { area: "A1:C9", colors: ["FFFDF8", "E3B884"] },
      { area: "E1:E9", colors: ["FFFFFF", "EEEEEE", "AAAAAA"] },
    ],
  });
  const { conditionalFormattings } = sheet as unknown as {
    conditionalFormattings: { ref: string; rules: ExcelJS.ConditionalFormattingRule[] }[];
  };
  expect(conditionalFormattings.map(({ ref, rules }) => [ref, rules.map(({ type }) => type)])).toEqual([
    ["A1:C9", ["expression", "colorScale"]],
    ["E1:E9", ["colorScale"]],
  ]);
  const [first, second] = conditionalFormattings[0]!.rules as [
    ExcelJS.ExpressionRuleType,
    { cfvo: unknown; color: unknown; priority: number },
  ];
  expect(first.formulae).toEqual(['AND(A1<5,$B1<>"")']);
  expect(first.style).toMatchObject({
    font: { bold: true, color: { argb: "FF8C3D14" } },
    fill: { bgColor: { argb: "FFFFD766" } },
  });
  expect(second.cfvo).toEqual([{ type: "min" }, { type: "max" }]);
  expect(second.color).toEqual([{ argb: "FFFFFDF8" }, { argb: "FFE3B884" }]);
  expect([first.priority, second.priority]).toEqual([1, 2]);
});
