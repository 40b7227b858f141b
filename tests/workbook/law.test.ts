import { beforeAll, describe, expect, test } from "vitest";
import { lawWorkbooks } from "./support/law-workbooks";
import { comparedWithLibreOffice } from "./support/read-by-libreoffice";
import { tryTheLaw } from "./support/the-law";

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
  const { same, others } = comparedWithLibreOffice(written);
  expect(others).toEqual([]);
  expect(same).toBeGreaterThan(100);
});
