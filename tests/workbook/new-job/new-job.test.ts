import { describe, expect, test } from "vitest";
import { CellError } from "../../../src/workbook/engine/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { DEFAULT_CHOICES, newJob, type Choices } from "../../../src/workbook/new-job/index";

const SLIDES = ["side-mount", "center-mount", "wood runner", "undermount"] as const;
const ALL: Choices[] = (["in", "mm"] as const).flatMap((unit) =>
  (["frameless", "face frame"] as const).flatMap((construction) =>
    SLIDES.map((slide) => ({
      ...DEFAULT_CHOICES[unit],
      construction,
      slide,
      dataSheet: slide === "undermount" ? { "undermount deduction": unit === "in" ? "1 21/32" : "42" } : {},
    })),
  ),
);

/** What a sheet's one formula shows. */
function table(workbook: EditedWorkbook, name: string): unknown[][] {
  const sheet = workbook.sheets.findIndex((one) => one.name === name);
  const found = workbook.calculate().results.find((one) => one.sheet === sheet && one.row === 4);
  return (found?.values ?? []) as unknown[][];
}
const put = (workbook: EditedWorkbook, row: number, column: number, content: string | number) =>
  workbook.put({ sheet: 0, row: row - 1, column, content });

describe("a new job", () => {
  test.each(ALL)("$unit, $construction, $slide: every sheet shows its result", (choices) => {
    const workbook = new EditedWorkbook(newJob(choices));
    const { results, kept } = workbook.calculate();
    expect(kept).toEqual([]);
    const wrong = results.filter(({ values }) => values.flat().some((value) => value instanceof CellError));
    expect(wrong.map(({ sheet, values }) => [workbook.sheets[sheet]!.name, values.flat()[0]])).toEqual([]);
    expect(
      table(workbook, "Plan")
        .slice(1)
        .map(([label]) => label),
    ).toEqual(["A1", "A2", "A3", "A4"]);
    expect(
      table(workbook, "Checks")
        .slice(1)
        .filter(([, level]) => level === "wrong"),
    ).toEqual([]);
  });

  test("what an undermount slide's data sheet says is planned with; the rest of it is asked for, and nothing else", () => {
    const dataSheet = {
      "undermount deduction": "1 21/32",
      "undermount depth difference": "3/8",
      "undermount hook hole": "none",
    };
    const workbook = new EditedWorkbook(newJob({ ...DEFAULT_CHOICES.in, slide: "undermount", dataSheet }));
    expect(table(workbook, "Plan")[1]!.slice(7, 10)).toEqual([21.625, expect.any(Number), 22]);
    const asked = table(workbook, "Checks").find(([, , finding]) => /^Nothing is given for/.test(String(finding)))!;
    expect(String(asked[2]).match(/undermount [a-z]+ [a-z]+(?=,)/g)).toEqual([
      "undermount thickest side",
      "undermount space below",
      "undermount space above",
      "undermount bottom recess",
      "undermount notch width",
      "undermount notch height",
    ]);
    const row = rowOf(workbook, "undermount hook hole");
    const cells = [...workbook.cells(0)].filter((cell) => cell.row === row - 1).map(({ value }) => value);
    expect(cells.slice(0, 3)).toEqual(["undermount hook hole", "none", "not known"]);
  });

  test("what is typed over its inputs is planned at once: sizes as texts, openings added, a standard changed", () => {
    const workbook = new EditedWorkbook(newJob(DEFAULT_CHOICES.in));
    put(workbook, 7, 0, "B");
    ["15 1/16; 15", "28", "22 3/4", "5; 1 part; 2 parts"].forEach((text, i) => put(workbook, 7, i + 1, text));
    const plan = table(workbook, "Plan");
    expect(plan.slice(5).map(([label, , , height, , width]) => [label, height, width])).toEqual([
      ["B1", 5, 14],
      ["B2", expect.any(Number), 14],
      ["B3", expect.any(Number), 14],
    ]);
    const clearance = rowOf(workbook, "side clearance");
    put(workbook, clearance, 1, "7/16");
    expect(table(workbook, "Plan")[5]![5]).toBe(14.125);
  });

  test("its quote ends in a total, which follows the price of the slides", () => {
    const workbook = new EditedWorkbook(newJob(DEFAULT_CHOICES.mm));
    const total = (): number => table(workbook, "Quote").at(-1)!.at(-1) as number;
    const before = total();
    expect(before).toBeGreaterThan(0);
    const row = rowOf(workbook, "slide price", 1);
    workbook.put({ sheet: 1, row: row - 1, column: 1, content: 25 });
    expect(total()).toBeGreaterThan(before + 40);
  });
});

/** The row, from 1, whose first cell holds a name. */
function rowOf(workbook: EditedWorkbook, name: string, sheet = 0): number {
  const cell = [...workbook.cells(sheet)].find(({ column, value }) => column === 0 && value === name);
  return cell!.row + 1;
}
