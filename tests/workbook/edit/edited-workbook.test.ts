import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { writeWorkbook, type SheetDefinition } from "../../../src/workbook/author/index";
import { EditedWorkbook, FRACTION_FORMAT, type Content } from "../../../src/workbook/edit/index";
import { parseCell } from "../../../src/workbook/address";
import { CellError } from "../../../src/workbook/engine/index";
import { recalculate } from "../../../src/workbook/edit/recalculate";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";

type Row = (string | number | null)[];

/** A file of one sheet, worked out. */
function file(...rows: Row[]): Uint8Array {
  const sheet: SheetDefinition = {
    name: "Job",
    widths: [10],
    rows: rows.map((row) => ({ cells: row.map((content) => (content === null ? null : { style: "plain", content })) })),
    merged: [],
    selected: "A1",
  };
  return recalculate(writeWorkbook({ styles: { plain: {} }, sheets: [sheet] }), { functions: OWN_FUNCTIONS }).bytes;
}

const put = (workbook: EditedWorkbook, cell: string, content: Content, format?: string): boolean =>
  workbook.put({ sheet: 0, ...parseCell(cell)!, content, ...(format === undefined ? {} : { format }) });

/** What the formula in a cell comes to, cell by cell. */
function result(workbook: EditedWorkbook, cell: string): unknown {
  const { row, column } = parseCell(cell)!;
  const found = workbook.calculate().results.find((one) => one.row === row && one.column === column);
  const values = found!.values.map((line) => line.map((value) => (value instanceof CellError ? value.code : value)));
  return values.length === 1 && values[0]!.length === 1 ? values[0]![0] : values;
}

const part = (bytes: Uint8Array, name: string): string => new TextDecoder().decode(unzipSync(bytes)[name]);
const SHEET = "xl/worksheets/sheet1.xml";

describe("a workbook that is edited", () => {
  test("works out what follows, in memory and in the file", () => {
    const workbook = new EditedWorkbook(file([24, "=DRAWER.BOXWIDTH(A1)", "=B1+1"]));
    expect(put(workbook, "A1", 30)).toBe(true);
    expect([result(workbook, "B1"), result(workbook, "C1")]).toEqual([29, 30]);
    const again = new EditedWorkbook(workbook.save());
    expect(again.changes).toEqual([]);
    expect([again.content(0, 0, 0), result(again, "B1")]).toEqual([30, 29]);
    expect(part(workbook.save(), SHEET)).toContain("<v>29</v>");
  });

  test("knows no change where the old content is typed, or comes back", () => {
    const workbook = new EditedWorkbook(file([24, "=DRAWER.BOXWIDTH(A1)"]));
    expect(put(workbook, "A1", 24)).toBe(false);
    put(workbook, "B1", null);
    put(workbook, "B1", { formula: "=DRAWER.BOXWIDTH(A1)" });
    expect(workbook.changes).toEqual([]);
    expect(result(workbook, "B1")).toBe(23);
  });

  test("without a change is saved as the bytes that it was opened from", () => {
    const bytes = file([24, "=DRAWER.BOXWIDTH(A1)"]);
    expect(new EditedWorkbook(bytes).save()).toBe(bytes);
  });

  test("takes texts, truths and formulas, and empties cells", () => {
    const workbook = new EditedWorkbook(file([24, "old", 3]));
    put(workbook, "A1", "a <b> & \u0007 c");
    put(workbook, "B1", true);
    put(workbook, "C1", null);
    put(workbook, "D3", { formula: '=IF(B1,"yes","no")' });
    const again = new EditedWorkbook(workbook.save());
    expect([again.content(0, 0, 0), again.content(0, 0, 1), again.content(0, 0, 2)]).toEqual([
      "a <b> & \u0007 c",
      true,
      null,
    ]);
    expect(result(again, "D3")).toBe("yes");
  });

  test("spills, shrinks and is blocked by what is typed into a spilled cell", () => {
    const bytes = file(["1 part; 2 parts", '=DRAWER.FRONTHEIGHTS(27.5,A1,"0 in")'], [null, null], [null, null]);
    const workbook = new EditedWorkbook(bytes);
    expect(workbook.content(0, 1, 1)).toBeNull();
    put(workbook, "B2", "in the way");
    expect(result(workbook, "B1")).toBe("#SPILL!");
    const blocked = new EditedWorkbook(workbook.save());
    expect([result(blocked, "B1"), blocked.content(0, 1, 1)]).toEqual(["#SPILL!", "in the way"]);
    put(blocked, "B2", null);
    put(blocked, "A1", 3);
    expect(result(blocked, "B1")).toHaveLength(3);
    expect(part(blocked.save(), SHEET)).toContain('ref="B1:B3"');
    expect(part(workbook.save(), SHEET)).not.toContain('ref="B1:B2"');
  });

  test("stores a typed fraction with a fraction format, in the style that the cell has", () => {
    const workbook = new EditedWorkbook(file([24]));
    put(workbook, "A1", 23.4375, FRACTION_FORMAT);
    put(workbook, "C5", 0.4375, FRACTION_FORMAT);
    const saved = workbook.save();
    const styles = part(saved, "xl/styles.xml");
    const numbers = [...part(saved, SHEET).matchAll(/<c r="(?:A1|C5)"[^>]* s="(\d+)"/g)].map(([, s]) => Number(s));
    const list = [...styles.slice(styles.indexOf("<cellXfs")).matchAll(/<xf [^>]*>/g)].map(([tag]) => tag);
    expect(numbers).toHaveLength(2);
    for (const number of numbers) expect(list[number]).toContain('numFmtId="13"');
    expect(styles).toContain(`<cellXfs count="${list.filter((tag) => tag.includes("xfId")).length}"`);
  });

  test("keeps what it cannot work out, and says so", () => {
    const workbook = new EditedWorkbook(file([24]));
    put(workbook, "B1", { formula: "=NOSUCH(A1)" });
    const { kept } = workbook.calculate();
    expect(kept).toMatchObject([{ row: 0, column: 1, functions: ["NOSUCH"] }]);
    expect(workbook.storedValue(0, 0, 1)).toEqual(new CellError("#NAME?"));
  });

  test("tells a length in inches from a yield that is the same number", () => {
    const workbook = new EditedWorkbook(
      file(
        ["Length", "Width", "Qty", "Length", "Width"],
        [48, 48, 1, 96, 48],
        ["=DRAWER.BOXWIDTH(1.5)", '=DRAWER.BOXWIDTH(412,"side-mount","mm")'],
        ["=DRAWER.SHEETS(A1:C2,D1:E2)"],
      ),
    );
    const found = workbook.calculate().results.map(({ values, formats }) => [values.at(-1), formats?.at(-1)]);
    expect(found[0]).toEqual([[0.5], [FRACTION_FORMAT]]);
    expect(found[1]).toEqual([[386.6], undefined]);
    const [yields, shown] = [found[2]![0] as unknown[], found[2]![1]];
    expect(yields).toContain(0.5);
    expect(shown?.[yields.indexOf(0.5)]).toBeUndefined();
  });

  test("hands the format of what was typed as a fraction on to the formula that shows it", () => {
    const workbook = new EditedWorkbook(file([24, "=A1", "=A1*1"]));
    put(workbook, "A1", 7 / 16, FRACTION_FORMAT);
    expect(workbook.calculate().results.map(({ formats }) => formats)).toEqual([[[FRACTION_FORMAT]], undefined]);
  });
});
