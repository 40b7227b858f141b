import { handmade, relationshipXml, sheetXml, withPart } from "../support/handmade";
import { A1, MAIN, SUM, good, row } from "./file-parts";
import { sheetWith, times, type HostileCase } from "./hostile-case";

/** Files whose parts lead nowhere, to themselves or to too many. */
export const LINKED_FILES: HostileCase[] = [
  {
    title: "links that lead to themselves",
    expect: A1,
    make: () =>
      linked(
        relationshipXml("rId1", "table", "../worksheets/sheet1.xml") +
          relationshipXml("rId2", "worksheet", "sheet1.xml"),
      ),
  },
  {
    title: "links that lead out of the file",
    expect: A1,
    make: () =>
      linked(
        relationshipXml("rId1", "drawing", "../../../../../../etc/passwd") +
          relationshipXml("rId2", "image", "file:///etc/passwd") +
          relationshipXml("rId3", "hyperlink", "http://127.0.0.1:9/"),
      ),
  },
  {
    title: "a table that is not there",
    expect: { refused: /missing/ },
    make: () => linked(relationshipXml("rId1", "table", "../tables/none.xml")),
  },
  {
    title: "40,000 links to one table",
    expect: A1,
    make: () =>
      linked(
        times(40_000, (i) => relationshipXml(`rId${i}`, "table", "../tables/table1.xml")),
        { "xl/tables/table1.xml": table("B1:C3", 2) },
      ),
  },
  {
    title: "2,000 tables",
    expect: A1,
    make: () =>
      linked(
        times(2_000, (i) => relationshipXml(`rId${i}`, "table", `../tables/t${i}.xml`)),
        Object.fromEntries(Array.from({ length: 2_000 }, (_, i) => [`xl/tables/t${i}.xml`, table("B1:C3", i)])),
      ),
  },
  {
    title: "a table with 100,000 columns",
    expect: { A1: 0 },
    make: () =>
      handmade({
        sheets: [
          {
            name: "Bench",
            xml: sheetXml(row('<c r="A1"><f>SUM(T0[c99])</f><v>77</v></c>')),
            rels: relationshipXml("rId1", "table", "../tables/t.xml"),
          },
        ],
        parts: { "xl/tables/t.xml": table("B1:XFD3", 0, 100_000) },
      }),
  },
  {
    title: "1,000 formulas about a table with 16,000 columns",
    expect: { A1: 0 },
    make: () =>
      handmade({
        sheets: [
          {
            name: "Bench",
            xml: sheetXml(
              times(1000, (i) => row(`<c r="A${i + 1}"><f>SUM(T0[c${15_999 - (i % 100)}])</f><v>77</v></c>`, i + 1)),
            ),
            rels: relationshipXml("rId1", "table", "../tables/t.xml"),
          },
        ],
        parts: { "xl/tables/t.xml": table("B1:WQJ3", 0, 16_000) },
      }),
  },
  {
    title: "a workbook that is its own sheet",
    expect: {},
    make: () =>
      withPart(
        good,
        "xl/_rels/workbook.xml.rels",
        `<Relationships xmlns="${RELS}">${relationshipXml("sheet1", "worksheet", "workbook.xml")}</Relationships>`,
      ),
  },
  {
    title: "a sheet that stands a thousand times in the list",
    expect: { refused: /one and the same part/ },
    make: () =>
      handmade({
        sheets: Array.from({ length: 2 }, (_, i) => ({ name: `S${i}`, xml: sheetXml(row(SUM)) })),
        parts: {
          "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${RELS}">${["sheet1", "sheet2"].map((id) => relationshipXml(id, "worksheet", "worksheets/sheet1.xml")).join("")}</Relationships>`,
        },
      }),
  },
  {
    title: "1,000 sheets",
    expect: { A1: 2 },
    make: () =>
      handmade({ sheets: Array.from({ length: 1_000 }, (_, i) => ({ name: `S${i}`, xml: sheetXml(row(SUM)) })) }),
  },
  {
    title: "a formula over 1,000 sheets",
    expect: { A1: 999 },
    make: () =>
      handmade({
        sheets: Array.from({ length: 1_000 }, (_, i) => ({
          name: `S${i}`,
          xml: sheetXml(row(i === 0 ? '<c r="A1"><f>SUM(S1:S999!A1)</f><v>77</v></c>' : '<c r="A1"><v>1</v></c>')),
        })),
      }),
  },
];

const RELS = "http://schemas.openxmlformats.org/package/2006/relationships";

function linked(rels: string, parts: Record<string, string> = {}): Uint8Array {
  return sheetWith(row(SUM), "", { rels, parts });
}

function table(ref: string, id: number, columns = 2): string {
  return `<table xmlns="${MAIN}" id="${id + 1}" name="T${id}" displayName="T${id}" ref="${ref}"><tableColumns>${times(columns, (i) => `<tableColumn id="${i + 1}" name="c${i}"/>`)}</tableColumns></table>`;
}
