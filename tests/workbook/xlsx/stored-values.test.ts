import { describe, expect, it } from "vitest";
import { CellError } from "../../../src/workbook/engine";
import { recalculate } from "../../../src/workbook";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { cellOf, oneSheet } from "../support/handmade";

function stored(cell: string): unknown {
  const value = openWorkbook(oneSheet(`<row r="1">${cell}</row>`)).book.sheets[0]!.cells.get(0)?.value ?? null;
  return value instanceof CellError ? value.code : value;
}

describe("a stored value is what its kind says, or an error", () => {
  it.each([
    ['<c r="A1"><v>12.5</v></c>', 12.5],
    ['<c r="A1"><v> -1.5E-3 </v></c>', -0.0015],
    ['<c r="A1"><v>-0</v></c>', 0],
    ['<c r="A1"><v></v></c>', null],
    ['<c r="A1"><v>abc</v></c>', "#NUM!"],
    ['<c r="A1"><v>1e999</v></c>', "#NUM!"],
    ['<c r="A1"><v>-1e999</v></c>', "#NUM!"],
    ['<c r="A1"><v>NaN</v></c>', "#NUM!"],
    ['<c r="A1"><v>INF</v></c>', "#NUM!"],
    ['<c r="A1"><v>Infinity</v></c>', "#NUM!"],
    ['<c r="A1"><v>0x10</v></c>', "#NUM!"],
    ['<c r="A1"><v>1,5</v></c>', "#NUM!"],
    ['<c r="A1" t="b"><v>1</v></c>', true],
    ['<c r="A1" t="b"><v>0</v></c>', false],
    ['<c r="A1" t="b"><v>7</v></c>', "#VALUE!"],
    ['<c r="A1" t="b"><v>yes</v></c>', "#VALUE!"],
    ['<c r="A1" t="d"><v>2026-01-02</v></c>', 46024],
    ['<c r="A1" t="d"><v>yesterday</v></c>', "#NUM!"],
    ['<c r="A1" t="s"><v>5</v></c>', "#VALUE!"],
    ['<c r="A1" t="s"><v>-1</v></c>', "#VALUE!"],
    ['<c r="A1" t="e"><v>#OOPS!</v></c>', "#VALUE!"],
    [`<c r="A1" t="str"><v>${"x".repeat(32_767)}</v></c>`, "x".repeat(32_767)],
    [`<c r="A1" t="str"><v>${"x".repeat(32_768)}</v></c>`, "#VALUE!"],
    [`<c r="A1" t="inlineStr"><is><t>${"x".repeat(32_768)}</t></is></c>`, "#VALUE!"],
  ])("%.60s", (cell, value) => {
    expect(stored(cell)).toBe(value);
  });

  it("what is no number gets into no sum, and stays in the file as it is", () => {
    const file = oneSheet(
      '<row r="1"><c r="A1"><v>abc</v></c><c r="B1"><f>A1+1</f><v>7</v></c><c r="C1"><f>SUM(A1:A1)</f><v>7</v></c></row>',
    );
    const { bytes } = recalculate(file, { functions: {} });
    expect(cellOf(bytes, "A1")).toBe('<c r="A1"><v>abc</v></c>');
    expect(cellOf(bytes, "B1")).toContain("<v>#NUM!</v>");
    expect(cellOf(bytes, "C1")).toContain("<v>#NUM!</v>");
  });
});
