import { afterEach, beforeAll, describe, expect, test } from "vitest";
import * as functions from "../../../src/functions/index";
import { cellName, parseCell } from "../../../src/workbook/address";
import { EditedWorkbook, type Put } from "../../../src/workbook/edit/index";
import { CellError, type Outcome, type Scalar } from "../../../src/workbook/engine/index";
import { PARTS_BENCH, partsBenchDraft } from "../../../src/workbook/example/index";

type Content = string | number | null;

/** What may be typed into each cell of Bench and Saw that is meant for it: numbers, marks, words, several measurements, nothing. */
const TYPED: Record<string, Content[]> = {
  "Bench!B7": [20, "660 mm", '24 1/16"', "18 1/16; 18; 17 15/16", "1' 6 1/2\""],
  "Bench!C7": ["24 1/16; 24"],
  "Bench!D7": ["760 mm"],
  "Bench!B8": ["26 1/8; 26 1/4"],
  "Bench!C8": ['26 1/16"'],
  "Bench!D8": ["667 mm"],
  "Bench!B9": ["23 1/4; 20 1/2"],
  "Bench!C9": ["595 mm"],
  "Bench!D9": [17],
  "Bench!B10": [1, 6, "5 1/2; 1 part", '6"; 2 parts; 1.5 parts'],
  "Bench!C10": [2],
  "Bench!D10": ["140 mm; 1 part"],
  "Bench!B11": [0.75, "12 mm", null],
  "Bench!C11": [0.75],
  "Bench!D11": ['1/2"'],
  "Bench!B12": [0.5, "6 mm", null],
  "Bench!C12": [0.5],
  "Bench!D12": [0.25],
  "Bench!B13": ["applied", "under back", null],
  "Bench!C13": ["under back"],
  "Bench!D13": ["applied"],
  "Bench!B16": [0.625, "18 mm", null],
  "Bench!B17": ["3 mm", 0.1, 0, null],
  "Bench!B18": [0.25, '1/16"', 0, null],
  "Bench!B19": [0.0625, "3 mm", null],
  "Bench!B20": [0, "1/8", null],
  "Bench!B21": [0.25, "12 mm", 0, null],
  "Bench!B22": [0.5, '3/8"', null],
  "Bench!B23": [0.125, "5 mm", 0, null],
  "Bench!B24": [0.03125, "1 mm", 0, null],
  "Bench!B25": [0.1875, "6 mm", null],
  "Bench!B26": ["center-mount", "wood runner", 0.25, "12 mm", '3/8"', 0, null],
  "Saw!B5": [0.1, "3 mm", null],
  "Saw!B6": [0.25, "12 mm", '1/2"', null],
};

/** The same for the other sheets, which must show no error. */
const ELSEWHERE: Record<string, Content[]> = {
  "What if!B4": ['28"', "700 mm"],
  "What if!B5": ["3 mm", null],
  "What if!B6": ["equal"],
  "What if!B7": ['1/2"'],
  "What if!A21": ['24 1/2"', "600 mm"],
  "Workings!B4": ["c2"],
  "Prices!C5": ["2440 mm"],
  "Prices!B6": ["12.7 mm"],
  "Price grid!B4": ["600 mm", "26 1/4"],
  "Price grid!B5": ['22"'],
  "Price grid!C14": ["455 mm", '20 1/2"'],
  "Alternates!C12": ["19 mm"],
};

const OPENINGS = ["B", "C", "D"];
const STANDARDS: [string, string][] = [
  ["cabinet thickness", "Bench!B16"],
  ["front gap", "Bench!B17"],
  ["top reveal", "Bench!B18"],
  ["bottom reveal", "Bench!B19"],
  ["end reveal", "Bench!B20"],
  ["space below", "Bench!B21"],
  ["space above", "Bench!B22"],
  ["height step", "Bench!B23"],
  ["front step", "Bench!B24"],
  ["groove depth", "Bench!B25"],
  ["kerf", "Saw!B5"],
  ["groove offset", "Saw!B6"],
];

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

  constructor(place: string, content: Content) {
    const { sheet, row, column } = at(place);
    before = { sheet, row, column, content: workbook.content(sheet, row, column) };
    workbook.put({ ...before, content });
    this.outcome = workbook.calculate();
  }

  typed(place: string): Content {
    const { sheet, row, column } = at(place);
    return workbook.content(sheet, row, column) as Content;
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

  /** The job as a person would type it into two tables, from what stands in Bench and Saw. */
  get job(): [unknown[][], unknown[][]] {
    const slide = this.typed("Bench!B26");
    const isClearance = typeof slide === "number" || /\d/.test(slide ?? "");
    return [
      [
        ["Opening", "Width", "Height", "Depth", "Drawers", "Side thickness", "Bottom thickness", "Bottom fit"],
        ...OPENINGS.map((letter, i) => ["ABC"[i], ...rows(7, 13).map((row) => this.typed(`Bench!${letter}${row}`))]),
      ],
      [
        ...STANDARDS.map(([name, cell]) => [name, zero(this.typed(cell))]),
        [isClearance ? "side clearance" : "slide", zero(slide)],
      ],
    ];
  }
}

const rows = (first: number, last: number): number[] => Array.from({ length: last - first + 1 }, (_, i) => first + i);
const zero = (content: Content): Content => (content === 0 ? "0 in" : content);
const shown = (value: Scalar): unknown => (value instanceof CellError ? value.code : value);
const places = (of: Record<string, Content[]>) =>
  Object.entries(of).flatMap(([place, contents]) => contents.map((content): [string, Content] => [place, content]));

test("every cell of Bench and Saw that is meant to be typed into is tried", () => {
  const inputs = ["Bench", "Saw"].flatMap((name) =>
    PARTS_BENCH.sheets[numberOf(name)]!.rows.flatMap(({ cells }, row) =>
      cells.flatMap((cell, column) => (/^input/.test(cell?.style ?? "") ? [`${name}!${cellName(row, column)}`] : [])),
    ),
  );
  expect(Object.keys(TYPED).sort()).toEqual(inputs.sort());
});

describe("all sheets speak of one job where", () => {
  test.each(places(TYPED))("%s holds %j", (place, content) => {
    const example = new Example(place, content);
    expect(example.errors).toEqual([]);
    const [openings, standards] = example.job;
    const plain = (table: unknown[][]) => table.map((row) => row.map((cell) => cell));
    const plan = plain(functions.PLAN(openings, standards));
    expect(example.table("Plan!A5")).toEqual(plan);
    expect(example.table("Cut list!A5")).toEqual(plain(functions.PARTS(openings, standards)));
    expect(example.table("Saw!A8")).toEqual(plain(functions.SETUPS(openings, standards)));
    expect(example.table("Mounting!A5")).toEqual(plain(functions.MOUNTING(openings, standards)));
    agreesWithPlan(example, plan);
    OPENINGS.forEach((letter, i) => agreesWithWorking(example, letter, "ABC"[i]!, openings, standards));
  });
});

/** The sheet Drawers against the plan, drawer by drawer. */
function agreesWithPlan(example: Example, plan: unknown[][]): void {
  const shownRows = [5, 13, 21].flatMap((first) => rows(first, first + 5));
  const drawers = shownRows
    .map((row) => ["A", "B", "C", "D", "F", "G", "H"].map((letter) => example.value(`Drawers!${letter}${row}`)))
    .filter(([label]) => label !== "");
  expect(drawers).toEqual(plan.slice(1).map((row) => [0, 2, 3, 4, 6, 5, 7].map((column) => row[column])));
}

/** The lower half of Bench against the sums that the functions themselves give for an opening's first drawer. */
function agreesWithWorking(
  example: Example,
  letter: string,
  opening: string,
  openings: unknown[][],
  standards: unknown[][],
): void {
  const working = new Map(
    functions.WORKING(openings, `${opening}1`, standards).map(([name, value]) => [name as string, value as number]),
  );
  const expected: [number, string][] = [
    [29, "Box width"],
    [30, "Slide length"],
    [31, "Side length"],
    [32, "Box front length"],
    [33, "Bottom width"],
    [34, "Bottom depth"],
    [37, "Front width"],
    [39, "Face height"],
  ];
  for (const [row, name] of expected)
    expect(example.value(`Bench!${letter}${row}`), `${opening}, ${name}`).toBeCloseTo(working.get(name)!, 12);
}

describe("no sheet shows an error where", () => {
  test.each(places(ELSEWHERE))("%s holds %j", (place, content) => {
    expect(new Example(place, content).errors).toEqual([]);
  });
});

describe("an opening that cannot be planned is an error in every sheet that tells of it, and in no other, where", () => {
  test.each([
    ["Bench!C7", null],
    ["Bench!C7", "wide"],
    ["Bench!C9", 5],
    ["Bench!C10", "30; 1 part"],
    ["Bench!C11", 20],
    ["Bench!C13", "glued"],
  ])("%s holds %j", (place, content) => {
    const { errors } = new Example(place, content);
    const sheets = new Set(errors.map((error) => error.split("!")[0]!));
    const all = ["Bench", "Drawers", "Saw", "Plan", "Cut list", "Sheets", "Cuts", "Hardware", "Mounting", "Quote"];
    for (const sheet of all) expect(sheets, sheet).toContain(sheet);
    // Opening A and C are as they were, and so is what is told of their sizes.
    expect(
      errors.filter((error) => /^(Bench|Drawers|Job)!/.test(error) && /![BD](29|3\d)|!A5|!A21/.test(error)),
    ).toEqual([]);
    expect(errors.filter((error) => error.startsWith("Plan!A"))).toEqual([]);
  });

  test("a standard is no length, which the sheet Checks says in words", () => {
    const { errors } = new Example("Bench!B17", "thin");
    const sheets = new Set(errors.map((error) => error.split("!")[0]!));
    for (const sheet of PARTS_BENCH.sheets
      .map(({ name }) => name)
      .filter((name) => !["Prices", "Checks"].includes(name)))
      expect(sheets, sheet).toContain(sheet);
  });
});
