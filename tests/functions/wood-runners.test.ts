import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, MOUNTING, PARTS, PLAN, PRICE, SETUPS, WORKING } from "../../src/functions";
import { column, messageOf, openings } from "./tables";

/** One opening of two drawers: boxes 17 7/8 wide, 20 deep and 9 1/8 or so high. */
const two = openings(["A", 18, 20, 20.5, 2]);
const under = [["slide", "wood runner"]];
const grooved = [...under, ["runner", "side groove"]];
const runner = (standards: unknown[][], table = two) => PARTS(table, standards).find(([part]) => part === "Runner")!;
const quiet = [
  ["side thickness", "15/32"],
  ["bottom thickness", "7/32"],
  ["groove depth", "7/32"],
];
const found = (standards: unknown[][], table = two) =>
  CHECKS(table, [...quiet.filter(([name]) => !standards.some(([other]) => other === name)), ...standards])
    .slice(1)
    .map((row) => row.slice(0, 3));
const ALL_CLEAR = [["", "", "All clear"]];

test.each<[number, unknown, string]>([
  [18, 19, "longest slide on sale within the box depth 19"],
  [18, 18, "longest slide on sale within opening depth 18 3/4 − rear clearance 1/2 = 18 1/4"],
  [18, "slide", "longest slide on sale within opening depth 18 3/4 − rear clearance 1/2 = 18 1/4"],
])("WORKING says of the slide length that none is bought: %s, box depth %s", (length, depth, how) => {
  const rows = WORKING(openings(["A", 18, 10, depth === 19 ? 20.5 : 18.75, 1]), "A1", [
    ["slide", "wood runner"],
    ["box depth", depth],
  ]);
  expect(rows.find(([size]) => size === "Slide length")!.slice(1)).toEqual([
    length,
    `${how}; none is bought for wood runners`,
  ]);
});

describe("wood runners under the box", () => {
  test("two strips a drawer, as long as its box is deep, are the last pieces of the cut list", () => {
    const parts = PARTS(two, under);
    expect(parts.at(-1)).toEqual(["Runner", "A1, A2", 4, 20, 1, 0.5, "Plywood", "length"]);
    expect(PARTS(two).some(([part]) => part === "Runner")).toBe(false);
    const own = [
      ...under,
      ["box depth", 19],
      ["runner width", "1 1/4"],
      ["runner thickness", "3/8"],
      ["runner material", "Maple"],
    ];
    expect(runner(own).slice(2)).toEqual([4, 19, 1.25, 0.375, "Maple", "length"]);
    const mm = [["unit", "mm"], ...under, ["side material", "Birch"]];
    expect(runner(mm, openings(["A", 450, 500, 520, 1])).slice(2)).toEqual([2, 500, 25, 12, "Birch", "length"]);
  });

  test("they are made, so that none are bought or charged for; their screws are", () => {
    const rows = HARDWARE(two, under);
    expect(rows.some(([item]) => /slide$|runner$/i.test(String(item)))).toBe(false);
    // Through an inch of runner into 3/4 in of cabinet, 1/8 short of its outer face.
    expect(rows.find(([item]) => item === "Runner screw")).toEqual([
      "Runner screw",
      1.5,
      12,
      "each",
      "through the runner into the cabinet's ends; countersunk, and the runner waxed; No. 8, flat head (common practice)",
    ]);
    const stock = [
      ["Length", "Width", "Price"],
      [96, 48, 40],
    ];
    const rates = [
      ["pull price", "none"],
      ["screw price", "none"],
    ];
    expect(PRICE(two, under, stock, rates)).toBe(
      PRICE(two, [...under, ["slide lengths", 20]], stock, [...rates, ["slide price", 90]]),
    );
  });

  test("their tops are the box's underside, and no centerline is at the box's side", () => {
    const mounted = MOUNTING(two, under);
    const bottoms = column(PLAN(two, under), "Box bottom") as number[];
    expect(bottoms[1]).toBe(0.5);
    expect(column(mounted, "Slide spacer")).toEqual(bottoms.map((bottom) => bottom - 0.5));
    expect(column(mounted, "Slide centerline")).toEqual(["", ""]);
    expect(column(PLAN(two, under), "Slide centerline")).toEqual(["", ""]);
    expect(column(MOUNTING(two, [...under, ["runner thickness", "3/8"]]), "Slide spacer")[1]).toBe(0.125);
  });

  test("they are ripped and crosscut with the other pieces", () => {
    const steps = SETUPS(two, under).filter((row) => String(row[5]).includes("Runner"));
    expect(steps.map((row) => row.slice(1, 5))).toEqual([
      ["Rip", "Fence", 1, 4],
      ["Crosscut", "Stop", 20, expect.any(Number)],
    ]);
    expect(SETUPS(two, under).some(([, operation]) => operation === "Runner groove")).toBe(false);
  });

  test("runners higher than the space below their box find no room in its zone", () => {
    expect(found([...under, ["runner thickness", "1/2"]])).toEqual(ALL_CLEAR);
    expect(found([...under, ["runner thickness", "9/16"]])).toEqual([
      ["A1, A2", "wrong", "The runners are 9/16 in high, and the space below the box is 1/2 in."],
    ]);
  });

  test("runners too narrow to reach under the whole side are told", () => {
    // 1/16 of side space and sides of 15/32: 17/32.
    expect(found([...under, ["runner width", "17/32"], ["slide screw length", "3/4"]])).toEqual(ALL_CLEAR);
    expect(found([...under, ["runner width", "1/2"], ["slide screw length", "3/4"]])).toEqual([
      ["A", "doubtful", "The runners reach 7/16 in under sides 15/32 in thick."],
    ]);
    expect(found([...under, ["runner width", "1/16"], ["slide screw length", "3/4"]])[0]).toEqual([
      "A",
      "wrong",
      "The runners, 1/16 in wide, do not reach under the box.",
    ]);
  });

  test("blocking behind a face frame is as long as they are", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Case width"],
      [18, 20, 20.5, 1, 20],
    ];
    const standards = [...under, ["construction", "face frame"], ["box depth", 19]];
    expect(
      HARDWARE(table, standards)
        .find(([item]) => item === "Blocking")!
        .slice(1),
    ).toEqual([
      1,
      2,
      "each",
      "as thick as the frame hides, 19 in long and at least 1 1/4 in wide, behind slide or runner",
    ]);
  });
});

describe("wood runners in grooves of the sides", () => {
  test("strips reach through the side space into the groove, short of its bottom by the play", () => {
    // 1/16 beside the box, a groove of half the side, 1/4, less 1/32.
    expect(runner(grooved).slice(2, 6)).toEqual([4, 20, 9 / 32, 0.5]);
    expect(runner([...grooved, ["runner groove depth", "3/16"], ["runner play", "none"]]).slice(3, 6)).toEqual([
      20, 0.25, 0.5,
    ]);
  });

  test("the groove is cut into the outer faces of the sides, about the box's middle, as wide as strip and play", () => {
    const table = openings(["A", 18, 10, 20.5, 1]);
    const [box] = column(PLAN(table, grooved), "Box height") as [number];
    const steps = SETUPS(table, grooved).filter(([, operation]) => operation === "Runner groove");
    const width = 17 / 32;
    const low = box / 2 - width / 2;
    const far = low + width - 1 / 8;
    expect(steps.map((row) => row.slice(2))).toEqual([
      ["Blade height", 0.25, 2, "Side A1"],
      ...[0, 1, 2, 3, 4].map((i) => ["Fence to the near side of the blade", low + (i * (far - low)) / 4, 2, "Side A1"]),
    ]);
  });

  test("on an applied bottom the sides begin higher by its thickness", () => {
    const table = openings(["A", 18, 10, 20.5, 1]);
    const fence = (standards: unknown[][]) =>
      SETUPS(table, [...grooved, ["slide centerline", 4], ...standards]).filter(
        ([, operation]) => operation === "Runner groove",
      )[1]![3];
    expect(fence([])).toBe(4 - 17 / 64);
    expect(fence([["bottom fit", "applied"]])).toBe(4 - 17 / 64 - 0.25);
  });

  test("the plan has their centerline, and the groove's upper cheek lies on the strip", () => {
    const [line] = column(PLAN(two, grooved), "Slide centerline") as [number];
    const [bottom, height] = ["Box bottom", "Box height"].map(
      (heading) => column(PLAN(two, grooved), heading)[0] as number,
    );
    expect(line).toBe(bottom! + height! / 2);
    expect(column(MOUNTING(two, grooved), "Slide spacer")[0]).toBe(line + 17 / 64 - 0.5);
    const low = [...grooved, ["slide centerline", "bottom"]];
    expect(column(PLAN(two, low), "Slide centerline")[1]).toBe(0.5 + 17 / 64);
  });

  test("a groove through the side, or a strip of nothing, is refused", () => {
    const message = (standards: unknown[][]) => messageOf(PLAN(two, [...grooved, ...standards])[1]![2]);
    expect(message([["runner groove depth", "1/2"]])).toBe(
      "#VALUE! Opening A: runner groove depth is 1/2 in. It must be less than the side is thick, 1/2 in.",
    );
    expect(message([["runner play", "5/16"]])).toBe(
      "#VALUE! Opening A: a runner groove 1/4 in deep and 1/16 in beside the box, less a runner play of 5/16 in, leave nothing of the strip.",
    );
  });

  test("a groove that meets the bottom's, or the side's edge, cannot be cut so", () => {
    expect(found(grooved)).toEqual(ALL_CLEAR);
    // Together as deep as the side is thick, at one height.
    const meets = found([...grooved, ["slide centerline", "3/4"], ["runner groove depth", "1/4"]]);
    expect(meets).toContainEqual([
      "A1, A2",
      "wrong",
      "The runner's groove, 1/4 in deep, meets the bottom's, 7/32 in deep, in a side 15/32 in thick.",
    ]);
    expect(found([...grooved, ["slide centerline", "1/8"]])).toContainEqual([
      "A1, A2",
      "wrong",
      "The runner's groove runs out of the side's lower edge.",
    ]);
    expect(found([...grooved, ["slide centerline", "3/8"]])).toContainEqual([
      "A1, A2",
      "doubtful",
      "Only 1/8 in of the side stands below the runner's groove.",
    ]);
    // Sides 9 1/8 high, half of a groove of 1/2.
    expect(found([...grooved, ["slide centerline", "8 3/4"]])).toContainEqual([
      "A1, A2",
      "doubtful",
      "Only 1/8 in of the side stands above the runner's groove.",
    ]);
    expect(found([...grooved, ["runner groove depth", "1/4"]])).toEqual([
      ["A", "doubtful", "The runner's groove, 1/4 in deep, takes more than half of the side's 15/32 in."],
    ]);
  });

  test("over an applied bottom there is no groove to meet", () => {
    const low = [...grooved, ["slide centerline", "3/4"], ["runner groove depth", "1/4"]];
    const meets = (standards: unknown[][]) => found(standards).some(([, , words]) => /meets/.test(String(words)));
    expect([meets(low), meets([...low, ["bottom fit", "applied"]])]).toEqual([true, false]);
  });

  test("WORKING tells how strip and groove came about", () => {
    const rows = WORKING(openings(["A", 18, 10, 20.5, 1]), "A1", grooved);
    const how = (size: string) => rows.find(([name]) => name === size)!.slice(1);
    expect(how("Runner length")).toEqual([20, "box depth 20"]);
    expect(how("Runner width")).toEqual([9 / 32, "side space 1/16 + runner groove depth 1/4 − runner play 1/32"]);
    expect(how("Runner groove width")).toEqual([17 / 32, "runner thickness 1/2 + runner play 1/32"]);
    expect(rows.some(([name]) => /^Runner groove from/.test(String(name)))).toBe(true);
  });
});

describe("inset fronts", () => {
  test("a box wider than its inset front shows beside it", () => {
    // Side space 1/16 a side, inset gap 3/32.
    expect(found([...under, ["front style", "inset"]])).toEqual([
      ["A", "wrong", "The box is 17 7/8 in wide, and the inset front before it 17 13/16 in."],
    ]);
    expect(found([...under, ["front style", "inset"], ["inset gap", "1/16"]])).toEqual(ALL_CLEAR);
    expect(found([...under, ["front style", "inset"], ["side clearance", "3/32"]])).toEqual(ALL_CLEAR);
  });
});
