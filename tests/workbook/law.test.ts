import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import * as SheetJS from "xlsx";
import { EditedWorkbook } from "../../src/workbook/edit/index";
import { lawWorkbooks } from "./support/law-workbooks";
import { said, tryTheLaw } from "./support/the-law";

const NAMES = [
  "a blank sheet as the spreadsheet program writes it",
  "an empty sheet",
  "a shop's workbook with names, a table, rules and a chart",
  "spilled and older array formulas",
  "exceljs, blank",
  "exceljs, full",
  "LibreOffice",
  "SheetJS",
];
/** Sequences with each workbook. */
const SEQUENCES = 30;
const STEPS = 30;

let books: Record<string, Uint8Array>;
const written: Uint8Array[] = [];
beforeAll(async () => {
  books = await lawWorkbooks();
  expect(Object.keys(books)).toEqual(NAMES);
});

describe("after whatever is done to cells and sheets, and taken back, the saved file says what the model says", () => {
  test.each(NAMES)(
    "%s",
    (name) => {
      for (let seed = 1; seed <= SEQUENCES; seed++) {
        const { broken, saved } = tryTheLaw(books[name]!, seed, STEPS);
        expect(broken && `seed ${seed}: ${broken.fault}\n${broken.steps.join("\n")}`).toBeUndefined();
        if (seed <= 4) written.push(saved);
      }
    },
    900_000,
  );
});

test("LibreOffice reads the same sheets and values from what was saved", { timeout: 600_000 }, () => {
  expect(written).toHaveLength(NAMES.length * 4);
  let compared = 0;
  readByLibreOffice(written).forEach((book, i) => {
    const ours = said(new EditedWorkbook(written[i]!));
    expect(book.SheetNames.join("/")).toBe(ours.get("sheets"));
    for (const [key, value] of ours) {
      const [, sheet, cell] = /^(.*) ([A-Z]+\d+) shows$/.exec(key) ?? [];
      const found = book.Sheets[sheet!]?.[cell!] as SheetJS.CellObject | undefined;
      // It lacks our functions and newer ones, tells errors apart otherwise, keeps no empty text, and stops at circles.
      if (!sheet || /^(?:#|kept|"")/.test(value) || found?.t === "e") continue;
      if (/^"\d+ of them"$|^0$/.test(value) && JSON.stringify(found?.v) !== value) continue;
      expect(JSON.stringify(found?.v), `${i}: ${key}`).toBe(value);
      compared++;
    }
  });
  expect(compared).toBeGreaterThan(100);
});

/** All files in one run. */
function readByLibreOffice(files: readonly Uint8Array[]): SheetJS.WorkBook[] {
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
