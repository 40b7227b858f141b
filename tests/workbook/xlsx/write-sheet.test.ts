import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellName } from "../../../src/workbook/address";
import { readSheet } from "../../../src/workbook/xlsx/read-sheet";
import { sheetModel } from "../../../src/workbook/xlsx/sheet-model";
import { writeSheet } from "../../../src/workbook/xlsx/write-sheet";
import { sheetXml } from "../support/handmade";

const ROWS = 12;
const COLUMNS = 6;
const PLACE = fc.record({ row: fc.nat(ROWS - 1), column: fc.nat(COLUMNS - 1) });
const CELLS = fc.uniqueArray(PLACE, { selector: keyOf, maxLength: 30 });

/** Rows of the file: those with cells, and some without. */
const FILE = fc.record({ cells: CELLS, bare: fc.uniqueArray(fc.nat(ROWS - 1)), spans: fc.boolean() });
const CHANGES = fc.uniqueArray(fc.record({ place: PLACE, value: fc.option(fc.integer({ min: 100, max: 999 })) }), {
  selector: ({ place }) => keyOf(place),
  maxLength: 30,
});

describe("a sheet with changes written into it", () => {
  it("reads back as the sheet with the changes, whatever order they come in", () => {
    fc.assert(
      fc.property(FILE, CHANGES, (file, changes) => {
        const text = xmlOf(file);
        const written = writeSheet(
          read(text),
          changes.map(({ place, value }) => ({ ...place, value, writesValue: true })),
        );
        const wanted = valuesOf(text);
        for (const { place, value } of changes) {
          if (value === null) wanted.delete(keyOf(place));
          else wanted.set(keyOf(place), value);
        }
        expect(valuesOf(written)).toEqual(wanted);
      }),
      { seed: 19, numRuns: 500 },
    );
  });

  it("grows its dimension to the cells that are made", () => {
    const sheet = read(xmlOf({ cells: [{ row: 1, column: 1 }], bare: [], spans: false }));
    const change = (row: number, column: number) => ({ row, column, value: 1, writesValue: true });
    expect(writeSheet(sheet, [change(4, 2), change(0, 3)])).toContain('<dimension ref="A1:D5"/>');
  });
});

interface Place {
  row: number;
  column: number;
}

function keyOf({ row, column }: Place): string {
  return cellName(row, column);
}

const read = (text: string) => readSheet(text, "sheet", new Set());

const valuesOf = (text: string): Map<string, unknown> =>
  new Map([...sheetModel("Bench", read(text), []).cells.values()].map((cell) => [keyOf(cell), cell.value]));

function xmlOf({ cells, bare, spans }: { cells: Place[]; bare: number[]; spans: boolean }): string {
  const lines = Array.from({ length: ROWS }, (_, row) => {
    const inRow = cells.filter((cell) => cell.row === row).sort((a, b) => a.column - b.column);
    if (inRow.length === 0) return bare.includes(row) ? `<row r="${row + 1}"/>` : "";
    const span = spans ? ` spans="${inRow[0]!.column + 1}:${inRow.at(-1)!.column + 1}"` : "";
    return `<row r="${row + 1}"${span}>${inRow.map((cell) => `<c r="${keyOf(cell)}" s="1"><v>${cell.column}</v></c>`).join("")}</row>`;
  });
  return sheetXml(lines.join(""));
}
