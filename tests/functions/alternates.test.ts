import { describe, expect, test } from "vitest";
import { ALTERNATES, CHECKS, PLAN, PRICE, SHEETS, PARTS } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { PARTS_BENCH } from "../worked/plans";
import { FREE, ONE_DRAWER, rates } from "./money";
import { column, messageOf } from "./tables";

const STOCK = [
  ["Thickness", "Length", "Width", "Price"],
  ["1/4", 96, 48, 32],
  ["1/2", 96, 48, 58],
  ["3/4", 96, 48, 84],
];
const RATES = rates({ ...FREE, "slide price": 18.4, "labor rate": 60, "box minutes": 45, markup: 30 });
const OPENINGS = PARTS_BENCH.openings.map((row) => row.slice(0, 5));
const SIDES = [
  ["Standard", "Half-inch sides", "Three-quarter sides", "Inset fronts"],
  ["height step", "1/4", "", ""],
  ["side thickness", "", "3/4", ""],
  ["front style", "overlay", "", "inset"],
];
/** The same three as tables of two columns. */
const ALONE = [
  [["height step", "1/4"]],
  [
    ["height step", "1/4"],
    ["side thickness", "3/4"],
  ],
  [
    ["height step", "1/4"],
    ["front style", "inset"],
  ],
];
const compare = (standards: unknown[][] = SIDES, more: unknown[][] = RATES) =>
  ALTERNATES(OPENINGS, standards, STOCK, more);

describe("ALTERNATES(openings, standards, stock, rates)", () => {
  test("gives one row an alternate, the base first", () => {
    expect(compare()[0]).toEqual([
      "Alternate",
      "Drawers",
      "Sheets",
      "Total",
      "Total against base",
      "Inside volume",
      "Volume against base",
      "Wrong",
      "Doubtful",
      "First finding",
    ]);
    expect(column(compare(), "Alternate")).toEqual(["Half-inch sides", "Three-quarter sides", "Inset fronts"]);
    expect(column(compare(), "Drawers")).toEqual([8, 8, 8]);
  });

  test("refuses in words more drawers than a host waits for", () => {
    const many = Array.from({ length: 600 }, (_, i) => [18, 24 + (i % 8) / 8, 22, 1]);
    const openings = (rows: number) => [["Width", "Height", "Depth", "Drawers"], ...many.slice(0, rows)];
    const four = ["Half", "Three quarters", "As it is", "Again"];
    const standards = [
      ["", ...four],
      ["side thickness", "1/2", "3/4", "", ""],
    ];
    expectValueError(
      () => ALTERNATES(openings(600), standards, STOCK),
      "The 4 alternates have 2,400 drawers in all. At most 1,800 are compared at once: give fewer alternates or openings a call.",
    );
    expect(column(ALTERNATES(openings(60), standards, STOCK), "Drawers")).toEqual([60, 60, 60, 60]);
  });

  test("each alternate is what the other functions give for its standards alone", () => {
    const rows = compare();
    expect(column(rows, "Total")).toEqual(ALONE.map((own) => PRICE(OPENINGS, own, STOCK, RATES)));
    expect(column(rows, "Sheets")).toEqual(
      ALONE.map((own) =>
        column(SHEETS(PARTS(OPENINGS, own), STOCK, "1/8", 0, "quick" as never), "Sheets").reduce<number>(
          (sum, sheets) => sum + (sheets as number),
          0,
        ),
      ),
    );
    ALONE.forEach((own, i) => {
      const levels = column(CHECKS(OPENINGS, own), "Level");
      expect(column(rows, "Wrong")[i]).toBe(levels.filter((level) => level === "wrong").length);
      expect(column(rows, "Doubtful")[i]).toBe(levels.filter((level) => level === "doubtful").length);
    });
  });

  test("the first finding is one that not every alternate has, where there is one: stops before looks", () => {
    const openings = [
      ["Width", "Height", "Depth", "Drawers"],
      [30, 6, 23.25, 1],
    ];
    const alternates = [
      ["", "Thin bottom", "Thick bottom", "Close fronts"],
      ["bottom thickness", "1/4", "1/2", "1/4"],
      ["front gap", "1/8", "", "1/32"],
      ["space below", "0", "", ""],
    ];
    const rows = ALTERNATES(openings, alternates, [
      ["Length", "Width"],
      [96, 48],
    ]);
    const firsts = column(rows, "First finding");
    expect(firsts[0]).toMatch(/^The bottom, 1\/4 in thick, sags/);
    expect(firsts[1]).not.toBe(firsts[0]);
    expect(firsts[2]).toBe(firsts[0]);
  });

  test("inside volume is width × depth × height of every box in cubic feet, and what is gained or lost against the base", () => {
    const volumes = ALONE.map((own) =>
      PLAN(OPENINGS, own)
        .slice(1)
        .reduce((sum, row) => sum + ((row[11] as number) * (row[12] as number) * (row[13] as number)) / 1728, 0),
    );
    const rows = compare();
    column(rows, "Inside volume").forEach((volume, i) => expect(volume).toBeCloseTo(volumes[i]!, 9));
    column(rows, "Volume against base").forEach((more, i) => expect(more).toBeCloseTo(volumes[i]! - volumes[0]!, 9));
    const total = column(rows, "Total") as number[];
    expect(column(rows, "Total against base")).toEqual(total.map((own) => Math.round((own - total[0]!) * 100) / 100));
    expect(volumes[1]).toBeLessThan(volumes[0]!);
  });

  test("copies of a cabinet count, and metric jobs have liters", () => {
    const [row] = ALTERNATES(
      [
        ["Width", "Height", "Depth", "Drawers", "Quantity"],
        [450, 300, 600, 1, 3],
      ],
      [
        ["", "One", "Two"],
        ["unit", "mm", ""],
        ["side thickness", 12, 15],
      ],
      [
        ["Length", "Width"],
        [2440, 1220],
      ],
    ).slice(1);
    const [plan] = PLAN(
      [
        ["Width", "Height", "Depth", "Drawers"],
        [450, 300, 600, 1],
      ],
      [["unit", "mm"]],
    ).slice(1) as number[][];
    expect(row!.slice(0, 2)).toEqual(["One", 3]);
    expect(row![5]).toBeCloseTo((3 * plan![11]! * plan![12]! * plan![13]!) / 1e6, 9);
  });

  test("a numeric 0 is a blank, as hosts pass one, and takes the base's value; none is zero", () => {
    const [, base, zero, none] = compare([
      ["", "Base", "Zero", "None"],
      ["front gap", "1/2", 0, "none"],
      ["height step", "1/4", 0, 0],
    ]);
    expect(zero!.slice(1)).toEqual(base!.slice(1));
    expect(none![5]).not.toBe(base![5]);
  });

  test("without rates there are no costs, and stock needs no price", () => {
    const rows = ALTERNATES(
      OPENINGS,
      SIDES,
      STOCK.map((row) => row.slice(0, 3)),
    );
    expect(column(rows, "Total")).toEqual(["", "", ""]);
    expect(column(rows, "Total against base")).toEqual(["", "", ""]);
    expect(column(rows, "Sheets")).toEqual(column(compare(), "Sheets"));
  });

  test("without rates solid stock needs no price either", () => {
    const boards = (price: unknown) => [
      ["Material", "Thickness", "Length", "Width", "Price", "Sold by"],
      ["Plywood", "1/4", 96, 48, price, ""],
      ["Plywood", "1/2", 96, 48, price, ""],
      ["Cherry", 1, "", "", price, "board foot"],
    ];
    const fronts = [
      ["", "Plywood", "Cherry"],
      ["front material", "", "Cherry"],
      ["front thickness", "1/2", "3/4"],
    ];
    const free = ALTERNATES(OPENINGS, fronts, boards(""));
    expect(column(free, "Sheets")).toEqual(column(ALTERNATES(OPENINGS, fronts, boards(9), RATES), "Sheets"));
    expect([column(free, "Total"), messageOf(ALTERNATES(OPENINGS, fronts, boards(""), RATES)[2]![3])]).toEqual([
      ["", ""],
      expect.stringMatching(/^#VALUE! stock, row \d has no price/),
    ]);
  });

  test("an alternate that cannot be planned gives error cells and the reason, and the others are right", () => {
    const rows = compare([
      ["", "Base", "No slide", "Nonsense", "Thick"],
      ["height step", "1/4", "", "", ""],
      ["slide lengths", "", 40, "", ""],
      ["front style", "", "", "painted", ""],
      ["side thickness", "", "", "", "3/4"],
    ]);
    expect(messageOf(rows[2]![1])).toMatch(/^#N\/A Opening A: No slide fits/);
    expect(rows[2]!.slice(7)).toEqual([3, expect.any(Number), expect.stringMatching(/^Opening A: No slide fits/)]);
    expect(rows[3]![9]).toBe(
      'standards, front style is "painted". It can be "overlay", "inset", "integral", "lipped".',
    );
    expect(rows[4]!.slice(1)).toEqual(compare()[2]!.slice(1));
  });

  test("an alternate whose material is not in stock, or has no price, says so", () => {
    const rows = compare([
      ["", "Plywood", "Walnut"],
      ["front material", "", "Walnut"],
    ]).slice(1);
    // Stock without a material serves every material.
    expect(rows[1]![3]).toBe(rows[0]![3]);
    const named = ALTERNATES(
      OPENINGS,
      [
        ["", "Plywood", "Walnut"],
        ["front material", "", "Walnut"],
      ],
      STOCK.map((row, i) => [...row, i === 0 ? "Material" : "Plywood"]),
      RATES,
    );
    expect(named[1]![3]).toBe(rows[0]![3]);
    expect(named[2]![9]).toMatch(/^Front of A1 finds no stock of Walnut 3\/4 in thick\.$/);
  });

  test("where the base fails, the others stand without a comparison", () => {
    const rows = compare([
      ["", "No slide", "Slide"],
      ["slide lengths", 40, "20; 22"],
    ]);
    expect(rows[2]![3]).toEqual(expect.any(Number));
    expect([rows[2]![4], rows[2]![6]]).toEqual(["", ""]);
  });

  test.each<[string, unknown[][], string]>([
    [
      "no row of names",
      [["side thickness", "1/2", "3/4"]],
      "standards needs a first row with the alternates' names, its first cell blank: one column an alternate, the first the base.",
    ],
    [
      "one alternate",
      [
        ["", "Lone"],
        ["kerf", "1/8"],
      ],
      "standards has fewer than two alternates, one column each.",
    ],
    [
      "a column without a name",
      [
        ["", "Base", ""],
        ["kerf", "1/8", "3/32"],
      ],
      "standards, column 3 has no name in its first row.",
    ],
    [
      "a name twice",
      [
        ["", "Base", "base"],
        ["kerf", "1/8", "3/32"],
      ],
      "standards has the heading Base twice.",
    ],
    [
      "a standard that is none",
      [
        ["", "A", "B"],
        ["kurf", 1, 2],
      ],
      'standards, row 2 has the name "kurf", which is none. The nearest is "kerf".',
    ],
    [
      "two units",
      [
        ["", "A", "B"],
        ["unit", "in", "mm"],
      ],
      "standards: all alternates need one unit, for they share openings and stock.",
    ],
  ])("%s is refused", (_, standards, message) => expectValueError(() => compare(standards), message));

  test("an error that comes in is handed on", () => {
    expect(shown(() => ALTERNATES(ONE_DRAWER, SIDES, [["Length", "#REF!"]], RATES))).toMatch(/^#VALUE! .*#REF!/);
  });
});
