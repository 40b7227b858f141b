import { describe, expect, test } from "vitest";
import { CHECKS, LAYOUT, PARTS, PIECES, QUOTE, SETUPS, SHEETS, WORKING } from "../../src/functions";
import { num, records } from "../laws/jobs";
import { shown } from "../cell";
import { FREE, rates } from "./money";
import { column, openings } from "./tables";

const two = openings(["A", 18, 20, 20.5, 2], ["B", 24, 20, 20.5, 2]);
const MATCHED = ["front match", "cabinet"];
const HORIZONTAL = ["front grain", "horizontal"];
const STOCK = [
  ["Thickness", "Length", "Width"],
  [0.25, 96, 48],
  [0.5, 96, 48],
  [0.75, 96, 48],
];
const quick = "quick" as never;

const fronts = (table: unknown[][], standards: unknown[][]) =>
  records(PARTS(table, standards)).filter((row) => row["Part"] === "Front");

/** Of the fronts alone, but for their pulls. */
const steps = (table: unknown[][], standards: unknown[][]) =>
  SETUPS(table, standards)
    .filter((row) => String(row[5]).startsWith("Front") && row[1] !== "Pull holes")
    .map((row) => row.slice(1));

/**
 * Worked by hand. Openings of 18 and 24 behind one partition of 3/4, the outer reveals 1/16, the gap 1/8: fronts are
 * 18 + 11/16 + (3/4 − 1/8) / 2 = 19 and 25 wide, and (20 + 3/4 + 3/4 − 1/8 − 1/8) / 2 = 10 5/8 high. A strip of both is
 * 19 + 1/8 + 25 = 44 1/8. Common practice: fronts beside each other are cut in order from one board.
 */
describe("fronts that match across a cabinet", () => {
  test("are of one grain group a level, stacked where their grain is upright", () => {
    expect(fronts(two, [MATCHED]).map((row) => [row["Drawer"], row["Grain group"], row["Grain row"]])).toEqual([
      ["A1", "A1 to B1", "stacked"],
      ["A2", "A2 to B2", "stacked"],
      ["B1", "A1 to B1", "stacked"],
      ["B2", "A2 to B2", "stacked"],
    ]);
    expect(fronts(two, [MATCHED, HORIZONTAL])[0]).not.toHaveProperty("Grain row");
  });

  test("with grain from side to side are ripped in one strip, and crosscut in order from the left", () => {
    expect(steps(two, [MATCHED, HORIZONTAL])).toEqual([
      ["Set aside", "Length along the grain, cuts between fronts included", 44.125, 2, "Front A1, B1, A2, B2"],
      ["Set aside", "To cut away between two fronts, kerf included", 0.125, 2, "Front A1, B1, A2, B2"],
      ["Rip", "Fence", 10.625, 2, "Front A1, B1, A2, B2"],
      ["Crosscut", "Stop, in order from the left", 19, 2, "Front A1, A2"],
      ["Crosscut", "Stop, in order from the left", 25, 2, "Front B1, B2"],
    ]);
  });

  test("with upright grain the strip is crosscut once, and ripped in order from the left", () => {
    expect(steps(two, [MATCHED]).map((row) => row.slice(0, 3))).toEqual([
      ["Set aside", "Length across the grain, cuts between fronts included", 44.125],
      ["Set aside", "To cut away between two fronts, kerf included", 0.125],
      ["Crosscut", "Stop", 10.625],
      ["Rip", "Fence, in order from the left", 19],
      ["Rip", "Fence, in order from the left", 25],
    ]);
  });

  test("keep what hangs between them: gap and bands, a stile less its overlays, a partition with its inset gaps", () => {
    const strip = (...standards: unknown[][]) =>
      steps(two, [MATCHED, ...standards])
        .slice(0, 2)
        .map((row) => row[2]);
    // Gap 1/4, bands 1/16: fronts 18 15/16 − 1/8 and 24 15/16 − 1/8, between them 1/4 + 1/8.
    expect(strip(["front gap", "1/4"], ["edge band", "1/16"])).toEqual([44, 0.375]);
    // A stile of 1 1/2, overlaid by 1/2 at both sides: fronts of 19 and 25, 1/2 apart.
    expect(strip(["construction", "face frame"])).toEqual([44.5, 0.5]);
    // A partition of 3/4 and two gaps of 3/32: fronts of 17 13/16 and 23 13/16, 15/16 apart.
    expect(strip(["front style", "inset"])).toEqual([42.5625, 0.9375]);
    expect(fronts(two, [MATCHED, ["front style", "inset"]]).map((row) => row["Grain gap"])).toEqual(
      Array.from({ length: 4 }, () => 0.9375),
    );
  });

  test("the band of an edge lies where that edge is", () => {
    const apart = steps(two, [MATCHED, ["right edge band", "1/16"], ["top edge band", "1/4"]])[1]!;
    expect(apart.slice(2, 3)).toEqual([0.1875]);
  });

  test("lie on the sheet beside each other in their order", () => {
    for (const [standards, along, size] of [
      [[MATCHED], "From bottom", "Width"],
      [[MATCHED, HORIZONTAL], "From left", "Length"],
    ] as const) {
      const parts = PARTS(two, [...standards]);
      const laid = records(LAYOUT(parts, STOCK, "1/8", 0, quick)).filter((row) => row["Part"] === "Front");
      for (const level of ["1", "2"]) {
        const [a, b] = ["A", "B"].map((label) => laid.find((row) => row["Drawer"] === label + level)!);
        expect(num(b![along]) - num(a![along]) - num(a![size])).toBe(0.125);
        expect([a![size], b![size]]).toEqual([19, 25]);
      }
    }
  });

  test("only those of one level and height match; the others are told", () => {
    const uneven = openings(["A", 18, 20, 20.5, "5; 1 part"], ["B", 24, 20, 20.5, "5; 1 part; 1 part"]);
    expect(fronts(uneven, [MATCHED]).map((row) => [row["Drawer"], row["Grain group"]])).toEqual([
      ["A1", "A1 to B1"],
      ["A2", ""],
      ["B1", "A1 to B1"],
      ["B2, B3", ""],
    ]);
    expect(CHECKS(uneven, [MATCHED]).filter(([, , found]) => /grain/.test(String(found)))).toEqual([
      [
        "A2, B2, B3",
        "doubtful",
        "No front beside this one has its height and level, or is of its stock: its grain does not run on across the cabinet.",
        "Give the openings fronts of the same heights, or front match none or opening.",
      ],
    ]);
  });

  test("an opening between that does not match parts a row", () => {
    const three = [
      [...two[0]!, "Front match"],
      ["A", 18, 20, 20.5, 1, ""],
      ["B", 18, 20, 20.5, 1, "none"],
      ["C", 18, 20, 20.5, 1, ""],
      ["D", 18, 20, 20.5, 1, ""],
    ];
    expect(fronts(three, [MATCHED]).map((row) => row["Grain group"])).toEqual(["", "", "C1 to D1", "C1 to D1"]);
  });

  test("each cabinet has its own, and each copy of one", () => {
    const cabinets = [
      [...two[0]!, "Cabinet", "Quantity"],
      ["A", 18, 20, 20.5, 1, "left", 2],
      ["B", 24, 20, 20.5, 1, "left", 2],
      ["C", 18, 20, 20.5, 1, "right", 1],
    ];
    expect(column(PIECES(cabinets, [MATCHED]), "Grain group").filter((group) => group)).toEqual([
      "A1 to B1, copy 1",
      "A1 to B1, copy 2",
      "A1 to B1, copy 1",
      "A1 to B1, copy 2",
    ]);
    expect(steps(cabinets, [MATCHED])[0]!.slice(2)).toEqual([44.125, 2, "Front A1, B1"]);
  });

  test("WORKING tells the strip", () => {
    expect(WORKING(two, "B1", [MATCHED]).find(([name]) => name === "Front strip")).toEqual([
      "Front strip",
      44.125,
      "19 + 25, and between them 1 × 1/8, the kerf or what lies between the cut fronts once they hang",
    ]);
  });

  test("a quote and SHEETS count the sheet that their strips need, and refuse one that is too narrow for them", () => {
    const stock = (width: number) => [
      ["Thickness", "Length", "Width", "Price"],
      [0.25, 96, 96, 0.001],
      [0.5, 96, 96, 0.001],
      [0.75, 21.375, width, 50],
    ];
    // Two strips of 44 1/8 × 10 5/8 beside each other, a kerf between: 21 3/8.
    const whole = stock(44.125);
    const sheets = records(SHEETS(PARTS(two, [MATCHED]), whole, "1/8", 0, quick));
    expect(sheets.find((row) => row["Thickness"] === 0.75)!["Sheets"]).toBe(1);
    expect(QUOTE(two, [MATCHED], whole, rates(FREE))).toContainEqual([
      "Sheets",
      "Plywood, 3/4 in, 21 3/8 × 44 1/8 in",
      1,
      "sheet",
      50,
      50,
    ]);
    const narrow = stock(44);
    expect(shown(() => QUOTE(two, [MATCHED], narrow, rates(FREE)))).toMatch(
      /grain group "A1 to B1" in one piece fit no sheet/,
    );
    expect(shown(() => SHEETS(PARTS(two, [MATCHED]), narrow, "1/8", 0, quick))).toMatch(/fit no sheet of their stock/);
  });

  test("a strip that no sheet takes is wrong, and a kerf wider than the gap is told", () => {
    const narrow = STOCK.map((row) => [...row.slice(0, 2), row[2] === 48 ? 44 : row[2]]);
    expect(CHECKS(two, [MATCHED], narrow).filter((row) => row[1] === "wrong")).toEqual([
      [
        "A1",
        "wrong",
        'The parts of grain group "A1 to B1" in one piece fit no sheet of their stock.',
        "Take a larger sheet, or let the grain run the other way.",
      ],
      [
        "A2",
        "wrong",
        'The parts of grain group "A2 to B2" in one piece fit no sheet of their stock.',
        "Take a larger sheet, or let the grain run the other way.",
      ],
    ]);
    const tight = CHECKS(two, [MATCHED, ["front gap", "1/16"]]).filter(([, , found]) => /kerf/.test(String(found)));
    expect(tight.map((row) => row.slice(0, 3))).toEqual([
      [
        "A1, B1, A2, B2",
        "doubtful",
        "The kerf of 1/8 in is wider than the front gap of 1/16 in: the grain jumps by 1/16 in from front to front.",
      ],
    ]);
  });
});
