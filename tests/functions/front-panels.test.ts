import { describe, expect, test } from "vitest";
import { CHECKS, CUTS, LAYOUT, PARTS, PIECES, QUOTE, SETUPS, SHEETS, WORKING } from "../../src/functions";
import { records } from "../laws/jobs";
import { shown } from "../cell";
import { FREE, rates } from "./money";
import { openings } from "./tables";

const two = openings(["A", 18, 20, 20.5, 2], ["B", 24, 20, 20.5, 2]);
const PANEL = ["front match", "panel"];
const HORIZONTAL = ["front grain", "horizontal"];
const quick = "quick" as never;

const stock = (length: unknown, width: unknown, more: Record<string, unknown> = {}) => [
  ["Thickness", "Length", "Width", "Price", ...Object.keys(more)],
  [0.25, 96, 96, 0.001, ...Object.keys(more).map(() => "")],
  [0.5, 96, 96, 0.001, ...Object.keys(more).map(() => "")],
  [0.75, length, width, 50, ...Object.values(more)],
];
const fronts = (table: unknown[][], standards: unknown[][]) =>
  records(PARTS(table, standards)).filter((row) => row["Part"] === "Front");
const told = (rows: Record<string, unknown>[], ...columns: string[]) =>
  rows.map((row) => columns.map((column) => row[column]));

/** Of the fronts alone, but for their pulls. */
const steps = (table: unknown[][], standards: unknown[][]) =>
  SETUPS(table, standards)
    .filter((row) => String(row[5]).startsWith("Front") && row[1] !== "Pull holes")
    .map((row) => row.slice(1));
const laid = (standards: unknown[][], sheets: unknown[][]) =>
  told(
    records(LAYOUT(PARTS(two, standards), sheets, "1/8", 0, quick)).filter((row) => row["Part"] === "Front"),
    "Drawer",
    "From left",
    "From bottom",
    "Turned",
  );

/**
 * Worked by hand. Openings of 18 and 24 behind one partition of 3/4, the outer reveals 1/16, the gap 1/8: fronts are
 * 18 + 11/16 + (3/4 − 1/8) / 2 = 19 and 25 wide, and (20 + 3/4 + 3/4 − 1/8 − 1/8) / 2 = 10 5/8 high. All four are one panel
 * of 19 + 1/8 + 25 = 44 1/8 by 10 5/8 + 1/8 + 10 5/8 = 21 3/8. Common practice: grain that runs on both ways over a bank of
 * drawers is that of one panel, cut in the order in which its fronts hang.
 */
describe("the fronts of a cabinet as one panel", () => {
  test("are one grain group, whose lines run along the grain: columns from the left, or rows from the bottom", () => {
    expect(told(fronts(two, [PANEL]), "Drawer", "Length", "Width", "Grain group", "Grain line")).toEqual([
      ["A1", 10.625, 19, "A1 to B2", 1],
      ["A2", 10.625, 19, "A1 to B2", 1],
      ["B1", 10.625, 25, "A1 to B2", 2],
      ["B2", 10.625, 25, "A1 to B2", 2],
    ]);
    expect(told(fronts(two, [PANEL, HORIZONTAL]), "Drawer", "Length", "Width", "Grain line")).toEqual([
      ["A1", 19, 10.625, 2],
      ["A2", 19, 10.625, 1],
      ["B1", 25, 10.625, 2],
      ["B2", 25, 10.625, 1],
    ]);
  });

  test("tell what hangs between them each way, where that is more than the saw takes", () => {
    expect(Object.keys(fronts(two, [PANEL])[0]!).slice(-2)).toEqual(["Grain group", "Grain line"]);
    // A partition of 3/4 and two inset gaps of 3/32 from column to column: 15/16; from row to row the gap of 1/4.
    const apart = [PANEL, ["front style", "inset"], ["front gap", "1/4"]];
    expect(told(fronts(two, apart), "Grain gap", "Line gap")).toEqual(Array.from({ length: 4 }, () => [0.25, 0.9375]));
    expect(told(fronts(two, [...apart, HORIZONTAL]), "Grain gap", "Line gap")[0]).toEqual([0.9375, 0.25]);
  });

  test("lie on the sheet as they hang, the whole turned by a quarter where their grain is upright", () => {
    // Down the cabinet is along the sheet, and the right of the cabinet is up.
    expect(laid([PANEL], stock(21.375, 44.125))).toEqual([
      ["A1", 0, 0, false],
      ["A2", 10.75, 0, false],
      ["B1", 0, 19.125, false],
      ["B2", 10.75, 19.125, false],
    ]);
    expect(laid([PANEL, HORIZONTAL], stock(44.125, 21.375))).toEqual([
      ["A2", 0, 0, false],
      ["B2", 19.125, 0, false],
      ["A1", 0, 10.75, false],
      ["B1", 19.125, 10.75, false],
    ]);
  });

  test("keep the inset gaps between them on the sheet", () => {
    const inset = [PANEL, HORIZONTAL, ["front style", "inset"], ["front gap", "1/4"]];
    // 18 − 3/16 + 15/16 is 18 3/4. 20 − 3/16 − 1/4 is 19 9/16, in whole 16ths 9 3/4 and 9 13/16; 9 13/16 + 1/4 is 10 1/16.
    expect(laid(inset, stock(42.5625, 19.8125))).toEqual([
      ["A2", 0, 0, false],
      ["B2", 18.75, 0, false],
      ["A1", 0, 10.0625, false],
      ["B1", 18.75, 10.0625, false],
    ]);
  });

  test("of three columns and two rows fill their panel to the last 64th", () => {
    // The middle column, between two partitions: 12 + 5/16 + 5/16 = 12 5/8; 19 + 1/8 + 12 5/8 + 1/8 + 25 = 56 7/8.
    const three = openings(["A", 18, 20, 20.5, 2], ["B", 12, 20, 20.5, 2], ["C", 24, 20, 20.5, 2]);
    const sheets = (length: unknown, width: unknown) =>
      records(SHEETS(PARTS(three, [PANEL, HORIZONTAL]), stock(length, width), "1/8", 0, quick));
    expect(sheets(56.875, 21.375).at(-1)).toMatchObject({ Thickness: 0.75, Sheets: 1, Parts: 6 });
    expect(() => sheets("56 55/64", 21.375)).toThrow();
    expect(() => sheets(56.875, "21 23/64")).toThrow();
  });

  test("with upright grain are ripped into columns from the left, and each is crosscut from the top", () => {
    expect(steps(two, [PANEL])).toEqual([
      ["Set aside", "Length along the grain, cuts between fronts included", 21.375, 1, "Front A1, A2, B1, B2"],
      ["Set aside", "Length across the grain, cuts between fronts included", 44.125, 1, "Front A1, A2, B1, B2"],
      ["Set aside", "To cut away between two fronts, kerf included", 0.125, 1, "Front A1, A2, B1, B2"],
      ["Rip", "Fence, in order from the left", 19, 1, "Front A1, A2"],
      ["Rip", "Fence, in order from the left", 25, 1, "Front B1, B2"],
      ["Crosscut", "Stop, in order from the top", 10.625, 4, "Front A1, B1, A2, B2"],
    ]);
  });

  test("with grain from side to side are ripped into rows from the bottom, and each is crosscut from the left", () => {
    const rows = steps(two, [PANEL, HORIZONTAL, ["front style", "inset"], ["front gap", "1/4"]]);
    expect(rows).toEqual([
      ["Set aside", "Length along the grain, cuts between fronts included", 42.5625, 1, "Front A2, B2, A1, B1"],
      ["Set aside", "Length across the grain, cuts between fronts included", 19.8125, 1, "Front A2, B2, A1, B1"],
      ["Set aside", "To cut away between two fronts, kerf included", 0.25, 1, "Front A2, B2, A1, B1"],
      ["Set aside", "To cut away between two fronts, kerf included", 0.9375, 1, "Front A2, B2, A1, B1"],
      ["Rip", "Fence, in order from the bottom", 9.8125, 1, "Front A2, B2"],
      ["Rip", "Fence, in order from the bottom", 9.75, 1, "Front A1, B1"],
      ["Crosscut", "Stop, in order from the left", 17.8125, 2, "Front A2, A1"],
      ["Crosscut", "Stop, in order from the left", 23.8125, 2, "Front B2, B1"],
    ]);
  });

  test("CUTS rips the panel in the same order, and crosscuts its lines", () => {
    const cuts = (standards: unknown[][], sheets: unknown[][]) =>
      records(CUTS(PARTS(two, standards), sheets, "1/8", 0, quick))
        .filter((row) => row["Thickness"] === 0.75)
        .map((row) => [row["Cut"], row["Setting"]]);
    // What is left of the first rip is the second column: 44 1/8 − 19 − 1/8 = 25.
    expect(cuts([PANEL], stock(21.375, 44.125))).toEqual([
      ["rip", 19],
      ["crosscut", 10.625],
      ["crosscut", 10.625],
    ]);
    // The second rip takes off what is more than a kerf between the rows: 1/4 − 1/8.
    expect(
      cuts([PANEL, HORIZONTAL, ["front style", "inset"], ["front gap", "1/4"]], stock(42.5625, 19.8125)).slice(0, 3),
    ).toEqual([
      ["rip", 9.8125],
      ["rip", 9.75],
      ["crosscut", 17.8125],
    ]);
  });

  test("PIECES gives each copy of a cabinet a panel of its own", () => {
    const twice = two.map((row, i) => [...row, i === 0 ? "Quantity" : 2]);
    const pieces = records(PIECES(twice, [PANEL])).filter((row) => row["Part"] === "Front");
    expect(told(pieces, "Drawer", "Grain group", "Grain line").slice(0, 2)).toEqual([
      ["A1", "A1 to B2, copy 1", 1],
      ["A1", "A1 to B2, copy 2", 1],
    ]);
    // Two panels of 44 1/8 above each other, a kerf between.
    for (const parts of [PARTS(twice, [PANEL]), PIECES(twice, [PANEL])])
      expect(records(SHEETS(parts, stock(21.375, 88.375), "1/8", 0, quick)).at(-1)!["Sheets"]).toBe(1);
    expect(steps(twice, [PANEL]).map((row) => [row[2], row[3]])).toEqual([
      [21.375, 2],
      [44.125, 2],
      [0.125, 2],
      [19, 2],
      [25, 2],
      [10.625, 8],
    ]);
  });

  test("WORKING tells the strip that a front is cut from, and the width of the panel", () => {
    const rows = WORKING(two, "B1", [PANEL]).filter(([name]) => /^Front (strip|panel)/.test(String(name)));
    const between = "and between them 1 × 1/8, the kerf or what lies between the cut fronts once they hang";
    expect(rows).toEqual([
      ["Front panel width", 44.125, `19 + 25, ${between}`],
      ["Front strip", 21.375, `10 5/8 + 10 5/8, ${between}`],
    ]);
  });

  test("a quote buys the sheet that takes the panel, and one that is too narrow is refused", () => {
    expect(QUOTE(two, [PANEL], stock(21.375, 44.125), rates(FREE))).toContainEqual([
      "Sheets",
      "Plywood, 3/4 in, 21 3/8 × 44 1/8 in",
      1,
      "sheet",
      50,
      50,
    ]);
    const narrow = stock(21.375, 44);
    const refused = 'The parts of grain group "A1 to B2" in one piece fit no sheet of their stock.';
    expect(shown(() => QUOTE(two, [PANEL], narrow, rates(FREE)))).toContain(refused);
    expect(shown(() => SHEETS(PARTS(two, [PANEL]), narrow, "1/8", 0, quick))).toContain(refused);
    expect(CHECKS(two, [PANEL], narrow).filter((row) => row[1] === "wrong")).toEqual([
      ["A1", "wrong", refused, "Take a larger sheet, or let the grain run the other way."],
    ]);
  });

  const GRID =
    "The fronts of this cabinet are no grid of two by two or more, each row of one height, level and stock: their grain does not run on both ways.";
  const REMEDY = "Give the openings fronts of the same heights, or front match none or opening.";

  test.each<[string, unknown[][], string]>([
    ["one column", openings(["A", 18, 20, 20.5, 2]), "A1, A2"],
    ["one row", openings(["A", 18, 20, 20.5, 1], ["B", 24, 20, 20.5, 1]), "A1, B1"],
    ["unlike heights", openings(["A", 18, 20, 20.5, 2], ["B", 24, 20, 20.5, "5; 1 part"]), "A1, A2, B1, B2"],
    ["unlike numbers", openings(["A", 18, 20, 20.5, 2], ["B", 24, 20, 20.5, 3]), "A1, A2, B1, B2, B3"],
    [
      "an opening that is not to match",
      [
        [...two[0]!, "Front match"],
        ["A", 18, 20, 20.5, 2, ""],
        ["B", 18, 20, 20.5, 2, ""],
        ["C", 18, 20, 20.5, 2, "none"],
      ],
      "A1, B1, A2, B2",
    ],
    [
      "fronts of two materials",
      [
        [...two[0]!, "Front material"],
        ["A", 18, 20, 20.5, 2, "Oak"],
        ["B", 24, 20, 20.5, 2, "Ash"],
      ],
      "A1, A2, B1, B2",
    ],
  ])("are no panel where they are no grid, and CHECKS says so: %s", (_, table, where) => {
    expect(fronts(table, [PANEL])[0]).not.toHaveProperty("Grain group");
    expect(CHECKS(table, [PANEL]).filter(([, , found]) => /grain does not/.test(String(found)))).toEqual([
      [where, "doubtful", GRID, REMEDY],
    ]);
  });

  test("a kerf wider than the gap is told for each way, once where both ways are alike", () => {
    const tight = (...standards: unknown[][]) =>
      CHECKS(two, [PANEL, ["front gap", "1/16"], ...standards])
        .filter(([, , found]) => /kerf/.test(String(found)))
        .map((row) => [row[0], row[2]]);
    const finding = (gap: string, jump: string) => [
      "A1, A2, B1, B2",
      `The kerf of 1/8 in is wider than the front gap of ${gap} in: the grain jumps by ${jump} in from front to front.`,
    ];
    expect(tight()).toEqual([finding("1/16", "1/16")]);
    // Bands of 1/64 at the upper edges add to what lies between rows alone.
    expect(tight(["top edge band", "1/64"])).toEqual([finding("1/16", "1/16"), finding("5/64", "3/64")]);
  });
});
