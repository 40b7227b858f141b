import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import * as XLSX from "xlsx";

export type Value = number | string | boolean | null;

/** A cell of a workbook to be computed: a value, or a formula that begins with `=`. */
export type Rows = readonly (readonly Value[])[];

/**
 * Writes a sheet without any computed value, lets LibreOffice compute it, and reads what it found.
 * @param rows the sheet, from A1
 */
export async function computedByLibreOffice(rows: Rows): Promise<Value[][]> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Native");
  for (const row of rows) sheet.addRow(row.map(cellOf));
  const folder = mkdtempSync(join(tmpdir(), "native-"));
  try {
    const input = join(folder, "native.xlsx");
    writeFileSync(input, new Uint8Array(await workbook.xlsx.writeBuffer()));
    const read = XLSX.read(readFileSync(convert(input, join(folder, "out"), "xlsx")));
    const computed = read.Sheets[read.SheetNames[0]!]!;
    return rows.map((row, r) =>
      row.map((_, c) => valueOf(computed[XLSX.utils.encode_cell({ r, c })] as XLSX.CellObject)),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Converts a file with LibreOffice, in a profile of its own so that runs may stand side by side. */
export function convert(input: string, folder: string, format: string): string {
  const profile = mkdtempSync(join(tmpdir(), "profile-"));
  try {
    execFileSync(
      "soffice",
      [`-env:UserInstallation=file://${profile}`, "--headless", "--convert-to", format, "--outdir", folder, input],
      { stdio: "pipe", timeout: 180_000 },
    );
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
  return join(
    folder,
    input
      .split("/")
      .at(-1)!
      .replace(/\.[^.]+$/, `.${format}`),
  );
}

const cellOf = (value: Value): ExcelJS.CellValue =>
  typeof value === "string" && value.startsWith("=") ? { formula: value.slice(1) } : value;

/** A cell's value; an error as its text. */
function valueOf(cell: XLSX.CellObject | undefined): Value {
  if (!cell || cell.t === "z") return null;
  return cell.t === "e" ? String(cell.w) : (cell.v as Value);
}
