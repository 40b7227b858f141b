import { describe, expect, it } from "vitest";
import { cellText } from "../../../src/workbook/browser/print/cell-text";
import { footText } from "../../../src/workbook/browser/print/foot-text";
import type { CellStyle } from "../../../src/workbook/look/index";
import { readPageSetup } from "../../../src/workbook/look/index";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { handmade, sheetXml } from "../support/handmade";

const on = { page: 2, pages: 5, sheet: "Cuts", file: "bench.xlsx", date: "5/4/2026", time: "9:30 AM" };

describe("a header or footer's codes (ECMA-376, 18.3.1.39)", () => {
  it.each([
    ["Page &P of &N", { left: "", center: "Page 2 of 5", right: "" }],
    [
      "&L&8Values of 2026, Groove && Reveal&C&A&R&D",
      { left: "Values of 2026, Groove & Reveal", center: "Cuts", right: "5/4/2026" },
    ],
    ['&R&"Georgia,Bold"&14&K00FF00&B&F', { left: "", center: "", right: "bench.xlsx" }],
    ["&", { left: "", center: "&", right: "" }],
  ])("%s", (codes, said) => expect(footText(codes, on)).toEqual(said));
});

describe("what a printed cell shows", () => {
  const style = (format?: string): CellStyle => ({
    font: {},
    borders: {},
    wrap: false,
    indent: 0,
    ...(format ? { format } : {}),
  });
  it.each([
    [23.4375, "# ??/??", "23 7/16"],
    [1897.49, '"$"#,##0.00', "$1,897.49"],
    [1 / 3, undefined, "0.333333333"],
    [true, undefined, "TRUE"],
    ["7/16", "@", "7/16"],
    [null, "0.00", ""],
    [0.065, "0.0%", "6.5%"],
  ])("%j in %s is %s", (value, format, text) => expect(cellText({ value, style: style(format) }, false)).toBe(text));

  it("a day is counted from 1904 where the workbook counts so", () => {
    expect(cellText({ value: 1, style: style("yyyy-mm-dd") }, true)).toBe("1904-01-02");
    expect(cellText({ value: 2, style: style("yyyy-mm-dd") }, false)).toBe("1900-01-02");
  });
});

it("a page set-up is read with its area, titles, breaks, margins and the pages that it fits", () => {
  const xml = sheetXml("", { before: '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><dimension ref="A1"/>' })
    .replace('left="0.7"', 'left="0.5"')
    .replace(
      "</worksheet>",
      '<pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/><headerFooter><oddFooter>&amp;CPage &amp;P</oddFooter></headerFooter><rowBreaks count="1"><brk id="12" max="16383" man="1"/></rowBreaks><colBreaks count="1"><brk id="3"/></colBreaks></worksheet>',
    );
  const file = handmade({
    sheets: [{ name: "It's", xml }],
    workbook:
      "<definedNames><definedName name=\"_xlnm.Print_Area\" localSheetId=\"0\">'It''s'!$B$2:$D$40</definedName><definedName name=\"_xlnm.Print_Titles\" localSheetId=\"0\">'It''s'!$A:$A,'It''s'!$2:$3</definedName></definedNames>",
  });
  expect(readPageSetup(openWorkbook(file), 0)).toMatchObject({
    paper: "A4",
    landscape: true,
    fit: { wide: 1, tall: 0 },
    margins: { left: 0.5, right: 0.7 },
    footer: "&CPage &P",
    area: { top: 1, left: 1, bottom: 39, right: 3 },
    repeated: { top: 1, bottom: 2 },
    breaks: [12],
  });
});
