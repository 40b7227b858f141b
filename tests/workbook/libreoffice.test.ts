import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { recalculate } from "../../src/workbook";
import { computedByLibreOffice, type Value } from "../libreoffice";
import { oneSheet } from "./support/handmade";
import { shownBy } from "./support/shown-by";

/** One a line, about a bench of parts in A1:D6; both programs agree on what they mean. */
const FORMULAS = readFileSync(new URL("../workbooks/native-formulas.txt", import.meta.url), "utf8")
  .trimEnd()
  .split("\n");

const BENCH: Value[][] = [
  ["Part", "Qty", "Length", "Date"],
  ["Side", 4, 22.5, 46351],
  ["Front", 2, 18.0625, 46352],
  ["Back", 2, 17.5, 46380],
  ["Bottom", 1, 9.25, 45000.75],
  ["Rail", 3, 8.125, 60],
];

let folder: string;
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), "native-"))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it("native formulas come out as LibreOffice works them out", async () => {
  const rows = [...BENCH, ...FORMULAS.map((formula) => [`=${formula}`])];
  const theirs = await computedByLibreOffice(rows);
  const ours = await computedByUs(rows);
  FORMULAS.forEach((formula, i) => {
    const [their, our] = [theirs, ours].map((all) => all[BENCH.length + i]![0]!);
    if (typeof their === "number" && their !== 0)
      expect(our, formula).toBeCloseTo(their, 9 - Math.ceil(Math.log10(Math.abs(their))));
    else expect(our || 0, formula).toEqual(their || 0);
  });
  expect(FORMULAS.length).toBeGreaterThan(120);
});

it("a dynamic array that we spilled opens in LibreOffice with all its cells", () => {
  const file = oneSheet(
    `<row r="1"><c r="A1" t="str"><v>Assam</v></c><c r="B1"><v>18</v></c><c r="D1" cm="1"><f t="array" ref="D1">TRANSPOSE(A1:B2)</f></c></row><row r="2"><c r="A2" t="str"><v>Sencha</v></c><c r="B2"><v>24.5</v></c></row>`,
  );
  const { bytes } = recalculate(file, { functions: {} });
  const csv = readFileSync(shownBy(bytes, folder), "utf8");
  expect(csv.trimEnd().split("\n")).toEqual(["Assam,18,,Assam,Sencha", "Sencha,24.5,,18,24.5"]);
});

async function computedByUs(rows: Value[][]): Promise<Value[][]> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Native");
  for (const row of rows) {
    sheet.addRow(
      row.map((item) => (typeof item === "string" && item.startsWith("=") ? { formula: item.slice(1) } : item)),
    );
  }
  const { bytes, report } = recalculate(new Uint8Array(await workbook.xlsx.writeBuffer()), { functions: {} });
  expect(report.kept).toEqual([]);
  const read = new ExcelJS.Workbook();
  await read.xlsx.load(bytes.slice().buffer as ArrayBuffer);
  return rows.map((row, r) => row.map((_, c) => valueOf(read.worksheets[0]!.getCell(r + 1, c + 1))));
}

function valueOf(cell: ExcelJS.Cell): Value {
  const value = (cell.formula ? cell.result : cell.value) as unknown;
  if (typeof value === "object" && value !== null && "error" in value) return String(value.error);
  return (value ?? null) as Value;
}
