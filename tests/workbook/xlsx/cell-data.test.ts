import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellKey } from "../../../src/workbook/engine";
import type { Scalar } from "../../../src/workbook/engine/values";
import { readValue, writtenValue } from "../../../src/workbook/xlsx/cell-value";
import { readSheet } from "../../../src/workbook/xlsx/read-sheet";
import { withAttributes } from "../../../src/workbook/xlsx/tag-text";
import { writeSheet, type CellChange } from "../../../src/workbook/xlsx/write-sheet";
import { sheetXml } from "../support/handmade";

const anyText = fc.string({ unit: "binary", maxLength: 12 }).filter((text) => !/[\ud800-\udfff]/.test(text));
const anyValue: fc.Arbitrary<Exclude<Scalar, null>> = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => number + 0),
  fc.boolean(),
  anyText,
  fc.constantFrom("_x000D_", "_x0041_ and _", " spaces ", "]]>", "&amp;"),
);
const place = fc.record({ row: fc.nat(30), column: fc.nat(30), value: anyValue, styled: fc.boolean() });
const places = fc.uniqueArray(place, { selector: ({ row, column }) => cellKey(row, column), maxLength: 20 });

const change = ({ row, column, value }: { row: number; column: number; value: Scalar }): CellChange => ({
  row,
  column,
  value,
  writesValue: true,
});

function valuesIn(text: string): Map<number, Scalar> {
  const { rows } = readSheet(text, "sheet", new Set());
  return new Map(rows.flatMap((row) => row.cells.map((cell) => [cellKey(cell.row, cell.column), readValue(cell, [])])));
}

describe("cell data", () => {
  it("what is written is read again", () => {
    fc.assert(
      fc.property(places, (cells) => {
        const text = writeSheet(readSheet(sheetXml(""), "sheet", new Set()), cells.map(change));
        expect(valuesIn(text)).toEqual(
          new Map(
            cells
              .map((cell) => [cellKey(cell.row, cell.column), cell.value])
              .sort((a, b) => (a[0] as number) - (b[0] as number)) as [number, Scalar][],
          ),
        );
      }),
    );
  });

  it("writing what a sheet already holds changes its values only, in any order", () => {
    fc.assert(
      fc.property(places, anyValue, (cells, value) => {
        const first = writeSheet(
          readSheet(sheetXml('<row r="5" ht="9"><c r="C5" s="2"/></row>'), "sheet", new Set()),
          cells.map(change),
        );
        const second = writeSheet(
          readSheet(first, "sheet", new Set()),
          [...cells].reverse().map((cell) => change({ ...cell, value })),
        );
        for (const { row, column } of cells) expect(valuesIn(second).get(cellKey(row, column))).toEqual(value);
        expect(second).toContain('<row r="5" ht="9">');
      }),
    );
  });

  it("no change is no edit: the text is the same", () => {
    fc.assert(
      fc.property(places, (cells) => {
        const text = writeSheet(readSheet(sheetXml(""), "sheet", new Set()), cells.map(change));
        expect(writeSheet(readSheet(text, "sheet", new Set()), [])).toBe(text);
      }),
    );
  });

  it("a number is written so that it is read as the same number, and a negative zero as zero", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        expect(Number(writtenValue(number).text)).toBe(number + 0);
      }),
    );
  });
});

describe("withAttributes(tag, changes)", () => {
  it.each<[string, Record<string, string | null>, string]>([
    ['<c r="A1" t="s" s="1">', { t: "str" }, '<c r="A1" t="str" s="1">'],
    ["<c r='A1'\n  t = 's' >", { t: null }, "<c r='A1' >"],
    ['<c r="A1"/>', { t: "b" }, '<c r="A1" t="b"/>'],
    ['<c r="t=&quot;1&quot;" vt="2" >', { t: "e" }, '<c r="t=&quot;1&quot;" vt="2" t="e" >'],
    ['<c r="A1" ph="t=\'s\'">', { t: null }, '<c r="A1" ph="t=\'s\'">'],
  ])("%s", (tag, changes, expected) => {
    expect(withAttributes(tag, changes)).toBe(expected);
  });
});
