import { describe, expect, test } from "vitest";
import { parseCell } from "../../../src/workbook/address";
import { EditedWorkbook, type Content } from "../../../src/workbook/edit/index";
import { readLook } from "../../../src/workbook/look/index";
import { recalculate } from "../../../src/workbook/edit/recalculate";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { handmade, METADATA, oneSheet, parts, sheetXml, withPart } from "../support/handmade";

const put = (workbook: EditedWorkbook, cell: string, content: Content, format?: string): boolean =>
  workbook.put({ sheet: 0, ...parseCell(cell)!, content, ...(format === undefined ? {} : { format }) });

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const STYLES = "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";

/** The number format that a file gives a cell. */
function formatIn(bytes: Uint8Array, cell: string): string | undefined {
  const { styles, sheets } = readLook(openWorkbook(bytes));
  const { row, column } = parseCell(cell)!;
  return styles[sheets[0]!.cells.get(`${row} ${column}`) ?? 0]?.format;
}

/** A workbook whose styles are as told; none at all where nothing is. */
function styled(styles?: string): Uint8Array {
  const rows = '<row r="1"><c r="A1"><v>7</v></c><c r="B1" s="3"><v>8</v></c></row>';
  if (styles === undefined) return oneSheet(rows);
  return oneSheet(rows, {
    parts: { "xl/styles.xml": styles },
    links: { styles: "styles.xml" },
    contentTypes: `<Override PartName="/xl/styles.xml" ContentType="${STYLES}"/>`,
  });
}

describe("a number's format is saved, and the cells beside it look as they did, whatever the file has of styles:", () => {
  test.each([
    ["no part", undefined, "fonts"],
    ["a part that closes itself", `<styleSheet xmlns="${MAIN}"/>`, undefined],
    ["an empty part", `<styleSheet xmlns="${MAIN}"></styleSheet>`, undefined],
    ["no list of cells' styles", `<styleSheet xmlns="${MAIN}"><fonts/><dxfs count="0"/></styleSheet>`, "fonts"],
    ["an empty list", `<styleSheet xmlns="${MAIN}"><cellXfs count="0"/><dxfs count="0"/></styleSheet>`, undefined],
    [
      "a list that ends empty",
      `<x:styleSheet xmlns:x="${MAIN}"><x:cellXfs count="0"></x:cellXfs></x:styleSheet>`,
      undefined,
    ],
    [
      "a style that is not there",
      `<styleSheet xmlns="${MAIN}"><cellXfs count="1"><xf/></cellXfs></styleSheet>`,
      undefined,
    ],
  ])("%s", (_, styles, first) => {
    const workbook = new EditedWorkbook(styled(styles));
    put(workbook, "B1", 0.07, "0%");
    put(workbook, "C3", 46_219, "yyyy-mm-dd");
    const saved = workbook.save();
    expect(["A1", "B1", "C3"].map((cell) => formatIn(saved, cell))).toEqual([undefined, "0%", "yyyy-mm-dd"]);
    const text = parts(saved)["xl/styles.xml"]!;
    // CT_Stylesheet (ECMA-376, 18.8.39): formats come first, then fonts, styles of cells, changes of rules.
    const order = ["numFmts", ...(first ? [first] : []), "cellXfs", ...(text.includes("<dxfs") ? ["dxfs"] : [])];
    const found = order.map((name) => text.search(new RegExp(`<(\\w+:)?${name}[\\s>/]`)));
    expect(found).toEqual([...found].sort((a, b) => a - b));
    expect(found[0]).toBeGreaterThan(0);
    const xfs = /<(?:\w+:)?cellXfs count="(\d+)">(.*?)<\/(?:\w+:)?cellXfs>/s.exec(text)!;
    expect(xfs[2]!.match(/<(\w+:)?xf[\s>/]/g)).toHaveLength(Number(xfs[1]));
    expect(parts(saved)["[Content_Types].xml"]!.split("/xl/styles.xml")).toHaveLength(2);
  });

  test("no part, and no record of formulas that spill: both are added", () => {
    const workbook = new EditedWorkbook(withoutMetadata());
    put(workbook, "A1", 0.07, "0%");
    put(workbook, "B1", { formula: "=SEQUENCE(2)" });
    const saved = workbook.save();
    expect(formatIn(saved, "A1")).toBe("0%");
    const { "[Content_Types].xml": types, "xl/_rels/workbook.xml.rels": links } = parts(saved);
    for (const name of ["styles", "metadata"])
      expect([types, links].map((text) => text!.search(new RegExp(`${name}\\d*\\.xml`)) > 0)).toEqual([true, true]);
    const ids = [...links!.matchAll(/ Id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

const withoutMetadata = (): Uint8Array =>
  handmade({
    sheets: [{ name: "Bench", xml: sheetXml("") }],
    parts: { "xl/metadata.xml": "<none/>" },
    links: { sheetMetadata: "nowhere.xml" },
  });

describe("an order of calculation that no cell is left in", () => {
  const CHAIN = "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml";
  const chained = (rows: string, cells: string): Uint8Array =>
    oneSheet(rows, {
      parts: { "xl/calcChain.xml": `<calcChain xmlns="${MAIN}">${cells}</calcChain>` },
      links: { calcChain: "calcChain.xml" },
      contentTypes: `<Override PartName="/xl/calcChain.xml" ContentType="${CHAIN}"/>`,
    });
  const expectGone = (bytes: Uint8Array): void => {
    const found = parts(bytes);
    expect(Object.keys(found).filter((name) => /calcChain/i.test(name))).toEqual([]);
    expect(found["[Content_Types].xml"]! + found["xl/_rels/workbook.xml.rels"]!).not.toMatch(/calcChain/);
  };

  test("goes where its last formula is typed over", () => {
    const bytes = chained('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>', '<c r="A1" i="1"/>');
    const workbook = new EditedWorkbook(bytes);
    put(workbook, "A1", 7);
    expectGone(workbook.save());
  });

  test("goes where it holds but cells that an array formula fills no longer", () => {
    const rows =
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">_xlfn.SEQUENCE(1)</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>';
    const { bytes } = recalculate(chained(rows, '<c r="A2" i="1" a="1"/>'), { functions: {} });
    expectGone(bytes);
  });
});

describe("a formula that may spill is marked so, beside records of other kinds, which keep their numbers:", () => {
  const OTHER = '<metadataType name="XLRICHVALUE" minSupportedVersion="120000" cellMeta="1"/>';
  const metadata = (inside: string) => `<metadata xmlns="${MAIN}">${inside}</metadata>`;
  const FUTURE = '<futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata>';
  test.each([
    ["none", `<metadata xmlns="${MAIN}"/>`, "1"],
    [
      "rich values in cells",
      metadata(
        `<metadataTypes count="1">${OTHER}</metadataTypes>${FUTURE}<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata>`,
      ),
      "2",
    ],
    [
      "rich values that no cell has",
      metadata(
        `<metadataTypes count="1">${OTHER}</metadataTypes>${FUTURE}<valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata>`,
      ),
      "1",
    ],
    ["the kind itself, of which no cell is", METADATA.replace(/<cellMetadata.*<\/cellMetadata>/, ""), "1"],
    ["empty lists", metadata('<metadataTypes count="0"/><cellMetadata count="0"/>'), "1"],
  ])("%s", (_, text, mark) => {
    const bytes = withPart(oneSheet(""), "xl/metadata.xml", text);
    const workbook = new EditedWorkbook(bytes);
    put(workbook, "A1", { formula: "=SEQUENCE(2)" });
    const saved = workbook.save();
    expect(parts(saved)["xl/worksheets/sheet1.xml"]).toContain(`<c r="A1" cm="${mark}">`);
    const written = parts(saved)["xl/metadata.xml"]!;
    expect(openWorkbook(saved).book.sheets[0]!.cells.get(0)!.formula!.kind).toBe("dynamic");
    // CT_Metadata (ECMA-376, 18.9.10): types, then records to come, then cells', then values'.
    const order = ["metadataTypes", "futureMetadata", "cellMetadata", "valueMetadata"]
      .map((name) => written.lastIndexOf(`<${name}`))
      .filter((at) => at >= 0);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    for (const [, name, count, inside] of written.matchAll(
      /<(metadataTypes|cellMetadata)[^>]*count="(\d+)">(.*?)<\/\1>/gs,
    ))
      expect(inside!.match(name === "cellMetadata" ? /<bk>/g : /<metadataType /g)).toHaveLength(Number(count));
    if (text.includes("XLRICHVALUE"))
      expect(written).toMatch(/<metadataTypes count="2"><metadataType name="XLRICHVALUE"/);
  });
});
