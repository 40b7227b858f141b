import { beforeEach, describe, expect, test } from "vitest";
import * as functions from "../../../src/functions/index";
import { parseCell } from "../../../src/workbook/address";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { benchJob, DEFAULT_CHOICES, newJob, type Choices } from "../../../src/workbook/new-job/index";

let workbook: EditedWorkbook;
const numberOf = (name: string): number => workbook.sheets.findIndex((sheet) => sheet.name === name);

function put(sheet: string, cell: string, content: string | number | null): void {
  workbook.put({ sheet: numberOf(sheet), ...parseCell(cell)!, content });
}

/** What a cell's formula gives, and all that it spills. */
function given(sheet: string, cell: string): unknown[][] {
  const { row, column } = parseCell(cell)!;
  const found = workbook
    .calculate()
    .results.find((one) => one.sheet === numberOf(sheet) && one.row === row && one.column === column);
  return found!.values as unknown[][];
}
const value = (sheet: string, cell: string): unknown => given(sheet, cell)[0]![0];

const open = (choices: Choices): void => void (workbook = new EditedWorkbook(writeWorkbook(newJob(choices))));
const LETTERS = ["B", "C", "D", "E", "F", "G"];
const GAP = { in: 1 / 8, mm: 3 };

describe.each(["in", "mm"] as const)("What if, in %s", (unit) => {
  beforeEach(() => open(benchJob(unit)));

  test("has fronts for every count that grow by the amount, and with their gaps fill the face", () => {
    const taller = { in: 3 / 4, mm: 20 }[unit];
    const face = value("What if", "B5") as number;
    LETTERS.forEach((letter, i) => {
      const fronts = given("What if", `${letter}11`).map(([front]) => front as number);
      expect(fronts).toHaveLength(2 + i);
      expect(fronts.reduce((sum, front) => sum + front, 0) + (1 + i) * GAP[unit]).toBeCloseTo(face, 9);
      fronts.slice(1).forEach((front, j) => expect(front - fronts[j]!).toBeCloseTo(taller, 9));
    });
  });

  test("takes another height: the face goes along with it, and a geometric rule", () => {
    const before = value("What if", "B5") as number;
    const own = value("What if", "B4") as number;
    put("What if", "B4", own + 4);
    expect(value("What if", "B5")).toBeCloseTo(before + 4, 9);
    put("What if", "B7", "geometric");
    put("What if", "B8", "1.25");
    const [first, second] = given("What if", "B11").map(([front]) => front as number);
    expect(second! / first!).toBeCloseTo(1.25, 9);
  });

  test("has equal fronts by height: with their gaps they fill that height's face, as near as a tape reads", () => {
    const beyond = (value("What if", "B5") as number) - (value("What if", "B4") as number);
    const half = { in: 1 / 32, mm: 0.5 }[unit];
    for (const row of [22, 23, 26]) {
      const { row: r, column } = parseCell(`A${row}`)!;
      const typed = row === 22 ? value("What if", "A22") : workbook.content(numberOf("What if"), r, column);
      const height = functions.LENGTH(typed, unit as never) as number;
      LETTERS.forEach((letter, i) => {
        const front = functions.LENGTH(value("What if", `${letter}${row}`), unit as never) as number;
        const exact = (height + beyond - (1 + i) * GAP[unit]) / (2 + i);
        expect(Math.abs(front - exact)).toBeLessThanOrEqual(half + 1e-9);
      });
    }
  });

  test("follows the job's own first opening and its front gap", () => {
    const face = value("What if", "B5") as number;
    put("Job", "C6", { in: "30 1/4", mm: "765" }[unit]);
    expect(value("What if", "B5")).toBeCloseTo(face + { in: 4, mm: 100 }[unit], 9);
  });
});

/** Width, depth, slide, side, groove, fit. */
const BOXES: Record<"in" | "mm", [string, string, string, string, string, string][]> = {
  in: [
    ["21 1/2", "22 3/4", "side-mount", "1/2", "1/4", "grooved"],
    ["17 15/16", "20 1/2", "center-mount", "15/32", "3/16", "under back"],
    ["24", "26", "3/8", "3/4", "3/8", "applied"],
  ],
  mm: [
    ["545", "580", "side-mount", "12", "6", "grooved"],
    ["24 in", "520", "wood runner", "15", "8", "under back"],
    ["450", "480", "10", "19", "9", "applied"],
  ],
};

describe.each(Object.entries(BOXES))("One box, in %s", (unit, boxes) => {
  test.each(boxes)("%s wide, %s deep, %s, sides %s, groove %s, %s: is the plan's of such an opening", (...typed) => {
    open(DEFAULT_CHOICES[unit as "in" | "mm"]);
    typed.forEach((content, i) => put("One box", `B${5 + i}`, content));
    const [width, depth, slide, side, groove, fit] = typed;
    const height = { in: 26.25, mm: 665 }[unit]!;
    const standards = [
      ["unit", unit],
      [/\d/.test(slide) ? "side clearance" : "slide", slide],
      ["side thickness", side],
      ["groove depth", groove],
      ["bottom fit", fit],
      ["bottom overhang", "none"],
    ];
    const openings = [
      ["Opening", "Width", "Height", "Depth", "Drawers"],
      ["A", width, height, depth, 1],
    ];
    const working = new Map(functions.WORKING(openings, "A1", standards).map(([name, size]) => [name, size]));
    const names = ["Box width", "Box depth", "Side length", "Box front length", "Bottom width", "Bottom depth"];
    const box = names.map((_, i) => value("One box", `B${13 + i}`) as number);
    names.forEach((name, i) => expect(box[i], name).toBeCloseTo(working.get(name) as number, 9));
    expect(value("One box", "C13")).toBe(functions.TAPE(box[0], undefined, undefined, unit as never));
  });
});
