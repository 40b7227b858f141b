import { afterEach, beforeAll, describe, expect, test } from "vitest";
import * as functions from "../../../src/functions/index";
import { cellName, parseCell } from "../../../src/workbook/address";
import { EditedWorkbook, type Put } from "../../../src/workbook/edit/index";
import { CellError, type Outcome, type Scalar } from "../../../src/workbook/engine/index";
import { STANDARD_NAMES } from "../../../src/workbook/new-job/job-places";
import { OPENING_HEADINGS, openingCell, standardCell } from "../support/bench-places";
import { PARTS_BENCH, partsBenchDraft } from "../support/parts-bench";

type Content = string | number | null;

/** What may be typed of each opening: numbers, marks, words, several measurements, nothing. */
const OPENINGS: Record<string, Record<string, Content[]>> = {
  A: {
    Width: [20, "660 mm", '24 1/16"', "18 1/16; 18; 17 15/16", "1' 6 1/2\""],
    Height: ["26 1/8; 26 1/4"],
    Depth: ["23 1/4; 20 1/2"],
    Drawers: [1, "6", "5 1/2; 1 part", '6"; 2 parts; 1.5 parts'],
    "Side thickness": ["3/4", "12 mm", 0.75],
    "Bottom thickness": ["1/2", "6 mm"],
    "Bottom fit": ["applied", "under back"],
    Cabinet: ["Left"],
    Quantity: [1],
    Opening: ["Till"],
  },
  B: {
    Width: ["24 1/16; 24"],
    Height: ['26 1/16"'],
    Depth: ["595 mm"],
    Drawers: [2],
    "Side thickness": [0.75],
    "Bottom thickness": ["1/2"],
    "Bottom fit": ["under back"],
    Cabinet: ["Middle"],
    Quantity: ["1"],
    Opening: ["Odds & ends"],
  },
  C: {
    Width: ["760 mm"],
    Height: ["667 mm"],
    Depth: [17],
    Drawers: ["140 mm; 1 part"],
    "Side thickness": ['1/2"', null],
    "Bottom thickness": [0.25, null],
    "Bottom fit": ["applied", null],
    Cabinet: ["Right"],
    Quantity: ["1"],
    Opening: ["7"],
  },
};

/** The same of standards. */
const STANDARDS: Record<string, Content[]> = {
  "cabinet thickness": ["5/8", "18 mm"],
  "front gap": ["3 mm", 0.1, "none"],
  "top reveal": [0.25, '1/16"', "none"],
  "bottom reveal": ["1/16", "3 mm", "none"],
  "end reveal": ["none", "1/8"],
  "space below": [0.25, "12 mm", "none"],
  "space above": ["1/2", '3/8"', "none"],
  "height step": [0.125, "5 mm", "none", null],
  "front step": ["1/32", "1 mm", "none"],
  "groove depth": ["3/16", "6 mm"],
  slide: ["center-mount", "wood runner", null],
  "side clearance": ["1/4", "12 mm", '3/8"', "none"],
  "side thickness": ["3/4", "12 mm", null],
  "front style": ["inset"],
  construction: ["face frame", null],
  kerf: ["0.1", "3 mm"],
  "groove offset": ["1/4", "12 mm", '1/2"'],
};

const TYPED: [place: string, Content][] = [
  ...Object.entries(OPENINGS).flatMap(([opening, of]) => filled(of, (heading) => openingCell(opening, heading))),
  ...filled(STANDARDS, standardCell),
];

function filled(of: Record<string, Content[]>, cell: (name: string) => string): [string, Content][] {
  return Object.entries(of).flatMap(([name, contents]) =>
    contents.map((content): [string, Content] => [`Job!${cell(name)}`, content]),
  );
}

/** Likewise on the other sheets, which must show no error. */
const ELSEWHERE: Record<string, Content[]> = {
  "What if!B4": ['28"', "700 mm", 30],
  "What if!B6": ["3 mm", "none"],
  "What if!B7": ["equal"],
  "What if!B8": ['1/2"'],
  "What if!A22": ['24 1/2"', "600 mm"],
  "What if!C10": [8, 1],
  "Workings!B4": ["c2"],
  "Prices!C5": ["2440 mm"],
  "Prices!B6": ["12.7 mm"],
  "Price grid!B4": ["600 mm", "26 1/4"],
  "Price grid!B5": ['22"'],
  "Price grid!C14": ["455 mm", '20 1/2"'],
  "Alternates!C12": ["19 mm"],
};

let workbook: EditedWorkbook;
beforeAll(() => void (workbook = new EditedWorkbook(partsBenchDraft())));
let before: Put | undefined;
afterEach(() => void (before && workbook.put(before)));

const numberOf = (name: string): number => PARTS_BENCH.sheets.findIndex((sheet) => sheet.name === name);
const at = (place: string) => {
  const [sheet, cell] = place.split("!") as [string, string];
  return { sheet: numberOf(sheet), ...parseCell(cell)! };
};

/** The example with something typed into one of its cells. */
class Example {
  private readonly outcome: Outcome;

  /** @param content left out, it is as it was */
  constructor(place: string, content: Content | undefined) {
    const { sheet, row, column } = at(place);
    before = { sheet, row, column, content: workbook.content(sheet, row, column) };
    if (content !== undefined) workbook.put({ ...before, content });
    this.outcome = workbook.calculate();
  }

  private typed(cell: string): Content {
    const { row, column } = parseCell(cell)!;
    return workbook.content(0, row, column) as Content;
  }

  value(place: string): unknown {
    const { sheet, row, column } = at(place);
    const found = this.outcome.results.find(
      ({ sheet: on, area }) =>
        on === sheet && row >= area.top && row <= area.bottom && column >= area.left && column <= area.right,
    );
    return shown(found?.values[row - found.area.top]?.[column - found.area.left] ?? null);
  }

  table(place: string): unknown[][] {
    const { sheet, row, column } = at(place);
    const found = this.outcome.results.find((one) => one.sheet === sheet && one.row === row && one.column === column)!;
    return found.values.map((line) => line.map(shown));
  }

  /** Cells that hold errors. */
  get errors(): string[] {
    return this.outcome.results.flatMap(({ sheet, area, values }) =>
      values.flatMap((line, y) =>
        line.flatMap((value, x) =>
          value instanceof CellError
            ? [
                `${PARTS_BENCH.sheets[sheet]!.name}!${cellName(area.top + y, area.left + x)} ${value.code} ${value.message}`,
              ]
            : [],
        ),
      ),
    );
  }

  /** The job as a person would type it into two tables, from what stands on the sheet Job. */
  get job(): [unknown[][], unknown[][]] {
    return [
      [
        OPENING_HEADINGS,
        ...["A", "B", "C"].map((opening) => OPENING_HEADINGS.map((name) => this.typed(openingCell(opening, name)))),
      ],
      STANDARD_NAMES.map((name) => [name, this.typed(standardCell(name))]).filter(([, content]) => content !== null),
    ];
  }
}

const shown = (value: Scalar): unknown => (value instanceof CellError ? value.code : value);
const places = (of: Record<string, Content[]>) =>
  Object.entries(of).flatMap(([place, contents]) => contents.map((content): [string, Content] => [place, content]));

test("every cell of the openings that is meant to be typed into is tried", () => {
  for (const [opening, of] of Object.entries(OPENINGS))
    expect(Object.keys(of).sort(), opening).toEqual([...OPENING_HEADINGS].sort());
});

describe("all sheets speak of one job where", () => {
  test.each(TYPED)("%s holds %j", (place, content) => {
    const example = new Example(place, content);
    expect(example.errors).toEqual([]);
    const [openings, standards] = example.job;
    const plan = functions.PLAN(openings, standards);
    const tables: Record<string, unknown[][]> = {
      Plan: plan,
      "Cut list": functions.PARTS(openings, standards, true),
      "Set-ups": functions.SETUPS(openings, standards),
      Hardware: functions.HARDWARE(openings, standards),
      Mounting: functions.MOUNTING(openings, standards),
      Fit: functions.FIT(openings, standards),
    };
    for (const [sheet, table] of Object.entries(tables))
      expect(example.table(`${sheet}!A5`), sheet).toEqual(table.map((row) => row.map((cell) => cell)));
    const working = new Map(functions.WORKING(openings, plan[1]![0], standards).map(([name, value]) => [name, value]));
    expect(example.value("What if!B4")).toBe(working.get("Opening height"));
    expect(example.value("What if!B5")).toBeCloseTo(working.get("Face height") as number, 12);
    const all = new RegExp(`^Planned: ${plan.length - 1} drawers\\. Checks: .*\\. Total: [\\d,.]+\\.$`);
    expect(example.value("Job!A4")).toMatch(all);
  });
});

describe("no sheet shows an error where", () => {
  test.each(places(ELSEWHERE))("%s holds %j", (place, content) => {
    expect(new Example(place, content).errors).toEqual([]);
  });
});

describe("an opening that cannot be planned is an error in every sheet that tells of it, and in no other, where", () => {
  test.each([
    ["Width", null],
    ["Width", "wide"],
    ["Depth", 5],
    ["Drawers", "30; 1 part"],
    ["Side thickness", 20],
    ["Bottom fit", "glued"],
  ])("the %s of B is %j", (heading, content) => {
    const usual = new Example(`Job!${openingCell("B", heading)}`, undefined).table("Plan!A5");
    const example = new Example(`Job!${openingCell("B", heading)}`, content);
    const sheets = new Set(example.errors.map((error) => error.split("!")[0]!));
    expect([...sheets].sort()).toEqual(
      [
        ...["Plan", "Cut list", "Set-ups", "Hardware", "Mounting", "Fit", "Sheets", "Layout", "Cuts", "Quote"],
        ...["Client quote", "Alternates"],
      ].sort(),
    );
    // Openings A and C are as they were but for what fronts share with a neighbor, and so is what is told of them.
    const others = (plan: unknown[][]) => plan.filter(([, opening]) => opening !== "B").map((row) => row.slice(3, 9));
    expect(others(example.table("Plan!A5"))).toEqual(others(usual));
    expect(example.value("Job!A4")).toMatch(/^Planned: 5 drawers\. .* No price yet\.$/);
  });

  test("a standard is no length, which the sheet Checks says in words", () => {
    const example = new Example(`Job!${standardCell("front gap")}`, "thin");
    const sheets = new Set(example.errors.map((error) => error.split("!")[0]!));
    for (const { name } of PARTS_BENCH.sheets)
      expect(sheets.has(name), name).toBe(!["Job", "Prices", "Checks", "One box"].includes(name));
    expect(example.value("Job!A4")).toMatch(/^Not planned yet/);
  });
});
