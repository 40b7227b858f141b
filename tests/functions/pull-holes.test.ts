import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE } from "../../src/functions";
import { openings } from "./tables";

/** Front 19 3/8 × 10 5/8; opening from 11/16 in, box from 1 3/16, its inside from 1 21/32; one pull, holes 4 apart. */
const QUIET: [string, unknown][] = [
  ["side thickness", "15/32"],
  ["bottom thickness", "7/32"],
  ["groove depth", "7/32"],
  ["pull spacing", 4],
];
const two = openings(["A", 18, 20, 20.5, 2]);
const all = (standards: [string, unknown][]) => [
  ...QUIET.filter(([name]) => !standards.some(([other]) => other === name)),
  ...standards,
];
const found = (standards: [string, unknown][], table = two) =>
  CHECKS(table, all(standards))
    .slice(1)
    .map((row) => row.slice(0, 3));
const screws = (standards: [string, unknown][], table = two) =>
  HARDWARE(table, all(standards))
    .filter(([item]) => item === "Pull screw")
    .map((row) => row.slice(1, 3));
const ALL_CLEAR = [["", "", "All clear"]];

/** Common practice: screws of pulls go in from inside the box, where there is one behind the hole and no side or slide. */
describe("holes of pulls, and what lies behind them", () => {
  test("fronts that are to have no pull have none, and nothing is found", () => {
    expect(found([["pulls per front", "none"]])).toEqual(ALL_CLEAR);
    expect(HARDWARE(two, [["pulls per front", "none"]]).some(([item]) => /pull/i.test(String(item)))).toBe(false);
  });

  test("before the box screws go through box front and front, and nothing is found", () => {
    expect(found([])).toEqual(ALL_CLEAR);
    // 15/32 + 3/4 + 1/4 is 1 15/32.
    expect(screws([])).toEqual([[1.5, 4]]);
  });

  test("beside the box they go through the front alone", () => {
    // A line at 3 1/16 from the cabinet's end is 3 from the front's edge: a hole at 1.
    expect(found([["pull line", "3 1/16"]])).toEqual([
      ["A1, A2", "doubtful", "Holes of a pull lie beside the box: their screws go through the front alone."],
    ]);
    expect(screws([["pull line", "3 1/16"]])).toEqual([
      [1.5, 2],
      [1, 2],
    ]);
  });

  test("before the end of a side no screw goes in from inside", () => {
    expect(found([["pull line", "3 7/16"]])).toEqual([
      [
        "A1, A2",
        "wrong",
        "A hole of a pull lies before the end of the box's side, where no screw goes in from inside.",
      ],
    ]);
  });

  test("before the cabinet's end, top or bottom their heads keep the drawer from shutting", () => {
    const meets = "Screws of a pull meet the cabinet's end, top or rail behind the front: the drawer does not shut.";
    expect(found([["pull line", "2 5/8"]])).toEqual([["A1, A2", "wrong", meets]]);
    // The upper front's edge lies 5/8 above the opening.
    expect(found([["pull height", "1/2"]])).toContainEqual(["A1", "wrong", meets]);
  });

  test("above its box they go through the front alone, drawer by drawer", () => {
    const table = openings(["A", 18, 20, 20.5, 2]);
    // A2's box ends 1/4 below its front's upper edge; A1's hole is before the cabinet's top.
    expect(found([["pull height", "1/4"]], table)).toContainEqual([
      "A2",
      "doubtful",
      "Holes of a pull lie above the box: their screws go through the front alone.",
    ]);
    expect(screws([["pull height", "1/4"]], table)).toEqual([[1, 4]]);
  });

  test("a shop-made pull holds its screws inside its ends, and stays on its front", () => {
    const made = (length: unknown, spacing: unknown): [string, unknown][] => [
      ["pull kind", "shop-made"],
      ["pull length", length],
      ["pull spacing", spacing],
    ];
    expect(found(made(5, 4))).toEqual(ALL_CLEAR);
    expect(found(made(4, 4))).toEqual([["A1, A2", "wrong", "Holes 4 in apart miss a shop-made pull 4 in long."]]);
    expect(found(made("4 3/4", 4))).toEqual([
      [
        "A1, A2",
        "doubtful",
        "The holes leave 3/8 in to the ends of a shop-made pull 4 3/4 in long, which may split there.",
      ],
    ]);
    expect(found(made(20, 4))).toEqual([
      ["A1, A2", "doubtful", "A shop-made pull 20 in long reaches past the side of a front 19 3/8 in wide."],
    ]);
  });

  test("screws that were asked for and do not get through are found", () => {
    expect(found([["pull screw length", "1"]])).toEqual([
      ["A1, A2", "wrong", "A pull screw of 1 in holds nothing: it goes through 1 7/32 in first."],
    ]);
    expect(found([["front screw length", "3/8"]])).toEqual([
      ["A1, A2", "wrong", "A front screw of 3/8 in holds nothing: it goes through 15/32 in first."],
    ]);
  });
});
