import { describe, expect, test } from "vitest";
import { CHECKS, OPENINGS, PLAN, PRICE, WORKING } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { FREE, rates, sheetsAt } from "./money";
import { column } from "./tables";

/** An invented seed bank's benches. */
const cabinets = (...rows: unknown[][]): unknown[][] => [
  ["Cabinet", "Width", "Height", "Depth", "Columns", "Drawers"],
  ...rows,
];
const outside = (table: unknown[][], drawer: string, standards?: unknown[][]) =>
  WORKING(OPENINGS(table, standards), drawer, standards)
    .filter(([size]) => /outside/.test(String(size)))
    .map(([size, value]) => [size, value]);

describe("OPENINGS(cabinets, [standards])", () => {
  test("gives the openings of each cabinet from its outside sizes, left to right", () => {
    expect(OPENINGS(cabinets(["Seeds", 49.5, 34.5, 24, 3, 4]))).toEqual([
      [
        "Opening",
        "Cabinet",
        "Width",
        "Height",
        "Depth",
        "Drawers",
        "Quantity",
        "Case width",
        "Toe kick",
        "Back thickness",
        "Back inset",
      ],
      ["Seeds A", "Seeds", 15.5, 33, 23.75, 4, "", "", "", 0.25, ""],
      ["Seeds B", "Seeds", 15.5, 33, 23.75, 4, "", "", "", 0.25, ""],
      ["Seeds C", "Seeds", 15.5, 33, 23.75, 4, "", "", "", 0.25, ""],
    ]);
  });

  test("columns of fixed widths that fill the cabinet stand as they are", () => {
    const table = cabinets(["Seeds", 36, 34.5, 24, "20; 13 3/4", 4]);
    expect(column(OPENINGS(table), "Width")).toEqual([20, 13.75]);
    expect(outside(table, "Seeds A1")).toContainEqual(["Cabinet outside width", 36]);
  });

  test("a frameless cabinet loses two ends, its partitions, toe kick, top, bottom, back and inset", () => {
    const table = [
      [
        "Width",
        "Height",
        "Depth",
        "Columns",
        "Drawers",
        "Toe kick",
        "Back thickness",
        "Back inset",
        "Partition thickness",
      ],
      [48, 34.5, 24, "12; 1 part; 2 parts", 3, 4, "1/2", "3/4", "1/2"],
    ];
    const spilled = OPENINGS(table);
    // 48 less 2 × 3/4 and 2 × 1/2 is 45 1/2; less 12, a third of 33 1/2 and two thirds of it.
    expect(column(spilled, "Width").map((width) => (width as number) * 6)).toEqual([72, 67, 134]);
    expect(column(spilled, "Height")).toEqual([29, 29, 29]);
    expect(column(spilled, "Depth")).toEqual([22.75, 22.75, 22.75]);
  });

  test("a face frame puts its stiles and rails in the place of ends, top and bottom, and is part of the depth", () => {
    const table = cabinets(["F", 36, 34.5, 24, 2, 3]);
    const frame = [["construction", "face frame"]];
    expect(column(OPENINGS(table, frame), "Width")).toEqual([15.75, 15.75]);
    expect(column(OPENINGS(table, frame), "Height")).toEqual([31.5, 31.5]);
    expect(column(OPENINGS(table, frame), "Depth")).toEqual([23.75, 23.75]);
    const own = [...frame, ["stile width", 2], ["rail width", "1 3/4"], ["toe kick", 4]].slice(0, 3);
    expect(column(OPENINGS(table, own), "Width")).toEqual([15, 15]);
    expect(column(OPENINGS(table, own), "Height")).toEqual([31, 31]);
  });

  test("stiles between openings follow a partition thickness that was typed alone, those at the ends do not", () => {
    const table = cabinets(["F", 36, 34.5, 24, 2, 3]);
    const frame = [
      ["construction", "face frame"],
      ["partition thickness", 1],
    ];
    expect(column(OPENINGS(table, frame), "Width")).toEqual([16, 16]);
  });

  test("the case's inside stands behind a frame where it is alike at both sides of an opening", () => {
    const frame = [["construction", "face frame"]];
    expect(column(OPENINGS(cabinets(["F", 24, 34.5, 24, 1, 3]), frame), "Case width")).toEqual([22.5]);
    // The ends hide 3/4, the partition behind a stile of 1 1/2 hides half of 3/4 of it: 3/8.
    expect(column(OPENINGS(cabinets(["F", 60, 34.5, 24, 3, 3]), frame), "Case width")).toEqual(["", 18.75, ""]);
    expect(column(OPENINGS(cabinets(["F", 24, 34.5, 24, 1, 3])), "Case width")).toEqual([""]);
  });

  test("in millimeters with their own defaults, and a heading's unit counts for its plain numbers", () => {
    const mm = [["unit", "mm"]];
    const spilled = OPENINGS(cabinets(["M", 1200, 720, 560, 2, 4]), mm);
    expect(spilled[1]!.slice(2, 5)).toEqual([573, 684, 554]);
    const marked = [
      ["Cabinet", "Width (mm)", "Height (cm)", "Depth (mm)", "Columns", "Drawers (mm)", "Front gap (mm)"],
      ["M", 1200, 72, 560, 2, "140; 1 part", 4],
    ];
    expect(OPENINGS(marked)[0]!.slice(5)).toEqual([
      "Drawers (mm)",
      "Quantity",
      "Case width",
      "Toe kick",
      "Back thickness",
      "Back inset",
      "Front gap (mm)",
    ]);
    const heights = column(PLAN(OPENINGS(marked)), "Front height");
    expect(heights[0]).toBe(140 / 25.4);
    expect(column(PLAN(OPENINGS(marked)), "Drawer")).toEqual(["M A1", "M A2", "M B1", "M B2"]);
  });

  test("labels: a cabinet of one opening gives it its name, of several its name and a letter", () => {
    const spilled = OPENINGS(cabinets(["Left", 20, 30, 20, 1, 3], [7, 40, 30, 20, 2, 3]));
    expect(column(spilled, "Opening")).toEqual(["Left", "7 A", "7 B"]);
    expect(column(spilled, "Cabinet")).toEqual(["Left", "7", "7"]);
    expect(column(PLAN(spilled), "Drawer").slice(0, 4)).toEqual(["Left1", "Left2", "Left3", "7 A1"]);
  });

  test("cabinets without a name get the next number, and their openings the next letters", () => {
    const spilled = OPENINGS(
      cabinets(["", 40, 30, 20, 2, 3], [1, 20, 30, 20, 1, 3], ["B", 20, 30, 20, 1, 3], ["", 20, 30, 20, 1, 3]),
    );
    expect(column(spilled, "Cabinet")).toEqual(["2", "2", "1", "B", "3"]);
    expect(column(spilled, "Opening")).toEqual(["A", "C", "1", "B", "D"]);
  });

  test("blanks stay blanks, and standards and box heights are handed on as they were typed", () => {
    const table = [
      [
        "Cabinet",
        "Width",
        "Height",
        "Depth",
        "Columns",
        "Drawers",
        "Quantity",
        "Side thickness",
        "Box heights",
        "SLIDE",
        "Front gap",
      ],
      ["A", 40, 30, 20, 2, "1 part; 2 parts", 3, "5/8", "6", "undermount", "3/32"],
      ["B", 20, 30, 20, 1, 2, 0, null, "", 0, null],
    ];
    const spilled = OPENINGS(table);
    expect(spilled[0]!.slice(11)).toEqual(["Side thickness", "Box heights", "Slide", "Front gap"]);
    expect(spilled.slice(1).map((row) => [row[5], row[6], ...row.slice(11)])).toEqual([
      ["1 part; 2 parts", 3, "5/8", "6", "undermount", "3/32"],
      ["1 part; 2 parts", 3, "5/8", "6", "undermount", "3/32"],
      [2, "", "", "", "", ""],
    ]);
  });

  test("a 0 where zero could be meant is handed on, so that CHECKS says how it is read", () => {
    const table = [
      [...cabinets()[0]!, "Front gap", "Slide"],
      ["A", 40, 34.5, 24, 1, 3, 0, 0],
    ];
    expect(OPENINGS(table)[1]!.slice(11)).toEqual([0, ""]);
    expect(column(CHECKS(OPENINGS(table)), "Finding")[0]).toBe("The 0 under Front gap is read as a blank.");
  });

  test("a cabinet's left and right reveal go to its first and its last opening", () => {
    const table = [
      ["Cabinet", "Width", "Height", "Depth", "Columns", "Drawers", "Left reveal", "Right reveal"],
      ["A", 60, 30, 23, 3, 2, "1/8", "-3/4"],
    ];
    const spilled = OPENINGS(table);
    expect([column(spilled, "Left reveal"), column(spilled, "Right reveal")]).toEqual([
      ["1/8", "", ""],
      ["", "", "-3/4"],
    ]);
    expect(JSON.stringify(CHECKS(spilled))).not.toContain("has no effect");
  });

  test("what it spills is read by the plan without a finding of its own", () => {
    const table = [
      [...cabinets()[0]!, "Toe kick", "Back inset", "Quantity"],
      ["A", 40, 34.5, 24, 2, 3, 4, "3/4", 2],
    ];
    expect(CHECKS(OPENINGS(table))[1]![2]).not.toMatch(/not read|read as a blank/);
    expect(
      CHECKS(OPENINGS(table), [
        ["side thickness", "15/32"],
        ["bottom thickness", "7/32"],
        ["groove depth", "3/16"],
      ]).slice(1),
    ).toEqual([["", "", "All clear", ""]]);
  });

  test("a heading that nobody knows is handed on, so that CHECKS names it", () => {
    const table = [
      [...cabinets()[0]!, "Client"],
      ["A", 40, 34.5, 24, 2, 3, "Ms Hollow"],
    ];
    expect(column(CHECKS(OPENINGS(table)), "Finding")).toContain("The column Client is not read.");
  });

  test("the outside comes back exactly in WORKING, whatever the construction", () => {
    const table = [
      [...cabinets()[0]!, "Toe kick", "Back thickness", "Back inset"],
      ["A", "47 13/32", 34.5, "23 5/8", "1 part; 11 3/8; 2 parts", 3, "4 1/4", "7/32", "1/2"],
    ];
    const sizes = [
      ["Cabinet outside width", 47.40625],
      ["Cabinet outside height", 34.5],
      ["Cabinet outside depth", 23.625],
    ];
    expect(outside(table, "A B2")).toEqual(sizes);
    expect(outside(table, "A A1", [["construction", "face frame"]])).toEqual(sizes);
    const how = WORKING(OPENINGS(table), "A A1").filter(([size]) => /outside/.test(String(size)));
    expect(how[1]![2]).toBe("opening height 28 3/4 + 2 × cabinet thickness 3/4 + toe kick 4 1/4");
    expect(how[2]![2]).toBe("opening depth 22 29/32 + back thickness 7/32 + back inset 1/2");
  });

  test("a cabinet without a back says so by the word none", () => {
    const table = [
      [...cabinets()[0]!, "Back thickness"],
      ["A", 40, 34.5, 24, 1, 3, "none"],
    ];
    expect(OPENINGS(table)[1]!.slice(4, 10)).toEqual([24, 3, "", "", "", "none"]);
    expect(outside(table, "A1")[2]).toEqual(["Cabinet outside depth", 24]);
  });

  test("a width that no double tells from its neighbors stands as a text, so that nothing is lost", () => {
    const spilled = OPENINGS(cabinets(["A", 1201, 720, 560, "1 part; 1.23457 parts", 4]), [["unit", "mm"]]);
    expect(column(spilled, "Width")[0]).toBe("513 66559/223457 mm");
    expect(outside(cabinets(["A", 1201, 720, 560, "1 part; 1.23457 parts", 4]), "A A1", [["unit", "mm"]])[0]).toEqual([
      "Cabinet outside width",
      1201,
    ]);
  });

  test("a grid over widths and columns is one formula a cell: PRICE of OPENINGS", () => {
    const price = (width: number, columns: number) =>
      PRICE(
        OPENINGS(cabinets(["A", width, 34.5, 24, columns, 3])),
        [],
        sheetsAt(60),
        rates({ ...FREE, "slide price": 10 }),
      );
    expect(price(36, 2) - price(36, 1)).toBeGreaterThanOrEqual(30);
    const grid = [36, 48].map((width) => [1, 2, 3].map((columns) => price(width, columns)));
    for (const row of grid) expect(row).toEqual([...row].sort((a, b) => a - b));
  });
});

describe("OPENINGS refuses, and names the row and the column", () => {
  test.each([
    [
      ["A", "wide", 34, 24, 1, 3],
      'cabinets, row 2, Width is "wide", which is no length. Write a number, or a text such as 23 7/16, 1\' 11 7/16" or 595 mm.',
    ],
    [
      ["A", "", 34, 24, 1, 3],
      "cabinets, row 2, Width is blank. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16\" or 595 mm.",
    ],
    [
      ["A", 30, 34, 24, "", 3],
      "cabinets, row 2, Columns is blank. It needs a count of columns, or a list such as 18; 1 part; 2 parts.",
    ],
    [
      ["A", 30, 34, 24, 101, 3],
      'cabinets, row 2, Columns is 101. A lone whole number is a count of columns, from 1 to 100; one column of a fixed width has its mark, as 18" or 450 mm.',
    ],
    [
      ["A", 30, 34, 24, "1 bit", 3],
      'cabinets, row 2, Columns, item 1 is "1 bit". It can be a length, as 5 1/2, or parts of what is left, as 2 parts; a count stands alone.',
    ],
    [
      ["A", 30, 34, 24, 1, "few"],
      'cabinets, row 2, Drawers, item 1 is "few". It can be a length, as 5 1/2, or parts of what is left, as 2 parts; a count stands alone.',
    ],
    [
      ["A", 1.5, 34, 24, 1, 3],
      "cabinets, row 2, Width is 1 1/2 in, of which ends and partitions, 1 1/2 in, leave no opening.",
    ],
    [
      ["A", 30, 1, 24, 1, 3],
      "cabinets, row 2, Height is 1 in, of which toe kick, top and bottom, 1 1/2 in, leave no opening.",
    ],
    [
      ["A", 30, 34, "1/8", 1, 3],
      "cabinets, row 2, Depth is 1/8 in, of which back and back inset, 1/4 in, leave no opening.",
    ],
    [
      ["A", 30, 34, 24, "20; 10", 3],
      "cabinets, row 2, Columns asks for fixed widths of 30 in in all. There is room for 27 3/4 in.",
    ],
    [
      ["A", 30, 34, 24, "20; 7 3/4; 1 part", 3],
      "cabinets, row 2, Columns asks for fixed widths of 27 3/4 in in all, which leave nothing for the columns in parts: there is room for 27 in.",
    ],
    [
      ["A", 30, 34, 24, "20; 7", 3],
      "cabinets, row 2, Columns asks for fixed widths of 27 in in all. There is room for 27 3/4 in: give one column as 1 part, and it takes the rest.",
    ],
  ])("%j", (row, message) => expectValueError(() => OPENINGS(cabinets(row)), message));

  test("standards that are no such value, and rows of one name", () => {
    const table = (value: unknown) => [
      [...cabinets()[0]!, "Side thickness"],
      ["A", 30, 34, 24, 1, 3, ""],
      ["B", 30, 34, 24, 1, 3, value],
    ];
    expectValueError(
      () => OPENINGS(table("thick")),
      'cabinets, row 3, Side thickness is "thick", which is no length. Write a number, or a text such as 23 7/16, 1\' 11 7/16" or 595 mm.',
    );
    expect(shown(() => OPENINGS(cabinets(["A", 30, 34, 24, 1, 3], ["a", 30, 34, 24, 1, 3])))).toBe(
      '#VALUE! cabinets has two cabinets "a", in rows 2 and 3.',
    );
    expect(shown(() => OPENINGS(cabinets(["A", 30, 34, 24, 2, 3], ["A B", 30, 34, 24, 1, 3])))).toBe(
      '#VALUE! cabinets has two openings "A B", in rows 2 and 3.',
    );
  });

  test("a table without its headings, and more openings than are planned at once", () => {
    expectValueError(
      () =>
        OPENINGS([
          ["Width", "Height"],
          [30, 34],
        ]),
      "cabinets lacks the headings Depth, Columns, Drawers.",
    );
    expectValueError(
      () => OPENINGS(null as never),
      "cabinets is blank. It needs a header row with Width, Height, Depth, Columns, Drawers.",
    );
    const many = Array.from({ length: 51 }, (_, i) => [`K${i}`, 3000, 34, 24, 100, 1]);
    expectValueError(
      () => OPENINGS(cabinets(...many)),
      "cabinets has 5,100 openings. At most 5,000 are planned at once.",
    );
  });
});
