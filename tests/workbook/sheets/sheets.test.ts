import { describe, expect, test } from "vitest";
import { parseCell } from "../../../src/workbook/address";
import { EditedWorkbook, SheetFault, type Content } from "../../../src/workbook/edit/index";
import { CellError } from "../../../src/workbook/engine/index";
import { handmade, parts, relationshipXml, sheetXml, type Handmade } from "../support/handmade";
import { shopWorkbook } from "../support/shop-workbook";

const put = (workbook: EditedWorkbook, sheet: string, cell: string, content: Content) =>
  workbook.put({ sheet, ...parseCell(cell)!, content });
const formula = (workbook: EditedWorkbook, sheet: string, cell: string): unknown => {
  const { row, column } = parseCell(cell)!;
  const content = workbook.content(sheet, row, column);
  return typeof content === "object" && content ? content.formula : content;
};
const value = (workbook: EditedWorkbook, sheet: string, cell: string): unknown => {
  const { row, column } = parseCell(cell)!;
  const place = workbook.sheets.findIndex(({ id }) => id === sheet);
  const found = workbook
    .calculate()
    .results.find((one) => one.sheet === place && one.row === row && one.column === column);
  const [[first]] = found!.values as [[unknown]];
  return first instanceof CellError ? first.code : first;
};
const names = (workbook: EditedWorkbook) => workbook.sheets.map(({ name }) => name);
const untouched = (before: Uint8Array, after: Uint8Array): string[] => {
  const [old, now] = [parts(before), parts(after)];
  return Object.keys({ ...old, ...now }).filter((name) => old[name] !== now[name]);
};

describe("a sheet that is renamed", () => {
  test("takes all that names it along, in cells, names, rules, lists, links, charts, drawings and properties", () => {
    const workbook = new EditedWorkbook(shopWorkbook());
    put(workbook, "sheet-1", "F1", { formula: "=Bench!A1&DRAWER.TAPE(Bench!B2)" });
    const changed = workbook.changeSheets({ kind: "rename", id: "sheet-0", name: "Bob's bench" });
    expect(changed.map(({ sheet, row, column }) => `${sheet} ${row} ${column}`)).toContain("sheet-1 0 5");
    expect(formula(workbook, "sheet-1", "F1")).toBe("='Bob''s bench'!A1&DRAWER.TAPE('Bob''s bench'!B2)");
    expect(formula(workbook, "sheet-1", "A1")).toBe("='Bob''s bench'!B2*2");
    expect(value(workbook, "sheet-1", "A1")).toBe(48);
    const saved = workbook.save();
    const now = parts(saved);
    for (const [name, text] of Object.entries(now)) {
      const named = text.replace(/<[tv][ >][^<]*<\/[tv]>|prompt="[^"]*"|(tooltip|name)="[^"]*"/g, "");
      if (name !== "xl/sharedStrings.xml") expect(named, name).not.toMatch(/\bBench(?!es)/);
    }
    expect(now["xl/workbook.xml"]).toContain("'Bob''s bench'!$A$1:$C$9</definedName>");
    expect(now["xl/worksheets/sheet2.xml"]).toContain("<formula1>'Bob''s bench'!$A$2:$A$4</formula1>");
    expect(now["xl/worksheets/sheet2.xml"]).toContain('location="&apos;Bob&apos;&apos;s bench&apos;!A1"');
    expect(now["xl/charts/chart1.xml"]).toContain("<c:f>'Bob''s bench'!$B$2:$B$4</c:f>");
    expect(now["xl/drawings/drawing1.xml"]).toContain('textlink="&apos;Bob&apos;&apos;s bench&apos;!$A$1"');
    expect(now["xl/drawings/_rels/drawing1.xml.rels"]).toContain('Target="#&apos;Bob&apos;&apos;s%20bench&apos;!A1"');
    expect(now["docProps/app.xml"]).toContain("<vt:lpstr>Bob's bench</vt:lpstr>");
    expect(now["docProps/app.xml"]).toContain("<vt:lpstr>'Bob''s bench'!Print_Area</vt:lpstr>");
    expect(names(new EditedWorkbook(saved))).toEqual(["Bob's bench", "Cuts", "Spare", "Notes"]);
  });

  test("and back again leaves the file as it was, byte for byte", () => {
    const bytes = shopWorkbook();
    const workbook = new EditedWorkbook(bytes);
    workbook.changeSheets({ kind: "rename", id: "sheet-0", name: "Shop" });
    workbook.changeSheets({ kind: "rename", id: "sheet-0", name: "Bench" });
    expect(workbook.changes).toEqual([]);
    expect(parts(workbook.save())).toEqual(parts(new EditedWorkbook(bytes).save()));
  });

  test("keeps its name where a part refers to it that is not understood, and says so", () => {
    const workbook = new EditedWorkbook(shopWorkbook({ odd: true }));
    const edit = { kind: "rename", id: "sheet-0", name: "Shop" } as const;
    expect(workbook.refusal(edit)).toMatch(/keeps its name.*odd\.xml/);
    expect(() => workbook.changeSheets(edit)).toThrow(SheetFault);
    expect(names(workbook)).toEqual(["Bench", "Cuts", "Spare", "Notes"]);
    expect(workbook.refusal({ kind: "rename", id: "sheet-1", name: "Saw" })).toBeUndefined();
  });

  test("may change the case of its name alone", () => {
    const workbook = new EditedWorkbook(shopWorkbook());
    workbook.changeSheets({ kind: "rename", id: "sheet-0", name: "BENCH" });
    expect(formula(workbook, "sheet-1", "A1")).toBe("=BENCH!B2*2");
  });

  test.each([
    ["", "needs a name"],
    ["x".repeat(32), "at most 31"],
    ["a/b", "no /"],
    ["a:b", "no :"],
    ["a?", "no ?"],
    ["[a]", "no ["],
    ["'a", "apostrophe"],
    ["a'", "apostrophe"],
    ["history", "History"],
    ["CUTS", "already"],
  ])("is not called %j", (name, words) => {
    const workbook = new EditedWorkbook(shopWorkbook());
    for (const edit of [{ kind: "rename", id: "sheet-0", name } as const, { kind: "add", id: "new", name } as const])
      expect(workbook.refusal(edit)).toContain(words);
  });
});

describe("a sheet that is added", () => {
  test("stands in its place, takes what is typed, and is saved with all that a sheet needs", () => {
    const bytes = shopWorkbook();
    const workbook = new EditedWorkbook(bytes);
    workbook.changeSheets({ kind: "add", id: "mine", name: "Plan & <B>", before: "sheet-1" });
    put(workbook, "mine", "B2", 24);
    put(workbook, "mine", "C2", { formula: "=DRAWER.BOXWIDTH(B2)+Bench!B2" });
    put(workbook, "sheet-0", "H1", { formula: "='Plan & <B>'!B2" });
    expect([value(workbook, "mine", "C2"), value(workbook, "sheet-0", "H1")]).toEqual([47, 24]);
    const saved = workbook.save();
    expect(names(new EditedWorkbook(saved))).toEqual(["Bench", "Plan & <B>", "Cuts", "Spare", "Notes"]);
    expect(untouched(bytes, saved).sort()).toEqual([
      "[Content_Types].xml",
      "docProps/app.xml",
      "xl/_rels/workbook.xml.rels",
      "xl/workbook.xml",
      "xl/worksheets/sheet1.xml",
      "xl/worksheets/sheet5.xml",
    ]);
    const now = parts(saved);
    expect(now["xl/workbook.xml"]).toContain(
      '<definedName name="_xlnm.Print_Titles" localSheetId="2">Cuts!$1:$1</definedName>',
    );
    expect(now["xl/workbook.xml"]).toContain('activeTab="2"');
    expect(now["docProps/app.xml"]).toContain(
      '<vt:vector size="7" baseType="lpstr"><vt:lpstr>Bench</vt:lpstr><vt:lpstr>Plan &amp; &lt;B&gt;</vt:lpstr>',
    );
  });

  test("and taken back leaves the file as it was; done again it is empty", () => {
    const workbook = new EditedWorkbook(shopWorkbook());
    workbook.changeSheets({ kind: "add", id: "mine", name: "Mine" });
    put(workbook, "mine", "A1", 1);
    put(workbook, "mine", "A1", null);
    workbook.changeSheets({ kind: "delete", id: "mine" });
    expect(workbook.changes).toEqual([]);
    workbook.changeSheets({ kind: "add", id: "mine", name: "Mine" });
    expect(workbook.content("mine", 0, 0)).toBeNull();
  });
});

describe("a sheet that is moved", () => {
  test("takes its names, and the tab in front, along; nothing but the order changes", () => {
    const bytes = shopWorkbook();
    const workbook = new EditedWorkbook(bytes);
    workbook.changeSheets({ kind: "move", id: "sheet-1", before: "sheet-0" });
    expect(names(workbook)).toEqual(["Cuts", "Bench", "Spare", "Notes"]);
    expect(value(workbook, "sheet-1", "A1")).toBe(48);
    const saved = workbook.save();
    expect(untouched(bytes, saved).sort()).toEqual(["docProps/app.xml", "xl/workbook.xml"]);
    const book = parts(saved)["xl/workbook.xml"]!;
    expect(book).toContain('localSheetId="0">Cuts!$1:$1<');
    expect(book).toContain('localSheetId="1">Bench!$A$1:$C$9<');
    expect(book).toContain('activeTab="0"');
    workbook.changeSheets({ kind: "move", id: "sheet-1", before: "sheet-2" });
    expect(workbook.changes).toEqual([]);
  });

  test("changes which sheets a sum over several takes", () => {
    const workbook = new EditedWorkbook(shopWorkbook());
    put(workbook, "sheet-3", "A1", { formula: "=SUM(Bench:Cuts!B2)" });
    put(workbook, "sheet-2", "B2", 1000);
    expect(value(workbook, "sheet-3", "A1")).toBe(24);
    workbook.changeSheets({ kind: "move", id: "sheet-2", before: "sheet-1" });
    expect(value(workbook, "sheet-3", "A1")).toBe(1024);
  });
});

describe("a sheet that is deleted", () => {
  test("leaves #REF! where it was referred to, and goes with its parts, names, links and types", () => {
    const bytes = shopWorkbook();
    const workbook = new EditedWorkbook(bytes);
    put(workbook, "sheet-1", "F1", { formula: "=Bench!A1" });
    put(workbook, "sheet-0", "A9", "lost");
    workbook.changeSheets({ kind: "delete", id: "sheet-0" });
    expect(formula(workbook, "sheet-1", "A1")).toBe("=#REF!B2*2");
    expect(formula(workbook, "sheet-1", "A2")).toBe("=SUM(#REF!)");
    expect([value(workbook, "sheet-1", "A1"), value(workbook, "sheet-1", "F1")]).toEqual(["#REF!", "#REF!"]);
    const now = parts(workbook.save());
    expect(Object.keys(now).filter((name) => /sheet1|table1|drawing1|chart1/.test(name))).toEqual([]);
    expect(now["[Content_Types].xml"]).not.toMatch(/sheet1|table1|drawing1|chart1/);
    expect(now["xl/_rels/workbook.xml.rels"]).not.toContain("sheet1.xml");
    expect(now["xl/workbook.xml"]).toContain('<definedName name="Widths">#REF!$B$2:$B$4</definedName>');
    expect(now["xl/workbook.xml"]).not.toContain("Print_Area");
    expect(now["xl/workbook.xml"]).toContain('localSheetId="0">Cuts!$1:$1<');
    expect(now["xl/workbook.xml"]).toContain('activeTab="0"');
    expect(now["xl/calcChain.xml"]).toBe(parts(bytes)["xl/calcChain.xml"]!.replace('<c r="C2" i="1"/>', ""));
    expect(now["docProps/app.xml"]).toContain('<vt:vector size="4" baseType="lpstr"><vt:lpstr>Cuts</vt:lpstr>');
    expect(now["docProps/app.xml"]).toContain("<vt:lpstr>Cuts!Print_Titles</vt:lpstr>");
    expect(now["xl/worksheets/sheet2.xml"]).toContain("<formula1>#REF!$A$2:$A$4</formula1>");
  });

  test("and brought back is there with all that it held, and all that referred to it", () => {
    const bytes = shopWorkbook();
    const workbook = new EditedWorkbook(bytes);
    put(workbook, "sheet-1", "F1", { formula: "=Bench!A9" });
    put(workbook, "sheet-0", "A9", "kept");
    const before = structuredClone(workbook.changes);
    workbook.changeSheets({ kind: "delete", id: "sheet-0" });
    const afterwards = new EditedWorkbook(bytes, JSON.parse(JSON.stringify(workbook.changes)));
    for (const undone of [workbook, afterwards]) {
      const back = undone.changeSheets({ kind: "add", id: "sheet-0", name: "Bench", before: "sheet-1" });
      expect(back.map(({ sheet, row, column }) => `${sheet} ${row} ${column}`)).toContain("sheet-1 0 0");
      expect(undone.content("sheet-0", 8, 0)).toBe("kept");
      expect(value(undone, "sheet-1", "F1")).toBe("kept");
      expect(undone.changes.toSorted(byText)).toEqual(before.toSorted(byText));
    }
  });

  test("brought back after other changes leaves those as they are", () => {
    const workbook = new EditedWorkbook(shopWorkbook());
    put(workbook, "sheet-1", "F1", { formula: "=Bench!A2&Spare!A1" });
    put(workbook, "sheet-1", "F2", { formula: "=Bench!A2" });
    workbook.changeSheets({ kind: "delete", id: "sheet-0" });
    put(workbook, "sheet-1", "F2", "typed since");
    workbook.changeSheets({ kind: "rename", id: "sheet-2", name: "More" });
    workbook.changeSheets({ kind: "add", id: "sheet-0", name: "Bench" });
    expect(names(workbook)).toEqual(["Bench", "Cuts", "More", "Notes"]);
    expect(formula(workbook, "sheet-1", "F1")).toBe("=Bench!A2&More!A1");
    expect(formula(workbook, "sheet-1", "F2")).toBe("typed since");
  });

  test("is not the last one that can be seen", () => {
    const workbook = new EditedWorkbook(shopWorkbook());
    for (const id of ["sheet-0", "sheet-1"]) workbook.changeSheets({ kind: "delete", id });
    expect(workbook.refusal({ kind: "delete", id: "sheet-3" })).toBeUndefined();
    expect(workbook.refusal({ kind: "delete", id: "sheet-2" })).toBeUndefined();
    workbook.changeSheets({ kind: "delete", id: "sheet-2" });
    expect(names(workbook)).toEqual(["Notes"]);
    expect(workbook.refusal({ kind: "delete", id: "sheet-3" })).toMatch(/at least one/);
  });
});

describe("a workbook with more than its sheets", () => {
  const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  /** Sales holds what the pivot table on Pivot sums; a link, a view and a sparkline on Pivot lead there. */
  function pivots(more: Partial<Handmade> = {}, links = ""): Uint8Array {
    const sparkline =
      '<extLst><ext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:sparklineGroups xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><x14:sparklineGroup><x14:sparklines><x14:sparkline><xm:f>Sales!A2:A3</xm:f><xm:sqref>E1</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst>';
    return handmade({
      sheets: [
        {
          name: "Sales",
          xml: sheetXml(
            '<row r="1"><c r="A1" t="inlineStr"><is><t>Drawers</t></is></c></row><row r="2"><c r="A2"><v>4</v></c></row><row r="3"><c r="A3"><v>6</v></c></row>',
          ),
        },
        {
          name: "Pivot",
          xml: sheetXml('<row r="1"><c r="A1"><v>10</v></c></row>', {
            after: `<hyperlinks><hyperlink ref="C1" location="Sales!A1"/></hyperlinks>${sparkline}`,
          }),
          rels: relationshipXml("rId1", "pivotTable", "../pivotTables/pivotTable1.xml") + links,
        },
      ],
      workbook: `<customWorkbookViews><customWorkbookView name="Mine" guid="{6B6B6B6B-0000-4000-8000-000000000001}" windowWidth="1" windowHeight="1" activeSheetId="1"/></customWorkbookViews><pivotCaches><pivotCache cacheId="1" r:id="more1"/></pivotCaches>`,
      ...more,
      links: { pivotCacheDefinition: "pivotCache/pivotCacheDefinition1.xml", ...more.links },
      parts: {
        "xl/pivotCache/pivotCacheDefinition1.xml": `<pivotCacheDefinition xmlns="${MAIN}" refreshedVersion="6"><cacheSource type="worksheet"><worksheetSource ref="A1:A3" sheet="Sales"/></cacheSource><cacheFields count="0"/></pivotCacheDefinition>`,
        "xl/pivotTables/pivotTable1.xml": `<pivotTableDefinition xmlns="${MAIN}" name="Sum" cacheId="1" dataCaption="x"><location ref="A1:A1" firstHeaderRow="0" firstDataRow="0" firstDataCol="0"/></pivotTableDefinition>`,
        "xl/pivotTables/_rels/pivotTable1.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relationshipXml("rId1", "pivotCacheDefinition", "../pivotCache/pivotCacheDefinition1.xml")}</Relationships>`,
        ...more.parts,
      },
    });
  }
  const slicer = (inside: string) => ({
    links: { slicerCache: "slicerCaches/slicerCache1.xml" },
    parts: { "xl/slicerCaches/slicerCache1.xml": `<slicerCacheDefinition name="S">${inside}</slicerCacheDefinition>` },
  });

  test("has a pivot table follow the sheet that it sums, under its new name", () => {
    const workbook = new EditedWorkbook(pivots());
    workbook.changeSheets({ kind: "rename", id: "sheet-0", name: "Shop sales" });
    const now = parts(workbook.save());
    expect(now["xl/pivotCache/pivotCacheDefinition1.xml"]).toContain('sheet="Shop sales"');
    expect(now["xl/worksheets/sheet2.xml"]).toContain("<xm:f>'Shop sales'!A2:A3</xm:f>");
    expect(now["xl/worksheets/sheet2.xml"]).toContain(`location="&apos;Shop sales&apos;!A1"`);
  });

  test("keeps what a pivot table has summed once its sheet is gone; sparklines say #REF!, views show the next sheet", () => {
    const bytes = pivots();
    const workbook = new EditedWorkbook(bytes);
    workbook.changeSheets({ kind: "delete", id: "sheet-0" });
    const [before, now] = [parts(bytes), parts(workbook.save())];
    for (const part of ["pivotCache/pivotCacheDefinition1", "pivotTables/pivotTable1"])
      expect(now[`xl/${part}.xml`]).toBe(before[`xl/${part}.xml`]);
    expect(now["xl/worksheets/sheet2.xml"]).toContain("<xm:f>#REF!A2:A3</xm:f>");
    expect(now["xl/workbook.xml"]).toContain('activeSheetId="2"');
    expect(now["xl/workbook.xml"]).toContain('<pivotCache cacheId="1"');
  });

  test("loses a pivot table with its sheet; what it has summed stays the workbook's", () => {
    const workbook = new EditedWorkbook(pivots());
    workbook.changeSheets({ kind: "delete", id: "sheet-1" });
    const now = parts(workbook.save());
    expect(Object.keys(now).filter((name) => name.includes("pivot"))).toEqual([
      "xl/pivotCache/pivotCacheDefinition1.xml",
    ]);
    expect(now["xl/workbook.xml"]).toContain('<pivotCache cacheId="1" r:id="more1"/>');
  });

  test.each([
    ["a slicer that filters a pivot table on it", pivots(slicer('<pivotTable tabId="2" name="Sum"/>')), "sheet-1"],
    [
      "slicers that are drawn on it",
      pivots({}, relationshipXml("rId9", "slicer", "../slicers/slicer1.xml")),
      "sheet-1",
    ],
    [
      "a slicer that filters a table on it",
      shopWorkbook({ slicer: '<tableSlicerCache tableId="1" column="1"/>' }),
      "sheet-0",
    ],
  ])("keeps a sheet with %s, and says why", (_, bytes, id) => {
    const workbook = new EditedWorkbook(bytes);
    expect(workbook.refusal({ kind: "delete", id })).toMatch(/stays: slicers or timelines/);
    expect(workbook.refusal({ kind: "rename", id, name: "Other" })).toBeUndefined();
    expect(workbook.refusal({ kind: "delete", id: id === "sheet-0" ? "sheet-1" : "sheet-0" })).toBeUndefined();
  });

  test("that keeps a log of who changed what has no sheet added or deleted", () => {
    const links = { revisionHeaders: "revisions/revisionHeaders.xml" };
    const workbook = new EditedWorkbook(pivots({ links, parts: { "xl/revisions/revisionHeaders.xml": "<headers/>" } }));
    for (const edit of [{ kind: "delete", id: "sheet-0" } as const, { kind: "add", id: "new", name: "New" } as const])
      expect(workbook.refusal(edit)).toContain("keeps a log");
    expect(workbook.refusal({ kind: "rename", id: "sheet-0", name: "Other" })).toBeUndefined();
  });
});

test("changes that an older version kept, with the sheet's number, are read", () => {
  const workbook = new EditedWorkbook(shopWorkbook(), [{ sheet: 1, row: 0, column: 5, content: 7 }]);
  expect(workbook.changes).toEqual([{ sheet: "sheet-1", row: 0, column: 5, content: 7 }]);
});

const byText = (a: unknown, b: unknown): number => JSON.stringify(a).localeCompare(JSON.stringify(b));
