import { describe, expect, test } from "vitest";
import { officeRanges } from "../../../src/taskpane/host/office-ranges";

interface Played {
  isNullObject?: boolean;
  formulas?: unknown[][];
  values?: unknown[][];
  rowIndex?: number;
  columnIndex?: number;
}

/** The program's answers, each only after it was loaded and synchronized, as the program gives them. */
function program(cell: Played, parent: Played, ranges: Record<string, Played>, spills: Record<string, Played> = {}) {
  const waiting: (() => void)[] = [];
  const proxy = (answer: Played, more: object = {}) => {
    const made: Record<string, unknown> = { ...more };
    made["load"] = (names: string) =>
      waiting.push(() => {
        made["isNullObject"] = answer.isNullObject ?? false;
        for (const name of names.split(", ")) if (!answer.isNullObject) made[name] = answer[name as keyof Played];
      });
    return made;
  };
  const sheet = (name: string) => {
    const made: Record<string, unknown> = {
      getRange: (address: string) =>
        proxy(ranges[`${name}!${address}`] ?? { isNullObject: true }, {
          getSpillingToRangeOrNullObject: () => proxy(spills[`${name}!${address}`] ?? { isNullObject: true }),
        }),
    };
    waiting.push(() => (made["isNullObject"] = name !== "Job"));
    return made;
  };
  const worksheet: Record<string, unknown> = { load: () => waiting.push(() => (worksheet["name"] = "Job")) };
  const context = {
    workbook: {
      getActiveCell: () => proxy(cell, { worksheet, getSpillParentOrNullObject: () => proxy(parent) }),
      worksheets: { getItemOrNullObject: sheet },
    },
    sync: async () => waiting.splice(0).forEach((answer) => answer()),
  };
  return officeRanges((batch) => batch(context as never));
}

const NONE = { isNullObject: true };
const cell = (formula: string, rowIndex: number, columnIndex: number) => ({
  formulas: [[formula]],
  rowIndex,
  columnIndex,
});

describe("what the spreadsheet program tells of ranges", () => {
  test("a cell that a formula spilled into is shown by that formula, so far down and to the right", async () => {
    const { shownBy } = program(cell("A3", 8, 2), cell("=DRAWER.PLAN(A5:F9)", 4, 0), {});
    expect(await shownBy()).toEqual({ formula: "=DRAWER.PLAN(A5:F9)", sheet: "Job", row: 4, column: 2 });
  });

  test("the formula's own cell has no other, and a typed cell none at all", async () => {
    const { shownBy } = program(cell("=DRAWER.TAPE(1)", 4, 1), NONE, {});
    expect(await shownBy()).toEqual({ formula: "=DRAWER.TAPE(1)", sheet: "Job", row: 0, column: 0 });
    expect(await program(cell("24", 4, 1), NONE, {}).shownBy()).toBeUndefined();
  });

  test("gives the values of a range, and of all that has spilled from a cell", async () => {
    const { values } = program(
      cell("", 0, 0),
      NONE,
      { "Job!A5:B5": { values: [["Width", 24]] }, "Job!A5": {} },
      {
        "Job!A5": { values: [["Part"], ["Side"]] },
      },
    );
    expect(await values({ sheet: "Job", address: "A5:B5", isSpilled: false })).toEqual([["Width", 24]]);
    expect(await values({ sheet: "Job", address: "A5", isSpilled: true })).toEqual([["Part"], ["Side"]]);
    expect(await values({ sheet: "Job", address: "B9", isSpilled: true })).toBeUndefined();
    expect(await values({ sheet: "Gone", address: "A5:B5", isSpilled: false })).toBeUndefined();
  });
});
