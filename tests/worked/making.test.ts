import { describe, expect, test } from "vitest";
import { parseLength, toDouble, type Unit } from "../../src/core/length";
import { loadBundle } from "../build/load-bundle";
import { PARTS_BENCH, SAMPLE_CHEST, type WorkedPlan } from "./plans";

const bundle = loadBundle();
type Table = (string | number)[][];
const call = (name: string, { openings, standards }: Pick<WorkedPlan, "openings" | "standards">): Table =>
  bundle.get(name)!(openings, standards) as Table;
const exact = (text: string, unit: Unit = "in"): number => toDouble(parseLength(text, unit));

/** Some columns of one drawer's row. */
const sizes = (table: Table, drawer: string, ...headings: string[]) => {
  const row = table.find(([label]) => label === drawer)!;
  return headings.map((heading) => row[table[0]!.indexOf(heading)]);
};
/** One column of an opening's drawers, from the floor up. */
const upward = (table: Table, opening: string, heading: string) =>
  table
    .filter(([label]) => String(label).startsWith(opening))
    .map((row) => row[table[0]!.indexOf(heading)])
    .reverse();

describe("worked example: the bench is mounted, through the built functions", () => {
  const mounting = call("MOUNTING", PARTS_BENCH);

  test("box spacers of B, from the floor up: 1/2, 15/16, 1 3/4", () => {
    expect(upward(mounting, "B", "Box spacer")).toEqual(["1/2", "15/16", "1 3/4"].map((text) => exact(text)));
  });

  test("slide spacers of B: 3 3/8, 11 13/16, 21 1/16, each the centerline less half the slide's height, 7/8", () => {
    expect(upward(mounting, "B", "Slide spacer")).toEqual(["3 3/8", "11 13/16", "21 1/16"].map((text) => exact(text)));
    expect(upward(mounting, "B", "Slide centerline")).toEqual(
      upward(mounting, "B", "Slide spacer").map((spacer) => (spacer as number) + 0.875),
    );
  });

  test("fronts on their boxes: 11/16 past the opening at the carcase's end, 5/16 over a partition, and the side space", () => {
    const past = ["Front past box left", "Front past box right"];
    expect(sizes(mounting, "A1", ...past)).toEqual([exact("1 3/16"), exact("13/16")]);
    expect(sizes(mounting, "B3", ...past)).toEqual([exact("13/16"), exact("13/16")]);
    expect(sizes(mounting, "C2", ...past)).toEqual([exact("13/16"), exact("1 3/16")]);
    expect(upward(mounting, "B", "Front below box")).toEqual([exact("1 1/4"), exact("7/16"), exact("7/16")]);
  });

  test("pulls: A has one in the middle, B 24 5/8 wide two at its quarters; two screws hold A's fronts, four B's", () => {
    const places = ["Pull from left", "Second pull", "Front screws"];
    expect(sizes(mounting, "A2", ...places)).toEqual([exact("9 1/2"), "", 2]);
    expect(sizes(mounting, "B2", ...places)).toEqual([exact("6 5/32"), exact("18 15/32"), 4]);
    expect(sizes(mounting, "B3", "Pull height")).toEqual([exact("3 13/16")]);
  });
});

describe("worked example: will the bench fit, through the built functions", () => {
  test("B: nominal 1/2, least and most 1/2 ∓ 5/128, likely 1/2 ∓ 3/128, allowed 1/2 to 17/32", () => {
    const fit = call("FIT", PARTS_BENCH);
    for (const drawer of ["B1", "B2", "B3"])
      expect(fit.find(([label]) => label === drawer)!.slice(1, 8)).toEqual([
        0.5,
        0.5 - 5 / 128,
        0.5 + 5 / 128,
        0.5 - 3 / 128,
        0.5 + 3 / 128,
        0.5,
        17 / 32,
      ]);
  });
});

describe("worked example: the saw is set for the bench, through the built functions", () => {
  const setUps = call("SETUPS", PARTS_BENCH);
  const values = (operation: string, setting: string) =>
    setUps.filter((row) => row[1] === operation && String(row[2]).startsWith(setting)).map((row) => row.slice(3, 5));

  test("22 in long are all sides and B's box fronts and backs: one stop for 22 pieces", () => {
    expect(values("Crosscut", "Stop").find(([value]) => value === 22)).toEqual([22, 22]);
  });

  test("bottoms of all three openings are ripped to 21 7/16 by one fence", () => {
    expect(values("Rip", "Fence").find(([value]) => value === exact("21 7/16"))).toEqual([exact("21 7/16"), 8]);
  });

  test("grooves: 1/4 high; fence at 3/8 and 1/2 for all, 5/8 and 3/4 for C's 1/2 in bottoms", () => {
    expect(values("Groove", "Blade")).toEqual([[0.25, 30]]);
    expect(values("Groove", "Fence")).toEqual([
      [0.375, 30],
      [0.5, 30],
      [0.625, 6],
      [0.75, 6],
    ]);
  });

  test("a groove in a 3/4 in side for a 1/2 in bottom, offset 1/4, depth 1/4: fence at 1/4, 3/8, 1/2, 5/8, blade 1/4", () => {
    const job = {
      openings: [
        ["Width", "Height", "Depth", "Drawers"],
        [18, 10, 20.5, 1],
      ],
      standards: [
        ["side thickness", "3/4"],
        ["bottom thickness", "1/2"],
        ["groove offset", "1/4"],
      ],
    };
    const grooves = call("SETUPS", job).filter((row) => row[1] === "Groove");
    expect(grooves.map((row) => row[3])).toEqual([0.25, 0.25, 0.375, 0.5, 0.625]);
  });
});

describe("worked example: what is bought for bench and chest, through the built functions", () => {
  const bought = (job: WorkedPlan) => call("HARDWARE", job).map((row) => row.slice(0, 4));

  test("the bench: eight pairs of 22 in slides; 18 screws of 1 in and 8 of 1 1/4 in hold its fronts", () => {
    // A three fronts of two screws, B three of four, C two of four in 3/4 in stock.
    expect(bought(PARTS_BENCH)).toEqual(
      expect.arrayContaining([
        // A and B carry an even 35 and 48.1 lb, C 58.7 lb in boxes of 3/4 sides.
        ["Side-mount slide", 22, 6, "pair"],
        ["Side-mount slide", 22, 1, "pair"],
        ["Side-mount slide", 22, 1, "pair"],
        ["Front screw", 1, 18, "each"],
        ["Front screw", 1.25, 8, "each"],
        ["Pull", exact("128 mm"), 13, "each"],
        ["Bottom screw", 1.5, 8, "each"],
      ]),
    );
  });

  test("the chest: three pairs of 450 mm, and two screws of 20 mm up into each back", () => {
    expect(bought(SAMPLE_CHEST)).toEqual(
      expect.arrayContaining([
        ["Side-mount slide", 450, 3, "pair"],
        ["Front screw", 25, 6, "each"],
        ["Bottom screw", 20, 6, "each"],
      ]),
    );
  });
});
