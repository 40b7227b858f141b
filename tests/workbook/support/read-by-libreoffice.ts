import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as SheetJS from "xlsx";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { said } from "./the-law";

/**
 * Whether LibreOffice reads from files what we read from them: their sheets, and the values that it can know.
 * @returns how many values are the same, and those that are not
 */
export function comparedWithLibreOffice(files: readonly Uint8Array[]): { same: number; others: string[] } {
  const others: string[] = [];
  let same = 0;
  readByLibreOffice(files).forEach((book, i) => {
    const ours = said(new EditedWorkbook(files[i]!));
    const sheets = book.SheetNames.join("/");
    if (sheets !== ours.get("sheets")) others.push(`${i}: sheets ${ours.get("sheets")}, there ${sheets}`);
    for (const [key, value] of ours) {
      const [, sheet, cell] = /^(.*) ([A-Z]+\d+) shows$/.exec(key) ?? [];
      const found = book.Sheets[sheet!]?.[cell!] as SheetJS.CellObject | undefined;
      // It lacks our functions and newer ones, tells errors apart otherwise, keeps no empty text, and stops at circles.
      if (!sheet || /^(?:#|kept|"")/.test(value) || found?.t === "e") continue;
      const there = JSON.stringify(found?.v);
      if (/^"\d+ of them"$|^0$/.test(value) && there !== value) continue;
      if (there === value) same++;
      else others.push(`${i}: ${key} ${value}, there ${there}`);
    }
  });
  return { same, others };
}

/** What LibreOffice makes of files, all in one run. */
export function readByLibreOffice(files: readonly Uint8Array[]): SheetJS.WorkBook[] {
  const folder = mkdtempSync(join(tmpdir(), "law-"));
  try {
    const out = join(folder, "out");
    mkdirSync(out);
    const names = files.map((_, i) => `law-${i}.xlsx`);
    names.forEach((name, i) => writeFileSync(join(folder, name), files[i]!));
    execFileSync(
      "soffice",
      [
        `-env:UserInstallation=file://${join(folder, "profile")}`,
        ...["--headless", "--convert-to", "xlsx", "--outdir", out],
        ...names.map((name) => join(folder, name)),
      ],
      { stdio: "pipe", timeout: 500_000 },
    );
    return names.map((name) => SheetJS.read(readFileSync(join(out, name))));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
