import ExcelJS from "exceljs";
import { describe, expect, test } from "vitest";
import { addSheets, writeWorkbook, type WorkbookDefinition } from "../../../src/workbook/author/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { partsBenchDraft } from "../support/parts-bench";
import { readLook } from "../../../src/workbook/look/index";
import { beside, DEFAULT_CHOICES, newJob } from "../../../src/workbook/new-job/index";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { handmade, sheetXml } from "../support/handmade";

const JOB = newJob(DEFAULT_CHOICES.mm);

/** A file by another hand: an invented baker's list, with styles, a rule about looks and a name of its own. */
async function bakersFile(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet("Trays & racks");
  sheet.addRow(["Rack", "W"]).font = { bold: true };
  sheet.addRow(["North", 405.5]).getCell(2).numFmt = '0.0" mm"';
  sheet.addConditionalFormatting({
    ref: "B2",
    rules: [{ type: "expression", priority: 1, formulae: ["B2>400"], style: { font: { bold: true } } }],
  });
  book.definedNames.add("'Trays & racks'!$B$2", "north");
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** A file without styles, names or spilled formulas. */
const bare = (): Uint8Array =>
  handmade({ sheets: [{ name: "One", xml: sheetXml('<row r="1"><c r="A1"><v>7</v></c></row>') }] });

const FILES: [string, () => Promise<Uint8Array> | Uint8Array][] = [
  ["the example", partsBenchDraft],
  ["a file by another hand", bakersFile],
  ["a file without styles", bare],
];

/** How each cell of a sheet looks, with the sheet's sizes and rules. */
function looksOf(bytes: Uint8Array, from: number) {
  const { styles, sheets, conditions } = readLook(openWorkbook(bytes));
  return sheets.slice(from).map((sheet, i) => ({
    cells: [...sheet!.cells].map(([at, style]) => [at, styles[style]]),
    ...{ columns: [...sheet!.columns], frozen: sheet!.frozen, gridlines: sheet!.gridlines },
    conditions: conditions[from + i],
  }));
}

const resultsOf = (bytes: Uint8Array, from: number) =>
  new EditedWorkbook(bytes)
    .calculate()
    .results.filter(({ sheet }) => sheet >= from)
    .map(({ sheet, values, ...rest }) => [sheet - from, rest.row, rest.column, values]);

describe.each(FILES)("sheets added to %s", (_, make) => {
  test("look and come out as in a workbook of their own, and leave every byte of the sheets that were there", async () => {
    const before = await make();
    const opened = openWorkbook(before);
    const count = opened.workbook.sheets.length;
    const names = opened.workbook.names.map(({ name }) => name);
    const added: WorkbookDefinition = beside(JOB, { sheets: opened.workbook.sheets.map(({ name }) => name), names });
    const after = addSheets(before, added);
    const now = openWorkbook(after);
    expect(now.workbook.sheets.map(({ name }) => name)).toEqual([
      ...opened.workbook.sheets.map(({ name }) => name),
      ...added.sheets.map(({ name }) => name),
    ]);
    for (const { part } of opened.workbook.sheets) expect(now.source.text(part)).toBe(opened.source.text(part));
    expect(looksOf(after, 0).slice(0, count)).toEqual(looksOf(before, 0));
    expect(looksOf(after, count)).toEqual(looksOf(writeWorkbook(added), 0));
    const own = now.workbook.names.filter(({ sheet }) => sheet === undefined).map(({ name }) => name);
    expect(own).toEqual([
      ...opened.workbook.names.flatMap(({ name, sheet }) => (sheet === undefined ? [name] : [])),
      ...Object.keys(added.names!),
    ]);
    const titles = now.workbook.names.filter(({ name, sheet }) => name === "_xlnm.Print_Titles" && sheet! >= count);
    expect(titles.length).toBeGreaterThan(5);
    for (const { text, sheet } of titles)
      expect(text.replaceAll("'", "")).toMatch(new RegExp(`^${now.workbook.sheets[sheet!]!.name}!\\$`));
    // The example's own results take long, and are told elsewhere.
    if (make !== partsBenchDraft) expect(resultsOf(after, count)).toEqual(resultsOf(writeWorkbook(added), 0));
    // Another library opens it.
    const read = new ExcelJS.Workbook();
    await read.xlsx.load(after as unknown as ExcelJS.Buffer);
    expect(read.worksheets.map(({ name }) => name)).toEqual(now.workbook.sheets.map(({ name }) => name));
  });
});
