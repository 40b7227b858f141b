import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, expect, test } from "vitest";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { PARTS_BENCH } from "../support/parts-bench";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { recalculate } from "../../../src/workbook/edit/recalculate";
import { convert } from "../../libreoffice";

let folder: string;
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), "print-"))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// Widths and heights in points: ANSI Y14.1 letter, ISO 216 A4.
const PAPERS = { letter: [612, 792], A4: [595.28, 841.89] } as const;

test.each(["letter", "A4"] as const)("the quote is one upright page of %s", (paper) => {
  const pages = printed("Quote", paper);
  expect(pages).toHaveLength(1);
  const [width, height] = pages[0]!;
  expect(width).toBeCloseTo(PAPERS[paper][0], -0.5);
  expect(height).toBeCloseTo(PAPERS[paper][1], -0.5);
});

test.each(["letter", "A4"] as const)("the price grid is one page of %s on its side", (paper) => {
  const pages = printed("Price grid", paper);
  expect(pages).toHaveLength(1);
  const [width, height] = pages[0]!;
  expect(height).toBeCloseTo(PAPERS[paper][0], -0.5);
  expect(width).toBeCloseTo(PAPERS[paper][1], -0.5);
});

/** The pages that LibreOffice prints of one sheet: their widths and heights in points. */
function printed(name: string, paper: "letter" | "A4"): [width: number, height: number][] {
  const sheets = PARTS_BENCH.sheets.map((sheet) =>
    sheet.name === name && sheet.page ? { ...sheet, page: { ...sheet.page, paper } } : sheet,
  );
  const { bytes } = recalculate(writeWorkbook({ ...PARTS_BENCH, sheets }), { functions: OWN_FUNCTIONS });
  const file = join(folder, `${name}-${paper}.xlsx`);
  writeFileSync(file, alone(bytes, name));
  const pdf = readFileSync(convert(file, folder, "pdf"), "latin1");
  // Page objects stand in the file as they are; only what is drawn on them is packed.
  return [...pdf.matchAll(/\/Type\s*\/Page\b[^>]*?\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)].map(
    ([, width, height]) => [Number(width), Number(height)],
  );
}

/**
 * The same workbook with all other sheets hidden, which are then not printed, and with values in place of formulas:
 * LibreOffice would work them out anew, and does not know our functions.
 */
function alone(bytes: Uint8Array, name: string): Uint8Array {
  const parts = unzipSync(bytes);
  const part = "xl/workbook.xml";
  // The sheet that is open at first cannot be hidden.
  const open = `<workbookView activeTab="${PARTS_BENCH.sheets.findIndex((sheet) => sheet.name === name)}"/>`;
  const text = strFromU8(parts[part]!)
    .replace("<workbookView/>", open)
    .replace(/<sheet name="([^"]*)"/g, (tag, found) => (found === name ? tag : `${tag} state="hidden"`));
  const values = Object.entries(parts).map(([at, bytes]) => [
    at,
    at.includes("/sheet") ? strToU8(strFromU8(bytes).replace(/<f\b[^>]*>[^<]*<\/f>/g, "")) : bytes,
  ]);
  return zipSync({ ...Object.fromEntries(values), [part]: strToU8(text) });
}
