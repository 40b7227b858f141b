import { handmade, oneSheet, sheetXml } from "../support/handmade";
import { A1, MAIN, SUM, column, row, strings } from "./file-parts";
import { sheetWith, times, type HostileCase } from "./hostile-case";

/** Files that hold too much of something. */
export const CROWDED_FILES: HostileCase[] = [
  {
    title: "100 array formulas over 100,000 cells",
    expect: { A1: 1, ALL1: 1, ALL100: 100 },
    make: () =>
      oneSheet(
        times(100, (i) =>
          row(`<c r="A${i + 1}"><f t="array" ref="A${i + 1}:ALL${i + 1}">ROW()*1</f><v>77</v></c>`, i + 1),
        ),
      ),
  },
  {
    title: "a thousand array formulas over one another",
    expect: { A1: /^kept: fills cells beyond the 500000/ },
    make: () =>
      oneSheet(
        row(times(1000, (i) => `<c r="${column(i)}1"><f t="array" ref="${column(i)}1:ALL1000">1</f><v>77</v></c>`)),
      ),
  },
  {
    title: "an array formula over the whole grid",
    expect: { A1: /^kept: / },
    make: () => oneSheet(row('<c r="A1"><f t="array" ref="A1:XFD1048576">1</f><v>77</v></c>')),
  },
  {
    title: "two million empty cells",
    expect: { refused: /elements/ },
    make: () => oneSheet(times(1100, (i) => row("<c/>".repeat(2000), i + 1))),
  },
  {
    title: "400,000 empty cells and a sum of them",
    expect: { A1: 0 },
    make: () =>
      oneSheet(
        row('<c r="A1"><f>SUM(A2:XFD201)</f><v>77</v></c>') + times(200, (i) => row("<c/>".repeat(2000), i + 2)),
      ),
  },
  { title: "200,000 empty rows", expect: A1, make: () => oneSheet(row(SUM) + "<row/>".repeat(200_000)) },
  {
    title: "more rows than a sheet has",
    expect: { refused: /row 1048577/ },
    make: () => oneSheet(row(SUM) + "<row/>".repeat(1_048_576)),
  },
  {
    title: "more columns than a sheet has",
    expect: { refused: /cell 16385/ },
    make: () => oneSheet(row("<c/>".repeat(16_385))),
  },
  {
    title: "a cell in the last corner",
    expect: { A1: 1 },
    make: () =>
      oneSheet(
        row('<c r="A1"><f>COUNT(B1:XFD1048576)</f><v>77</v></c>') + row('<c r="XFD1048576"><v>5</v></c>', 1_048_576),
      ),
  },
  {
    title: "sums of whole columns in a sheet with a cell in the last corner",
    expect: { A1: 5 },
    make: () =>
      oneSheet(
        row(times(400, (i) => `<c r="${column(i)}1"><f>SUM(${column(i)}2:XFD1048576)</f><v>77</v></c>`)) +
          row('<c r="XFD1048576"><v>5</v></c>', 1_048_576),
      ),
  },
  {
    title: "a range in use that is the whole grid",
    expect: A1,
    make: () => changed('<dimension ref="A1"/>', '<dimension ref="A1:XFD1048576"/>'),
  },
  {
    title: "a range in use that is none",
    expect: A1,
    make: () => changed('<dimension ref="A1"/>', '<dimension ref="A0:ZZZZ9"/>'),
  },
  {
    title: "two million merged ranges",
    expect: { refused: /elements/ },
    make: () => sheetWith(row(SUM), `<mergeCells>${'<mergeCell ref="B2:C3"/>'.repeat(2_000_001)}</mergeCells>`),
  },
  {
    title: "50,000 merged ranges as large as the grid",
    expect: A1,
    make: () => sheetWith(row(SUM), `<mergeCells>${'<mergeCell ref="B2:XFD1048576"/>'.repeat(50_000)}</mergeCells>`),
  },
  {
    title: "30,000 rules about looks",
    expect: A1,
    make: () =>
      sheetWith(
        row(SUM),
        times(
          30_000,
          (i) =>
            `<conditionalFormatting sqref="A1"><cfRule type="expression" priority="${i + 1}"><formula>A1</formula></cfRule></conditionalFormatting>`,
        ),
      ),
  },
  {
    title: "a rule about 300,000 ranges",
    expect: A1,
    make: () =>
      sheetWith(
        row(SUM),
        `<conditionalFormatting sqref="${"A1 ".repeat(300_000)}"><cfRule type="expression" priority="1"><formula>A1</formula></cfRule></conditionalFormatting>`,
      ),
  },
  {
    title: "50,000 rules about what may be typed",
    expect: A1,
    make: () =>
      sheetWith(
        row(SUM),
        `<dataValidations>${'<dataValidation sqref="A1"><formula1>1</formula1></dataValidation>'.repeat(50_000)}</dataValidations>`,
      ),
  },
  {
    title: "200,000 styles",
    expect: A1,
    make: () =>
      styled(`<styleSheet xmlns="${MAIN}"><cellXfs>${'<xf numFmtId="0"/>'.repeat(200_000)}</cellXfs></styleSheet>`),
  },
  {
    title: "100,000 formats of numbers",
    expect: A1,
    make: () =>
      styled(
        `<styleSheet xmlns="${MAIN}"><numFmts>${times(100_000, (i) => `<numFmt numFmtId="${i}" formatCode="0"/>`)}</numFmts></styleSheet>`,
      ),
  },
  {
    title: "50,000 defined names",
    expect: A1,
    make: () =>
      oneSheet(row(SUM), {
        workbook: `<definedNames>${times(50_000, (i) => `<definedName name="name_${i}">${i}</definedName>`)}</definedNames>`,
      }),
  },
  {
    title: "50,000 shared texts",
    expect: { A1: 2, B1: "text 49999" },
    make: () =>
      strings(
        times(50_000, (i) => `<si><t>text ${i}</t></si>`),
        '<c r="B1" t="s"><v>49999</v></c>',
      ),
  },
];

/** The sheet with something in place of what stands before its views. */
const changed = (from: string | RegExp, to: string): Uint8Array =>
  handmade({ sheets: [{ name: "Bench", xml: sheetXml(row(SUM)).replace(from, () => to) }] });

const styled = (styles: string): Uint8Array =>
  oneSheet(row(SUM), { parts: { "xl/styles.xml": styles }, links: { styles: "styles.xml" } });
