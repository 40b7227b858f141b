import { posix } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { SaxesParser } from "saxes";
import { beforeAll, describe, expect, test } from "vitest";
import { partsBenchDraft, partsBenchFile } from "../support/parts-bench";

type Files = Record<string, Uint8Array>;
interface Tag {
  name: string;
  parent: string;
  attributes: Record<string, string>;
}

const CONTENT_TYPES = "[Content_Types].xml";

/** The elements of a part in their order, each with its parent; a part that is no XML throws. */
function tags(files: Files, part: string): Tag[] {
  const found: Tag[] = [];
  const open: string[] = [];
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw new Error(`${part}: ${error.message}`);
  });
  parser.on("opentag", ({ name, attributes }) => {
    found.push({ name, parent: open.at(-1) ?? "", attributes });
    open.push(name);
  });
  parser.on("closetag", () => void open.pop());
  parser.write(strFromU8(files[part]!)).close();
  return found;
}

const named = (files: Files, part: string, name: string) => tags(files, part).filter((tag) => tag.name === name);

/** The relationships of a part, or of the package, that lead to other parts. */
function targets(files: Files, rels: string): { id: string; target: string }[] {
  const source = posix.join(posix.dirname(rels), "..");
  return named(files, rels, "Relationship")
    .filter(({ attributes }) => attributes.TargetMode !== "External")
    .map(({ attributes: { Id, Target } }) => ({
      id: Id!,
      target: Target!.startsWith("/") ? Target!.slice(1) : posix.join(source, Target!),
    }));
}

// The order in CT_Worksheet, CT_Workbook and CT_Stylesheet of ISO/IEC 29500-1, as far as these parts have them.
const ORDER: Record<string, string> = {
  worksheet:
    "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing picture oleObjects controls webPublishItems tableParts extLst",
  workbook:
    "fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences definedNames calcPr oleSize customWorkbookViews pivotCaches extLst",
  styleSheet: "numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst",
};

describe.each<[string, () => Uint8Array]>([
  ["the workbook as it is authored", partsBenchDraft],
  ["the same after it was recalculated", partsBenchFile],
])("%s", (_, make) => {
  let files: Files;
  let sheets: string[];
  beforeAll(() => {
    files = unzipSync(make());
    sheets = Object.keys(files).filter((name) => /^xl\/worksheets\/[^/]+\.xml$/.test(name));
  });
  const rels = () => Object.keys(files).filter((name) => name.endsWith(".rels"));

  test("gives every part a content type of its own, and no part that is not there", () => {
    // The default of "xml" says no more than that, so that only relationships may do with a default.
    const extensions = named(files, CONTENT_TYPES, "Default").map(({ attributes }) => attributes.Extension);
    const overridden = named(files, CONTENT_TYPES, "Override").map(({ attributes }) => attributes.PartName!.slice(1));
    expect(extensions.sort()).toEqual(["rels", "xml"]);
    const untyped = Object.keys(files).filter(
      (name) => name !== CONTENT_TYPES && !overridden.includes(name) && !name.endsWith(".rels"),
    );
    expect(untyped).toEqual([]);
    expect(overridden.filter((name) => !(name in files))).toEqual([]);
    expect(new Set(overridden).size).toBe(overridden.length);
  });

  test("has relationships that lead to parts, each by an id of its own, and reaches every part by one", () => {
    const all = rels().flatMap((name) => {
      const found = targets(files, name);
      expect(new Set(found.map(({ id }) => id)).size, name).toBe(found.length);
      return found.map(({ target }) => target);
    });
    expect(all.filter((target) => !(target in files))).toEqual([]);
    const parts = Object.keys(files).filter((name) => name !== CONTENT_TYPES && !name.endsWith(".rels"));
    expect(parts.filter((name) => !all.includes(name))).toEqual([]);
  });

  test("uses no relationship that it does not have", () => {
    for (const name of rels()) {
      const source = posix.join(posix.dirname(name), "..", posix.basename(name, ".rels"));
      if (!(source in files)) continue;
      const ids = targets(files, name).map(({ id }) => id);
      const used = tags(files, source).flatMap(({ attributes }) => attributes["r:id"] ?? []);
      expect(
        used.filter((id) => !ids.includes(id)),
        source,
      ).toEqual([]);
    }
  });

  test("has the elements of sheets, workbook and styles in the order of the standard", () => {
    for (const part of [...sheets, "xl/workbook.xml", "xl/styles.xml"]) {
      const all = tags(files, part);
      const root = all[0]!.name;
      const places = all
        .filter(({ parent }) => parent === root)
        .map(({ name }) => ORDER[root]!.split(" ").indexOf(name));
      expect(places, part).not.toContain(-1);
      expect(places, part).toEqual([...places].sort((a, b) => a - b));
    }
  });

  test("has rows and cells in rising order, with styles, types and dynamic marks that there are", () => {
    const styles = tags(files, "xl/styles.xml").filter(
      ({ name, parent }) => name === "xf" && parent === "cellXfs",
    ).length;
    const marks = named(files, "xl/metadata.xml", "cellMetadata")[0]!.attributes.count;
    for (const part of sheets) {
      const rows = named(files, part, "row").map(({ attributes }) => Number(attributes.r));
      expect(rows, part).toEqual([...new Set(rows)].sort((a, b) => a - b));
      const cells = named(files, part, "c").map(({ attributes }) => attributes);
      expect(cells.length).toBeGreaterThan(0);
      const places = cells.map(({ r }) => place(r!));
      expect(places, part).toEqual([...new Set(places)].sort((a, b) => a - b));
      for (const { r, s = "0", t = "n", cm = "1" } of cells) {
        expect(Number(s), `${part} ${r}`).toBeLessThan(styles);
        expect(["b", "d", "e", "inlineStr", "n", "s", "str"], `${part} ${r}`).toContain(t);
        expect(Number(cm), `${part} ${r}`).toBeLessThanOrEqual(Number(marks));
      }
    }
  });
});

/** A cell's place in reading order, from its name. */
function place(name: string): number {
  const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(name)!;
  const column = [...letters!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return Number(row) * 20_000 + column;
}
