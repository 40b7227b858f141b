import ExcelJS from "exceljs";
import { beforeAll, describe, expect, test } from "vitest";
import { parseLength, toDouble } from "../../../src/core/length/index";
import { parseCell } from "../../../src/workbook/address";
import { CellError } from "../../../src/workbook/engine/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { PARTS_BENCH as WORKED } from "../../worked/plans";
import { openingCell } from "../support/bench-places";
import { PARTS_BENCH, partsBenchDraft, partsBenchFile } from "../support/parts-bench";

let bytes: Uint8Array;
beforeAll(() => {
  bytes = partsBenchFile();
});

/** The table that a sheet's formula gives, headings first. */
function table(workbook: EditedWorkbook, name: string): unknown[][] {
  const sheet = PARTS_BENCH.sheets.findIndex((one) => one.name === name);
  return workbook.calculate().results.find((one) => one.sheet === sheet && one.row === 4 && one.column === 0)!.values;
}

describe("the parts bench", () => {
  test("plans every drawer as the worked example has it", () => {
    const [, ...drawers] = table(new EditedWorkbook(bytes), "Plan");
    const size = (text: string): number => toDouble(parseLength(text, "in"));
    expect(drawers.map(([label, , ...sizes]) => [label, ...sizes])).toEqual(
      WORKED.plan.map((line) => {
        const [label, ...sizes] = line.split(" | ");
        return [label, ...sizes.map(size)];
      }),
    );
  });

  test("holds no error and no formula that is not worked out", () => {
    const { results, kept } = new EditedWorkbook(bytes).calculate();
    expect(kept).toEqual([]);
    expect(results.flatMap(({ values }) => values.flat()).filter((value) => value instanceof CellError)).toEqual([]);
  });

  test.each([1, 2, 3, 4, 5, 6])("follows when opening B gets %i drawers: fronts and gaps fill the face", (count) => {
    const workbook = new EditedWorkbook(bytes);
    const { row, column } = parseCell(openingCell("B", "Drawers"))!;
    workbook.put({ sheet: 0, row, column, content: count });
    const [headings, ...drawers] = table(workbook, "Plan");
    const heights = drawers
      .filter(([, opening]) => opening === "B")
      .map((drawer) => drawer[headings!.indexOf("Front height")] as number);
    expect(heights).toHaveLength(count);
    expect(heights.reduce((sum, height) => sum + height, 0) + (count - 1) / 8).toBeCloseTo(27.625, 12);
    const { results } = workbook.calculate();
    expect(results.flatMap(({ values }) => values.flat()).filter((value) => value instanceof CellError)).toEqual([]);
  });

  test("says beside the openings what comes of them: drawers, findings and the quote's total", () => {
    const workbook = new EditedWorkbook(bytes);
    const [total, levels] = [
      table(workbook, "Quote").at(-1)!.at(-1),
      table(workbook, "Checks").map(([, level]) => level),
    ];
    const said = workbook.calculate().results.find(({ sheet, row }) => sheet === 0 && row === 3)!;
    const doubtful = levels.filter((level) => level === "doubtful").length;
    const money = (total as number).toLocaleString("en", { minimumFractionDigits: 2 });
    expect(said.values).toEqual([[`Planned: 8 drawers. Checks: 0 wrong, ${doubtful} doubtful. Total: ${money}.`]]);
  });

  test("marks every cell that is meant to be typed into, and no formula but those that offer the bench's own values", () => {
    for (const { name, rows } of PARTS_BENCH.sheets) {
      for (const cell of rows.flatMap(({ cells }) => cells)) {
        if (!cell || cell.content === null) continue;
        const isFormula = typeof cell.content === "string" && cell.content.startsWith("=");
        if (cell.style.startsWith("input") && isFormula) {
          expect(["What if", "Price grid", "Workings"]).toContain(name);
          expect(cell.content).toMatch(/Job!\$|Plan!\$|^=\$B\$4$/);
        }
        if (typeof cell.content === "number") expect(cell.style).toMatch(/^input/);
      }
    }
  });

  test("is a file that others read: its sheets, values and formulas", async () => {
    const read = new ExcelJS.Workbook();
    await read.xlsx.load(Buffer.from(bytes) as never);
    expect(read.worksheets.map(({ name }) => name)).toEqual(PARTS_BENCH.sheets.map(({ name }) => name));
    expect(read.worksheets.map(({ name }) => name)).toEqual([
      ...["Job", "Plan", "Checks", "Prices", "Cut list", "Set-ups", "Hardware", "Mounting", "Fit", "Sheets", "Layout"],
      ...["Cuts", "Quote", "Client quote", "Price grid", "Alternates", "What if", "One box", "Workings"],
    ]);
    const plan = read.getWorksheet("Plan")!;
    expect(plan.getCell("F6").value).toBe(17);
    expect(plan.getCell("D6").value).toBe(5.5);
    const job = read.getWorksheet("Job")!;
    expect(job.getCell(openingCell("A", "Width")).numFmt).toBe("@");
    expect(job.getCell(openingCell("A", "Width")).fill).toMatchObject({ fgColor: { argb: "FFFBF1DC" } });
    expect(read.getWorksheet("Cut list")!.getCell("A6").value).toBe("Side");
    expect(read.getWorksheet("Checks")!.getCell("B6").value).toBe("doubtful");
    expect(read.getWorksheet("Workings")!.getCell("A6").value).toBe("Opening width");
  });

  test("shows sizes that no tape has with decimals, not as fractions that it has not", () => {
    const { results } = new EditedWorkbook(bytes).calculate();
    for (const name of ["Hardware", "Workings"]) {
      const sheet = PARTS_BENCH.sheets.findIndex((one) => one.name === name);
      const { values, formats } = results.find((found) => found.sheet === sheet && found.values.length > 5)!;
      const odd = values.flatMap((row, i) =>
        typeof row[1] === "number" && !Number.isInteger(row[1] * 64) ? [formats![i]![1]] : [],
      );
      expect(odd.length).toBeGreaterThan(0);
      for (const format of odd) expect(format ?? "General").toMatch(/^(General|0\.000)$/);
      const { style } = PARTS_BENCH.sheets[sheet]!.rows.at(-1)!.cells[1]!;
      expect(PARTS_BENCH.styles[style]!.format).toBeUndefined();
    }
  });

  test("buys the sheets that it quotes, lays every piece of the cut list on one, and cuts each out", () => {
    const workbook = new EditedWorkbook(bytes);
    const rows = (name: string): unknown[][] => table(workbook, name).slice(1);
    const quoted = rows("Quote").filter(([section, item]) => section === "Sheets" && item !== "Subtotal");
    expect(rows("Sheets").map((row) => [row[3], row[7]])).toEqual(quoted.map((row) => [row[2], row[5]]));
    const pieces = rows("Cut list").reduce((sum, row) => sum + (row[2] as number), 0);
    expect(rows("Layout")).toHaveLength(pieces);
    const bought = rows("Sheets").reduce((sum, row) => sum + (row[3] as number), 0);
    for (const name of ["Layout", "Cuts"]) expect(new Set(rows(name).map(([sheet]) => sheet)).size).toBe(bought);
    expect(rows("Hardware")[0]!.slice(0, 3)).toEqual(["Side-mount slide", 22, 6]);
    expect(rows("Mounting").map(([drawer]) => drawer)).toEqual(rows("Plan").map(([drawer]) => drawer));
  });

  test("is the same file where it is opened before anybody has worked it out, and saved", () => {
    const draft = new EditedWorkbook(partsBenchDraft());
    expect(Buffer.compare(draft.save(), bytes)).toBe(0);
  });

  test("is the same file every time", () => {
    expect(Buffer.compare(partsBenchFile(), bytes)).toBe(0);
  });
});
