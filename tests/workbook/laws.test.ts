import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellName } from "../../src/workbook/address";
import { recalculate } from "../../src/workbook";
import { fakes } from "./support/fakes";
import { oneSheet, parts } from "./support/handmade";

/** Formulas that read one another freely, circles and blocked spills included. */
const formula = fc.oneof(
  fc.tuple(fc.nat(5), fc.nat(5)).map(([row, column]) => `${cellName(row, column)}*2+1`),
  fc
    .tuple(fc.nat(5), fc.nat(5))
    .map(([row, column]) => `SUM(${cellName(row, column)}:${cellName(row + 2, column + 1)})`),
  fc.nat(5).map((column) => `COUNT(${cellName(0, column)}:${cellName(7, column)})`),
  fc.constantFrom('"a"&amp;"b"', "1/0", "CUBEVALUE(1)", "TRUE"),
);

const content = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .double({ noNaN: true, noDefaultInfinity: true })
      .map((value) => ({ inner: `<v>${value}</v>`, mark: "" })),
  },
  { weight: 4, arbitrary: formula.map((text) => ({ inner: `<f>${text}</f><v>0</v>`, mark: "" })) },
  {
    weight: 1,
    arbitrary: fc
      .integer({ min: 1, max: 4 })
      .map((size) => ({ inner: `<f t="array" ref="@">_xldudf_DRAWER_COUNTDOWN(${size})</f>`, mark: ' cm="1"' })),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(fc.nat(5), fc.nat(5)).map(([row, column]) => ({
      inner: `<f t="array" ref="@">_xlfn.SEQUENCE(COUNT(${cellName(row, column)}:${cellName(row + 3, column)})+1)</f>`,
      mark: ' cm="1"',
    })),
  },
);

const sheet = fc.array(fc.array(fc.option(content), { maxLength: 6 }), { maxLength: 8 }).map((rows) =>
  rows
    .map((cells, row) => {
      const texts = cells.map((cell, column) =>
        cell ? `<c r="${cellName(row, column)}"${cell.mark}>${cell.inner.replace("@", cellName(row, column))}</c>` : "",
      );
      return `<row r="${row + 1}">${texts.join("")}</row>`;
    })
    .join(""),
);

describe("any workbook", () => {
  it("recalculated twice is the workbook recalculated once, unless a spill never settles", () => {
    fc.assert(
      fc.property(sheet, (rows) => {
        const once = recalculate(oneSheet(rows), { functions: fakes });
        fc.pre(!once.report.kept.some(({ reason }) => reason.includes("does not settle") || reason.includes("circle")));
        const twice = recalculate(once.bytes, { functions: fakes });
        expect(parts(twice.bytes)).toEqual(parts(once.bytes));
        expect(Buffer.compare(twice.bytes, once.bytes)).toBe(0);
      }),
      { numRuns: 150 },
    );
  });

  it("keeps every part but its sheets, and every formula's text", () => {
    fc.assert(
      fc.property(sheet, (rows) => {
        const file = oneSheet(rows);
        const { bytes } = recalculate(file, { functions: fakes });
        const [before, after] = [parts(file), parts(bytes)];
        const name = "xl/worksheets/sheet1.xml";
        expect({ ...after, [name]: "" }).toEqual({ ...before, [name]: "" });
        const formulas = (text: string) => [...text.matchAll(/<f[^>]*>(.*?)<\/f>/g)].map((match) => match[1]);
        expect(formulas(after[name]!)).toEqual(formulas(before[name]!));
      }),
      { numRuns: 100 },
    );
  });
});
