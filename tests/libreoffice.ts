import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";

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
    const read = new ExcelJS.Workbook();
    await read.xlsx.load(readFileSync(convert(input, join(folder, "out"), "xlsx")).buffer as ArrayBuffer);
    const computed = read.worksheets[0]!;
    return rows.map((row, r) => row.map((_, c) => valueOf(computed.getCell(r + 1, c + 1).value)));
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

function valueOf(value: ExcelJS.CellValue): Value {
  if (value === null || value === undefined) return null;
  if (typeof value !== "object") return value;
  if ("result" in value) return valueOf(value.result as ExcelJS.CellValue);
  if ("error" in value) return String(value.error);
  throw new Error(`A cell came back as ${JSON.stringify(value)}.`);
}
