import { describe, expect, test } from "vitest";
import type { RangeName, Ranges, ShownBy } from "../../../src/taskpane/host/host";
import { PictureFollower } from "../../../src/taskpane/drawing/follower";
import { LAYOUT, PARTS, PLAN } from "../../../src/functions";

const OPENINGS = [
  ["Opening", "Width", "Height", "Depth", "Drawers"],
  ["A", 18, 26.25, 23.25, 3],
  ["", "", "", "", ""],
  ["B", 24, 26.25, 5, 1],
  ["C", 33, 26.25, 23.25, 2],
];
const STOCK = [
  ["Thickness", "Length", "Width"],
  [0.25, 97, 49],
  [0.5, 97, 49],
  [0.75, 97, 49],
];
const WELL = OPENINGS.filter(([label]) => label !== "B");
const TABLES: Record<string, unknown[][]> = {
  "Job A5:E9": OPENINGS,
  "Job A15:E18": WELL,
  "Job G5": [[7]],
  "Plan P1#": PARTS(WELL) as unknown[][],
  "Prices A1:C4": STOCK,
};

/** A workbook of some tables, in which one cell is selected that a formula shows. */
class Tables implements Ranges {
  shown: ShownBy | undefined;
  async shownBy() {
    return this.shown;
  }
  async values({ sheet, address, isSpilled }: RangeName & { sheet: string }) {
    return TABLES[`${sheet} ${address}${isSpilled ? "#" : ""}`];
  }
  async select() {
    return true;
  }
  show(formula: string, row = 0): void {
    this.shown = { formula, sheet: "Plan", row, column: 0 };
  }
}

const tables = new Tables();
const follower = new PictureFollower(tables);
const titles = async (address = "Plan!A1"): Promise<string | readonly string[] | undefined> => {
  const picture = await follower.at(address);
  return picture && ("why" in picture ? picture.why : picture.drawings.map(({ title }) => title));
};

describe("what is drawn for the selected cell", () => {
  test("of every row of PLAN it is the opening that the row names, and its drawer cut through both ways", async () => {
    const [, ...rows] = PLAN(OPENINGS as never) as unknown[][];
    for (const [i, [, opening]] of rows.entries()) {
      tables.show("=DRAWER.PLAN(Job!A5:E9)", i + 1);
      if (opening === "B") expect(await titles()).toMatch(/^Opening B: /);
      else expect((await titles())![0]).toBe(`Front elevation of ${String(opening)}`);
    }
    tables.show("=DRAWER.PLAN(Job!A5:E9)", 2);
    expect(await titles()).toEqual(["Front elevation of A", "Section through A2", "Cross section of A2"]);
    tables.show("=DRAWER.PLAN(Job!A5:E9)", 0);
    expect((await titles())![0]).toBe("Front elevation of A");
  });

  test("of every row of LAYOUT it is the sheet that the row names", async () => {
    const [, ...rows] = LAYOUT(
      PARTS(WELL) as never,
      STOCK as never,
      undefined,
      undefined,
      "quick" as never,
    ) as unknown[][];
    for (const [i, [sheet]] of rows.entries()) {
      tables.show('=DRAWER.LAYOUT(P1#,Prices!A1:C4,,,"quick")', i + 1);
      expect(await titles()).toEqual([`Layout of sheet ${String(sheet)}`]);
    }
    expect(new Set(rows.map(([sheet]) => sheet)).size).toBeGreaterThan(2);
  });

  test("in the openings of the plan that was shown last it is the cell's own opening, and nowhere else anything", async () => {
    tables.show("=DRAWER.MOUNTING(Job!A5:E9,)", 1);
    await titles();
    tables.shown = undefined;
    expect(await titles("Job!B6")).toEqual(["Front elevation of A"]);
    expect((await titles("Job!E9"))![0]).toBe("Front elevation of C");
    expect(await titles("Job!A8")).toMatch(/^Opening B: /);
    expect((await titles("Job!C5"))![0]).toBe("Front elevation of A");
    for (const other of ["Job!F6", "Job!A4", "Job!A10", "Other!A6"]) expect(await titles(other)).toBeUndefined();
  });

  test("is said where tables cannot be read, and nothing where the formula is none of these", async () => {
    tables.show("=DRAWER.PLAN(VSTACK(Job!A5:E9,Job!A5:E9))");
    expect(await titles()).toContain("this call takes VSTACK(Job!A5:E9,Job!A5:E9)");
    tables.show("=DRAWER.PLAN(Gone!A5:E9)");
    expect(await titles()).toBe("Nothing is drawn: A5:E9 holds nothing that could be read.");
    tables.show("=DRAWER.PLAN(Job!G5)");
    expect(await titles()).toMatch(/openings/);
    tables.show("=SUM(Job!A5:E9)");
    tables.shown!.sheet = "Sums";
    expect(await titles("Sums!A1")).toBeUndefined();
  });
});
