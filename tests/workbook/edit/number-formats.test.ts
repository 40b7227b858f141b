import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { parseCell } from "../../../src/workbook/address";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { EditedWorkbook, type Content } from "../../../src/workbook/edit/index";
import { readLook } from "../../../src/workbook/look/index";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";

const STYLES = "xl/styles.xml";
const SHEET = "xl/worksheets/sheet1.xml";

/** A file of one sheet, given as the XML of its rows, with the part of styles changed as asked. */
function file(rows = "", styles: (text: string) => string = (text) => text): Uint8Array {
  const sheet = { name: "Job", widths: [10], rows: [], merged: [], selected: "A1" };
  const parts = unzipSync(writeWorkbook({ styles: { plain: {} }, sheets: [sheet] }));
  parts[SHEET] = strToU8(
    strFromU8(parts[SHEET]!).replace(/<sheetData><\/sheetData>/, `<sheetData>${rows}</sheetData>`),
  );
  parts[STYLES] = strToU8(styles(strFromU8(parts[STYLES]!)));
  return zipSync(parts);
}

const put = (workbook: EditedWorkbook, cell: string, content: Content, format?: string): boolean =>
  workbook.put({ sheet: 0, ...parseCell(cell)!, content, ...(format === undefined ? {} : { format }) });

/** The number format that a file gives a cell; undefined for the general one. */
function formatIn(bytes: Uint8Array, cell: string): string | undefined {
  const style = new RegExp(`<c r="${cell}"[^>]*?\\ss="(\\d+)"`).exec(text(bytes, SHEET))?.[1];
  return style === undefined ? undefined : readLook(openWorkbook(bytes)).styles[Number(style)]!.format;
}

const text = (bytes: Uint8Array, part: string): string => strFromU8(unzipSync(bytes)[part]!);

describe("a number that was typed with a number format", () => {
  test.each([
    ["a percentage", 0.07, "0%"],
    ["a percentage with decimals", 0.0725, "0.00%"],
    ["a date", 46_219, "yyyy-mm-dd"],
    ["a time", 0.4375, "h:mm"],
    ["money", 1234.5, '"$"#,##0.00'],
    ["a fraction", 7 / 16, "# ??/??"],
    ["a format with every sign that a file must escape", 5, `0" <'&'> "`],
  ])("is saved with it: %s", (_, value, format) => {
    const workbook = new EditedWorkbook(file());
    put(workbook, "B2", value, format);
    const saved = workbook.save();
    expect(formatIn(saved, "B2")).toBe(format);
    expect(new EditedWorkbook(saved).content(0, 1, 1)).toBe(value);
  });

  test("is kept with it", () => {
    const workbook = new EditedWorkbook(file());
    put(workbook, "B2", 0.07, "0%");
    const again = new EditedWorkbook(file(), JSON.parse(JSON.stringify(workbook.changes)) as never);
    expect([again.format(0, 1, 1), again.format("sheet-0", 1, 2)]).toEqual(["0%", undefined]);
    expect(again.changes).toEqual(workbook.changes);
    expect(formatIn(again.save(), "B2")).toBe("0%");
  });

  test("is a change where the same number stands without it, and none where it stands with it", () => {
    const workbook = new EditedWorkbook(file('<row r="1"><c r="A1"><v>0.07</v></c></row>'));
    expect([put(workbook, "A1", 0.07), put(workbook, "A1", 0.07, "0%"), put(workbook, "A1", 0.07, "0%")]).toEqual([
      false,
      true,
      false,
    ]);
    expect(formatIn(workbook.save(), "A1")).toBe("0%");
    expect(put(workbook, "A1", 0.07)).toBe(true);
    expect(workbook.changes).toEqual([]);
  });

  test("keeps the format that its cell has in the file", () => {
    const dated = (styles: string) =>
      styles.replace(
        /<cellXfs[^>]*>.*<\/cellXfs>/s,
        '<cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="2"/></cellXfs>',
      );
    const workbook = new EditedWorkbook(file('<row r="1"><c r="A1" s="1"><v>1</v></c></row>', dated));
    put(workbook, "A1", 0.07, "0%");
    expect(formatIn(workbook.save(), "A1")).toBe("0.00");
  });
});

describe("the part with the styles", () => {
  test("gets each format and each style once, behind those that it has, which stay as they are", () => {
    const bytes = file();
    const workbook = new EditedWorkbook(bytes);
    for (const [cell, format] of [
      ["A1", "yyyy-mm-dd"],
      ["A2", "yyyy-mm-dd"],
      ["A3", '"€"#,##0'],
      ["A4", "0%"],
    ])
      put(workbook, cell!, 7, format);
    const saved = text(workbook.save(), STYLES);
    expect(saved.match(/formatCode="yyyy-mm-dd"/g)).toHaveLength(1);
    const xfs = (styles: string) => [.../<cellXfs.*<\/cellXfs>/s.exec(styles)![0].matchAll(/<xf\s.*?(?:\/>|<\/xf>)/gs)];
    const [before, after] = [xfs(text(bytes, STYLES)), xfs(saved)].map((list) => list.map(([xf]) => xf));
    expect(after!.slice(0, before!.length)).toEqual(before);
    expect(after).toHaveLength(before!.length + 3);
    expect(saved).toContain(`<cellXfs count="${after!.length}"`);
    const list = /<numFmts count="(\d+)">(.*?)<\/numFmts>/s.exec(saved)!;
    expect(list[2]!.match(/<numFmt /g)).toHaveLength(Number(list[1]));
    // CT_Stylesheet (ECMA-376, 18.8.39): numFmts come first.
    expect(saved).toMatch(/<styleSheet[^>]*>\s*<numFmts/);
  });

  test.each([
    ["none", ""],
    ["an empty list", "<numFmts count='0'/>"],
    ["an empty list with an end", '<numFmts count="0"></numFmts>'],
    ["one with the format", '<numFmts count="1"><numFmt numFmtId="170" formatCode="yyyy\\-mm\\-dd"/></numFmts>'],
    ["one that says otherwise what 9 is", '<numFmts count="1"><numFmt numFmtId="9" formatCode="0.0"/></numFmts>'],
  ])("may have had a list of formats or not: %s", (_, list) => {
    const listed = (styles: string) => styles.replace(/<numFmts.*?<\/numFmts>/s, "").replace(/<fonts/, `${list}<fonts`);
    const workbook = new EditedWorkbook(file("", listed));
    put(workbook, "A1", 46_219, "yyyy\\-mm\\-dd");
    put(workbook, "A2", 0.07, "0%");
    const saved = workbook.save();
    expect([formatIn(saved, "A1"), formatIn(saved, "A2")]).toEqual(["yyyy\\-mm\\-dd", "0%"]);
    const ids = [...text(saved, STYLES).matchAll(/<numFmt numFmtId="(\d+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("keeps its prefix", () => {
    const prefixed = (styles: string) =>
      styles
        .replace(/<numFmts.*?<\/numFmts>/s, "")
        .replaceAll(/<(\/?)([a-zA-Z])/g, "<$1x:$2")
        .replace("xmlns=", "xmlns:x=");
    const workbook = new EditedWorkbook(file("", prefixed));
    put(workbook, "A1", 46_219, "yyyy-mm-dd");
    const saved = workbook.save();
    expect(formatIn(saved, "A1")).toBe("yyyy-mm-dd");
    expect(text(saved, STYLES)).toContain('<x:numFmts count="1"><x:numFmt numFmtId="164" formatCode="yyyy-mm-dd"/>');
  });
});

describe("a formula that was typed", () => {
  test("is saved with the format that its result brings, and gives no other formula one", () => {
    const own = '<c r="B1" cm="1"><f t="array" ref="B1">_xldudf_DRAWER_BOXWIDTH(A1)</f><v>23</v></c>';
    const workbook = new EditedWorkbook(file(`<row r="1"><c r="A1"><v>24</v></c>${own}</row>`));
    put(workbook, "A2", 0.07, "0%");
    put(workbook, "C1", { formula: "=DRAWER.BOXWIDTH(A1)" });
    put(workbook, "D1", { formula: "=C1*2" });
    put(workbook, "E1", { formula: "=A2" });
    const saved = workbook.save();
    expect(["B1", "C1", "D1", "E1"].map((cell) => formatIn(saved, cell))).toEqual([
      undefined,
      "# ??/??",
      undefined,
      "0%",
    ]);
    expect(text(saved, SHEET)).toContain(own);
  });

  test("is saved with it in every cell that it fills and that has none, and in no other", () => {
    const filled = (styles: string) =>
      styles.replace(
        /<cellXfs[^>]*>.*<\/cellXfs>/s,
        '<cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="2"/></cellXfs>',
      );
    const rows = '<row r="3"><c r="B3" s="1"/><c r="C3" s="1"/></row>';
    const workbook = new EditedWorkbook(file(rows, filled));
    put(workbook, "B2", { formula: '=DRAWER.FRONTHEIGHTS(27.5,3,"0 in")' });
    const saved = workbook.save();
    const { values } = workbook.calculate().results[0]!;
    expect(["B2", "B3", "B4", "B5"].map((cell) => formatIn(saved, cell))).toEqual([
      "0.000",
      "0.00",
      "0.000",
      undefined,
    ]);
    const cells = [...text(saved, SHEET).matchAll(/<c r="(\w+)"/g)].map(([, cell]) => cell);
    expect(cells).toEqual(["B2", "B3", "C3", "B4"]);
    const again = new EditedWorkbook(saved);
    expect(again.calculate().results[0]!.values).toEqual(values);
    put(again, "B4", "in the way");
    expect(new EditedWorkbook(again.save()).content(0, 3, 1)).toBe("in the way");
  });
});
