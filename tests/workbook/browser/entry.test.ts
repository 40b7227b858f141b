import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { entryText, FRACTION, readEntry } from "../../../src/workbook/browser/entry";

describe("readEntry(text)", () => {
  test.each([
    ["7/16", 0.4375],
    ["24 1/16", 24.0625],
    ["23-7/16", 23.4375],
    ["  7/16  ", 0.4375],
    ["-3/4", -0.75],
    ["5½", 5.5],
    ["½", 0.5],
    ["3 ¾", 3.75],
    ["7⁄16", 0.4375],
    ["12/25", 0.48],
  ])("takes %j for the length %d, shown as a fraction", (text, content) =>
    expect(readEntry(text)).toEqual({ content, format: FRACTION }),
  );

  test.each([
    ["24", 24],
    ["-0.5", -0.5],
    [".5", 0.5],
    ["1.", 1],
    ["+5", 5],
    ["007", 7],
    ["0.1", 0.1],
  ])("takes %j for the number %d", (text, content) => expect(readEntry(text)).toEqual({ content }));

  test.each([
    ["50%", 0.5, "0%"],
    ["12.5 %", 0.125, "0.00%"],
    ["33.3333333333%", 0.333333333333, "0.00%"],
    ["1e3", 1000, "0.00E+00"],
    ["1,234", 1234, "#,##0"],
    ["1,234.5", 1234.5, "#,##0.00"],
    ["$12.50", 12.5, '"$"#,##0.00'],
    ["-€5", -5, '"€"#,##0'],
    ["2026-11-26", 46352, "yyyy-mm-dd"],
    ["11/26/2026", 46352, "mm/dd/yyyy"],
    ["1 Dec 2026", 46357, "d mmm yyyy"],
    ["Dec 1, 2026", 46357, "mmm d, yyyy"],
    ["10:30", 0.4375, "hh:mm"],
    ["2026-11-26 10:30", 46352.4375, "yyyy-mm-dd hh:mm"],
  ])("takes %j for %d, with the format %s", (text, content, format) =>
    expect(readEntry(text)).toEqual({ content, format }),
  );

  test("counts days from 1904 where the workbook does", () =>
    expect(readEntry("2026-11-26", { date1904: true }).content).toBe(46352 - 1462));

  test.each([
    ["true", true],
    ["FALSE", false],
    ["", null],
    ["'7/16", "7/16"],
    ["'=1+1", "=1+1"],
    ["=1+1", { formula: "=1+1" }],
    [" =A1", { formula: "=A1" }],
  ])("takes %j for %j", (text, content) => expect(readEntry(text)).toEqual({ content }));

  test.each([
    `1' 11 7/16"`,
    `24 1/16"`,
    "2'",
    "595 mm",
    "59,5 cm",
    "5 1/2; 1 part; 2 parts",
    "18 1/16; 18; 17 15/16",
    "12-25",
    "1/2/3",
    "Jan 5",
    "0x10",
    "1 000",
    "12 000",
    "7/0",
    "1E309",
    "2/30/2026",
    "25:00",
    "12345678901234567890",
    " sides ",
    "=",
    "#N/A",
    "@A1",
  ])("leaves %j as it stands", (text) => expect(readEntry(text)).toEqual({ content: text }));

  test("leaves everything as it stands in a cell whose format is text", () =>
    expect(["7/16", "=1+1", "'a", "12"].map((text) => readEntry(text, { isText: true }).content)).toEqual([
      "7/16",
      "=1+1",
      "'a",
      "12",
    ]));
});

describe("entryText(content, format)", () => {
  test.each([
    [24.0625, FRACTION, "24 1/16"],
    [24.0625, undefined, "24.0625"],
    [0.1234567, FRACTION, "0.1234567"],
    [0.12345, "0%", "12.345%"],
    [46352, "yyyy-mm-dd", "2026-11-26"],
    [12.5, '"$"#,##0.00', "$12.50"],
    [12.345, '"$"#,##0.00', "12.345"],
    ["7/16", undefined, "'7/16"],
    ["=1+1", undefined, "'=1+1"],
    ["sides", FRACTION, "sides"],
    [true, undefined, "TRUE"],
    [null, undefined, ""],
  ] as const)("writes %j with format %j as %j", (content, format, text) =>
    expect(entryText(content, format)).toBe(text),
  );

  const content = fc.oneof(
    fc.string(),
    fc.constantFrom("7/16", "'", "''", "TRUE", "5½", "10:30", " ", "50%"),
    fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => number || 0),
    fc.integer({ min: -6400, max: 6400 }).map((number) => number / 64 || 0),
    fc.boolean(),
  );
  const format = fc.constantFrom(undefined, FRACTION, "0%", "0.00%", "yyyy-mm-dd", "hh:mm", "#,##0.00", "0.00E+00");
  test("is read as the same content again, in every workbook and cell", () =>
    fc.assert(
      fc.property(content, format, fc.boolean(), (given, shownAs, date1904) => {
        const text = entryText(given, shownAs, { date1904 });
        expect(readEntry(text, { date1904 }).content).toBe(given === "" ? null : given);
      }),
      { seed: 1, numRuns: 2000 },
    ));
});
