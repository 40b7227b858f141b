import ExcelJS from "exceljs";
import { beforeAll, describe, expect, test } from "vitest";
import { parseCell } from "../../../src/workbook/address";
import { CellError } from "../../../src/workbook/engine/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { PARTS_BENCH, partsBenchDraft, partsBenchFile } from "../../../src/workbook/example/index";

let bytes: Uint8Array;
beforeAll(() => {
  bytes = partsBenchFile();
});

/** Every value of the sheet Drawers' row, by heading. */
function drawer(workbook: EditedWorkbook, row: number): unknown[] {
  const { results } = workbook.calculate();
  return ["A", "B", "C", "D", "F", "G", "H"].map((letter) => {
    const { column } = parseCell(`${letter}1`)!;
    const found = results.find(
      ({ sheet, area }) =>
        sheet === 1 && area.left <= column && column <= area.right && area.top <= row - 1 && row - 1 <= area.bottom,
    );
    return found!.values[row - 1 - found!.area.top]![column - found!.area.left];
  });
}

describe("the parts bench", () => {
  // Drawer, front width, front height, front bottom, box height, box width, box depth, as the worked example has them.
  test.each([
    [5, ["A1", 19, 5.5, 21.375, 4, 17, 22]],
    [6, ["A2", 19, 10.9375, 10.3125, 9.5, 17, 22]],
    [7, ["A3", 19, 10.9375, -0.75, 9.5, 17, 22]],
    [13, ["B1", 24.625, 9.125, 17.75, 7.5, 23, 22]],
    [14, ["B2", 24.625, 9.125, 8.5, 7.5, 23, 22]],
    [15, ["B3", 24.625, 9.125, -0.75, 7.5, 23, 22]],
    [21, ["C1", 31, 9.125, 17.75, 7.75, 29, 22]],
    [22, ["C2", 31, 18.375, -0.75, 16.75, 29, 22]],
  ])("has in row %i of the drawers %j", (row, expected) => {
    expect(drawer(new EditedWorkbook(bytes), row)).toEqual(expected);
  });

  test("holds no error and no formula that is not worked out", () => {
    const { results, kept } = new EditedWorkbook(bytes).calculate();
    expect(kept).toEqual([]);
    expect(results.flatMap(({ values }) => values.flat()).filter((value) => value instanceof CellError)).toEqual([]);
  });

  test.each([1, 2, 3, 4, 5, 6])("follows when opening B gets %i drawers: fronts and gaps fill the face", (count) => {
    const workbook = new EditedWorkbook(bytes);
    workbook.put({ sheet: 0, row: 9, column: 2, content: count });
    const { results } = workbook.calculate();
    const heights = Array.from({ length: 6 }, (_, i) => drawer(workbook, 13 + i)[2]).filter(
      (height) => typeof height === "number",
    );
    expect(heights).toHaveLength(count);
    expect(heights.reduce((sum, height) => sum + height, 0) + (count - 1) / 8).toBeCloseTo(27.625, 12);
    const said = results.find(({ sheet, row, column }) => sheet === 1 && row === 12 && column === 8)!;
    expect(said.values).toEqual([["Fronts and gaps fill the face."]]);
    expect(results.flatMap(({ values }) => values.flat()).filter((value) => value instanceof CellError)).toEqual([]);
  });

  test("marks every cell that is meant to be typed into, and no formula but those that offer the bench's own values", () => {
    for (const { name, rows } of PARTS_BENCH.sheets) {
      for (const cell of rows.flatMap(({ cells }) => cells)) {
        if (!cell || cell.content === null) continue;
        const isFormula = typeof cell.content === "string" && cell.content.startsWith("=");
        if (cell.style.startsWith("input") && isFormula) {
          expect(["What if", "Price grid"]).toContain(name);
          expect(cell.content).toMatch(/^=(Bench!\$?[A-D]|Job!\$[A-L])\$?\d+$/);
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
      ...["Bench", "Drawers", "What if", "Saw", "Plan", "Cut list", "Sheets", "Cuts", "Hardware", "Mounting"],
      ...["Checks", "Workings", "Job", "Prices", "Quote", "Client quote", "Price grid", "Alternates"],
    ]);
    const bench = read.getWorksheet("Bench")!;
    expect(bench.getCell("B29").result).toBe(17);
    expect(bench.getCell("B29").numFmt).toBe("# ??/??");
    expect(bench.getCell("B7").fill).toMatchObject({ fgColor: { argb: "FFFBF1DC" } });
  });

  test("plans the whole cabinet with the functions of tables, and agrees with its own single sums", async () => {
    const read = new ExcelJS.Workbook();
    await read.xlsx.load(Buffer.from(bytes) as never);
    const value = (sheet: string, address: string): unknown => {
      const { value: found } = read.getWorksheet(sheet)!.getCell(address);
      return typeof found === "object" && found !== null && "result" in found ? found.result : found;
    };
    // Plan and Drawers, row by row: front width, height and lower edge, box height, width and depth.
    const pairs = [
      ["C", "B"],
      ["D", "C"],
      ["E", "D"],
      ["G", "F"],
      ["F", "G"],
      ["H", "H"],
    ] as const;
    const rows = [5, 6, 7, 13, 14, 15, 21, 22];
    rows.forEach((row, i) => {
      for (const [plan, drawers] of pairs) {
        expect(value("Plan", `${plan}${6 + i}`), `${plan}${6 + i}`).toBe(value("Drawers", `${drawers}${row}`));
      }
    });
    expect(value("Cut list", "A6")).toBe("Side");
    expect(value("Checks", "B6")).toBe("doubtful");
    expect(value("Workings", "A6")).toBe("Opening width");
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
    const { results } = new EditedWorkbook(bytes).calculate();
    const table = (name: string, row = 4): unknown[][] => {
      const sheet = PARTS_BENCH.sheets.findIndex((one) => one.name === name);
      return results.find((found) => found.sheet === sheet && found.row === row && found.column === 0)!.values.slice(1);
    };
    const quoted = table("Quote", 8).filter(([section, item]) => section === "Sheets" && item !== "Subtotal");
    expect(table("Sheets").map((row) => [row[3], row[7]])).toEqual(quoted.map((row) => [row[2], row[5]]));
    const pieces = table("Cut list").reduce((sum, row) => sum + (row[2] as number), 0);
    const layout = table("Sheets", 18);
    expect(layout).toHaveLength(pieces);
    const bought = table("Sheets").reduce((sum, row) => sum + (row[3] as number), 0);
    for (const rows of [layout, table("Cuts")]) expect(new Set(rows.map(([sheet]) => sheet)).size).toBe(bought);
    expect(table("Hardware")[0]!.slice(0, 3)).toEqual(["Side-mount slide", 22, 6]);
    expect(table("Mounting").map(([drawer]) => drawer)).toEqual(table("Plan").map(([drawer]) => drawer));
  });

  test("is the same file where it is opened before anybody has worked it out, and saved", () => {
    const draft = new EditedWorkbook(partsBenchDraft());
    expect(Buffer.compare(draft.save(), bytes)).toBe(0);
  });

  test("is the same file every time", () => {
    expect(Buffer.compare(partsBenchFile(), bytes)).toBe(0);
  });
});
