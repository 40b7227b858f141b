import { describe, expect, test } from "vitest";
import { FindingsFollower } from "../../../src/taskpane/findings/follower";
import { CHECKS } from "../../../src/functions";
import type { RangeName, Ranges } from "../../../src/taskpane/host/host";

const OPENINGS = [
  ["Opening", "Width", "Height", "Depth", "Drawers", "Front gap"],
  ["A", "18; 18 1/4", 26.25, 23.25, 3, ""],
  ["", "", "", "", "", ""],
  ["B", 24, 26.25, 9, 1, ""],
  ["C", 24, 26.25, 23.25, 2, "1/32"],
  ["D", 24, "about two feet", 23.25, 2, ""],
];
const STANDARDS = [
  ["side thickness", "1/2"],
  ["groove depth", "3/8"],
];
const STOCK = [
  ["Material", "Thickness", "Length", "Width", "Price"],
  ["Plywood", 0.5, 97, 49, 60],
];
const RATES = [
  ["labor rate", 50],
  ["markup", 10],
  ["margin", 20],
];
const TABLES: Record<string, unknown[][]> = {
  "Job A5:F10": OPENINGS,
  "Job H5:I6": STANDARDS,
  "Prices A1:E2": STOCK,
  "Prices A5:B7": RATES,
};

const FORMULA = "=DRAWER.CHECKS(A5:F10,H5:I6,Prices!A1:E2,Prices!A5:B7)";

/** A workbook of these tables, in which one cell is selected. */
class Workbook implements Ranges {
  formula: string | undefined = FORMULA;
  async shownBy() {
    return this.formula === undefined ? undefined : { formula: this.formula, sheet: "Job", row: 1, column: 0 };
  }
  async values({ sheet, address }: RangeName & { sheet: string }) {
    return TABLES[`${sheet} ${address}`];
  }
  async select() {
    return true;
  }
}

const foundBy = async (follower: FindingsFollower) => {
  const findings = await follower.at();
  if (!findings || "why" in findings) throw new Error(findings?.why ?? "nothing was looked at");
  return findings.found;
};

describe("the findings of a job", () => {
  test("are those that CHECKS gives, in its words and its order", async () => {
    const found = await foundBy(new FindingsFollower(new Workbook()));
    const [, ...rows] = CHECKS(OPENINGS, STANDARDS, STOCK, RATES) as string[][];
    expect(found.map(({ where, level, finding, remedy }) => [where, level, finding, remedy])).toEqual(rows);
    expect(rows.length).toBeGreaterThan(6);
  });

  test("each know the cell at fault: a size, a row's own standard, a standard's value, an unread cell, stock, a rate", async () => {
    const found = await foundBy(new FindingsFollower(new Workbook()));
    const cellOf = (words: RegExp) => {
      const { cell } = found.find(({ finding }) => words.test(finding))!;
      return cell && `${cell.sheet}!${cell.address}`;
    };
    expect(cellOf(/^The width is measured from/)).toBe("Job!B6");
    expect(cellOf(/No slide fits/)).toBe("Job!D8");
    expect(cellOf(/gap of 1\/32/)).toBe("Job!F9");
    expect(cellOf(/groove, 3\/8 in deep/)).toBe("Job!I6");
    expect(cellOf(/about two feet/)).toBe("Job!C10");
    expect(cellOf(/there is no stock of Plywood/)).toMatch(/^Prices![A-E]1$/);
    expect(found.find(({ finding }) => /markup/.test(finding))!.where).toBe("rates");
    expect(cellOf(/markup/i)).toMatch(/^Prices!B[67]$/);
  });

  test("stay those of the job that was looked at last, worked out anew only where its cells have changed", async () => {
    const workbook = new Workbook();
    const follower = new FindingsFollower(workbook);
    workbook.formula = undefined;
    expect(await follower.at()).toBeUndefined();
    workbook.formula = FORMULA;
    const first = await follower.at();
    workbook.formula = undefined;
    expect(await follower.at()).toBe(first);
    const kept = OPENINGS[1]![1];
    OPENINGS[1]![1] = 18;
    const second = await foundBy(follower);
    OPENINGS[1]![1] = kept!;
    expect(second.some(({ finding }) => finding.startsWith("The width is measured"))).toBe(false);
  });

  test("of a plan are of its openings and standards alone", async () => {
    const workbook = new Workbook();
    workbook.formula = "=DRAWER.PARTS(A5:F10,H5:I6,TRUE)";
    const found = await foundBy(new FindingsFollower(workbook));
    const [, ...rows] = CHECKS(OPENINGS, STANDARDS) as string[][];
    expect(found.map(({ finding }) => finding)).toEqual(rows.map(([, , finding]) => finding));
  });

  test("of a price that is nowhere have no cell", async () => {
    const workbook = new Workbook();
    workbook.formula = "=DRAWER.QUOTE(A5:F10,H5:I6,Prices!A1:E2,Prices!A5:B7)";
    const rates = RATES.splice(1);
    const found = await foundBy(new FindingsFollower(workbook));
    RATES.push(...rates);
    const missing = found.find(({ finding }) => /slide price/.test(finding))!;
    expect(missing.cell).toBeUndefined();
  });
});
