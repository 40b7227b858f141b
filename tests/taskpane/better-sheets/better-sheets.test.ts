import { describe, expect, test } from "vitest";
import { SHEETS } from "../../../src/functions";
import { progressOf } from "../../../src/taskpane/better-sheets/progress-of";
import type { Progress } from "../../../src/taskpane/better-sheets/progress";
import { addPlainSheet } from "../../../src/taskpane/host/office-plain-sheet";
import type { WorkbookDefinition } from "../../../src/workbook/author/index";
import { written } from "../../../src/taskpane/better-sheets/written";

const PARTS = [
  ["Part", "Length", "Width", "Qty"],
  ["=Side", 30, 20, 3],
  ["End", "17 1/2", 20, 2],
];
const STOCK = [
  ["Length", "Width", "Price"],
  [60, 48, 50],
];
type Found = Extract<Progress, { sheets: number }>;
/** All that is found of a job that a search soon proves. */
const all = (...raw: unknown[]): Progress[] => [...progressOf(raw)];

describe("progress of a search", () => {
  test("tells sheets, cost, the least possible and the layout, and ends where nothing is better", () => {
    const found = all(PARTS, STOCK);
    const last = found[found.length - 1] as Found;
    expect(last).toMatchObject({ sheets: 2, cost: 100, least: "2 sheets", proven: true, unit: "in" });
    const { layout } = found[0] as Found;
    expect(layout![0]).toEqual(expect.arrayContaining(["Sheet", "From left", "Turned"]));
    expect(layout).toHaveLength(6);
  });

  test("says in words what is wrong with the tables", () => {
    expect(all(PARTS, [STOCK[0], [10, 10, 1]])).toEqual([{ why: expect.stringMatching(/fits no sheet/) as string }]);
  });
});

describe("a layout that is written", () => {
  const found = all(PARTS, STOCK).find((one): one is Found => "layout" in one)!;
  const args = [
    { range: { address: "A5:D7", isSpilled: false } },
    { range: { sheet: "Stock's", address: "B2", isSpilled: true } },
    { value: undefined },
    { value: "1/4" },
  ];
  const rows = written(found, found.layout!, args, "Cut list");
  const formulas = rows
    .flat()
    .flatMap((cell) => (cell && typeof cell === "object" && "formula" in cell ? [cell.formula] : []));

  test("keeps a name that begins like a formula as a text, and shows lengths as fractions", () => {
    expect(rows.flat()).toContain("=Side");
    expect(formulas).toHaveLength(3);
    expect(rows.flat()).toContainEqual({ value: 17.5, format: "# ??/??" });
  });

  test("has formulas that name the sheet of each range, and take the layout for the parts", () => {
    expect(formulas[1]).toBe(`=DRAWER.SHEETS($A$5:$J$10,'Stock''s'!$B$2#,,"1/4")`);
    expect(formulas[2]).toBe(`=DRAWER.CUTS($A$5:$J$10,'Stock''s'!$B$2#,,"1/4")`);
    expect(formulas[0]).toContain(`DRAWER.LAYOUT('Cut list'!$A$5:$D$7,'Stock''s'!$B$2#,,"1/4")`);
  });

  test("is read back by SHEETS as it was found", () => {
    const table = (SHEETS as (...args: unknown[]) => unknown[][])(found.layout, STOCK);
    expect(table[1]!.slice(3, 8)).toEqual([found.sheets, expect.anything(), 5, expect.anything(), found.cost]);
  });
});

describe("a plain sheet beside those of the spreadsheet program", () => {
  test("takes a free name, keeps texts as texts, and tells what it is called", async () => {
    const added: WorkbookDefinition[] = [];
    const sheets = {
      taken: async () => ({ sheets: ["better SHEETS"], names: [] }),
      add: async (workbook: WorkbookDefinition) => void added.push(workbook),
      selected: async () => undefined,
    };
    const rows = [["=Side", "7-1", { formula: "=A1" }, null, { value: 0.5, format: "# ??/??" }]];
    expect(await addPlainSheet(sheets)("Better sheets", rows)).toBe("Better sheets 2");
    const [{ sheets: made, styles } = { sheets: [], styles: {} }] = added;
    expect(made.map(({ name }) => name)).toEqual(["Better sheets 2"]);
    const [row] = made[0]!.rows;
    expect(row!.cells.map((cell) => cell?.content)).toEqual([" =Side", "7-1", "=A1", undefined, 0.5]);
    expect(styles[row!.cells[4]!.style]).toEqual({ format: "# ??/??" });
  });
});
