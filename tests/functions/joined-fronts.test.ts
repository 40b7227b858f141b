import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, MOUNTING, PARTS, PIECES, PLAN, SETUPS, WORKING } from "../../src/functions";
import { column, messageOf, openings } from "./tables";

/** A nail drawer of a farrier's bench: 18 wide, 6 high, 20 1/2 deep, on side-mount slides. */
const bench = openings(["A", 18, 6, 20.5, 1]);
/** A seed drawer on wood runners: 16 wide, 7 high, 18 deep. */
const seeds = openings(["A", 16, 7, 18, 1]);
const integral = (...more: unknown[][]) => [["front style", "integral"], ["front grain", "horizontal"], ...more];
const lipped = (...more: unknown[][]) => [
  ["front style", "lipped"],
  ["front grain", "horizontal"],
  ["slide", "wood runner"],
  ["box depth", 17],
  ...more,
];
const first = (table: unknown[][], ...headings: string[]) => headings.map((heading) => column(table, heading)[0]);
const sizes = (table: unknown[][], name: string) =>
  table
    .filter(([part]) => part === name)
    .map((row) => row.slice(2, 7))
    .flat();
const settings = (table: unknown[][], operation: string) =>
  table.filter((row) => row[1] === operation).map((row) => [row[2], row[3], row[5]]);
const findings = (table: unknown[][], standards: unknown[][], pattern: RegExp) =>
  CHECKS(table, standards)
    .filter(([, , finding]) => pattern.test(String(finding)))
    .map((row) => row.slice(0, 3));
const how = (table: unknown[][], standards: unknown[][], size: string) =>
  WORKING(table, "A1", standards)
    .filter(([name]) => name === size)
    .map((row) => row[2]);

describe("an integral front is its box's own front, inset", () => {
  test("it fills the opening but for the gap, and the box begins at its face", () => {
    const plan = PLAN(bench, integral());
    // 18 − 2 × 3/32; 6 − 2 × 3/32.
    expect(first(plan, "Front width", "Front height", "Front bottom")).toEqual([17 + 13 / 16, 5 + 13 / 16, 3 / 32]);
    // Slide: 20 1/2 − 1/2 − front 3/4 = 19 1/4, so 18; the box is 18 + 3/4 deep, for the front is part of it.
    expect(first(plan, "Box width", "Slide length", "Box depth")).toEqual([17, 18, 18.75]);
    // 18 3/4 less front 3/4 and back 1/2.
    expect(first(plan, "Inside width", "Inside depth")).toEqual([16, 17.5]);
    // Zone from 3/32 to 5 29/32: 5 13/16 − 1/2 − 1/4 = 5 1/16, down to 5.
    expect(first(plan, "Box bottom", "Box height")).toEqual([19 / 32, 5]);
  });

  test("there is no box front among the parts; the sides end at the lap, the bottom in the front's groove", () => {
    const parts = PARTS(bench, integral());
    expect(column(parts, "Part")).toEqual(["Side", "Box back", "Bottom", "Front"]);
    // 18 3/4 − lap 1/4.
    expect(sizes(parts, "Side")).toEqual([2, 18.5, 5, 0.5, "Plywood"]);
    expect(sizes(parts, "Box back")).toEqual([1, 16, 5, 0.5, "Plywood"]);
    // 17 1/2 + 2 × 1/4 − 1/16.
    expect(sizes(parts, "Bottom")).toEqual([1, 16 + 7 / 16, 17 + 15 / 16, 0.25, "Plywood"]);
    expect(sizes(parts, "Front")).toEqual([1, 17 + 13 / 16, 5 + 13 / 16, 0.75, "Plywood"]);
    expect(column(PIECES(bench, integral()), "Part")).not.toContain("Box front");
  });

  test("under the back, applied, and with a dado behind: each bottom ends where it should", () => {
    const bottom = (...more: unknown[][]) => sizes(PARTS(bench, integral(...more)), "Bottom")[2];
    expect(bottom(["bottom fit", "under back"])).toBe(18.75 - 0.75 + 0.25 - 1 / 16);
    // It lies under the sides, behind the front.
    expect(bottom(["bottom fit", "applied"])).toBe(18);
    expect(bottom(["bottom fit", "applied"], ["bottom overhang", "1/8"])).toBe(18.125);
    const dado = [
      ["corner joint", "dado"],
      ["joint depth", "1/4"],
    ];
    expect(bottom(...dado)).toBe(18.75 - 0.75 - 0.5 - 0.25 + 0.5 - 1 / 16);
    expect(first(PLAN(bench, integral(...dado)), "Inside depth")).toEqual([17.25]);
  });

  test("WORKING says how", () => {
    expect(how(bench, integral(), "Box depth")).toEqual(["slide length 18 + front thickness 3/4"]);
    expect(how(bench, integral(), "Side length")).toEqual(["box depth 18 3/4 − front lap 1/4"]);
    expect(how(bench, integral(), "Inside depth")).toEqual([
      "box depth 18 3/4 − front thickness 3/4 − end thickness 1/2",
    ]);
    expect(how(bench, integral(), "Box front length")).toEqual([]);
    const socketed = integral(["corner joint", "half-blind dovetail"], ["joint depth", "3/8"]);
    expect(how(bench, socketed, "Side length")).toEqual([
      "box depth 18 3/4 − front lap 1/4 − end thickness 1/2 + socket depth 3/8",
    ]);
    expect(sizes(PARTS(bench, socketed), "Side")[1]).toBe(18.375);
  });

  test("its half-blind joint: ends rabbeted to the box's width, sockets, and baselines at the front of the sides", () => {
    const setUps = SETUPS(bench, integral());
    // (17 13/16 − 17) / 2 = 13/32 wide, 3/4 − 1/4 deep; the saw's 1/8 goes in four times.
    expect(settings(setUps, "Front rabbet")).toEqual([
      ["Blade height", 0.5, "Front A1"],
      ["Left and right edge: fence to the near side of the blade", 0, "Front A1"],
      ["Left and right edge: fence to the near side of the blade", 3 / 32, "Front A1"],
      ["Left and right edge: fence to the near side of the blade", 6 / 32, "Front A1"],
      ["Left and right edge: fence to the near side of the blade", 9 / 32, "Front A1"],
    ]);
    expect(settings(setUps, "Half-blind dovetail")).toEqual([
      ["Socket depth", 0.5, "Front A1"],
      ["Baseline, from the front's end", 13 / 32 + 0.5, "Front A1"],
      ["Baseline, from the side's front end", 0.5, "Side A1"],
    ]);
  });

  test("the front's groove lies as much higher as the front reaches below its box", () => {
    const fences = settings(SETUPS(bench, integral()), "Groove").filter(([setting]) => /^Fence/.test(String(setting)));
    expect(fences).toEqual([
      ["Fence to the near side of the blade", 0.375, "Side A1; Box back A1"],
      ["Fence to the near side of the blade", 0.5, "Side A1; Box back A1"],
      ["Fence to the near side of the blade", 0.875, "Front A1"],
      ["Fence to the near side of the blade", 1, "Front A1"],
    ]);
  });

  test("through joints need a front as wide as the box, as on wood runners, where it is by default", () => {
    const runners = integral(["slide", "wood runner"], ["box depth", 18], ["front joint", "dovetail"]);
    const plan = PLAN(seeds, runners);
    // Beside an integral front on runners the side clearance is the inset gap: 16 − 2 × 3/32.
    expect(first(plan, "Front width", "Box width", "Inside depth")).toEqual([15 + 13 / 16, 15 + 13 / 16, 16.75]);
    // They come through to the face.
    expect(sizes(PARTS(seeds, runners), "Side")[1]).toBe(18);
    expect(settings(SETUPS(seeds, runners), "Dovetail")).toEqual([
      ["Baseline, from the front's end", 0.5, "Front A1"],
      ["Baseline, from the side's front end", 0.75, "Side A1"],
    ]);
    expect(messageOf(PLAN(bench, integral(["front joint", "finger joint"]))[1]![2])).toContain(
      "a box joint shows on the face of the front, and so needs one without a lip and as wide as its box: 17 13/16 in and 17 in",
    );
  });

  test("nothing screws it to a box front: no front screws, pulls go through it alone", () => {
    const list = HARDWARE(bench, integral());
    expect(column(list, "Item")).not.toContain("Front screw");
    expect(first(MOUNTING(bench, integral()), "Front screws")).toEqual([0]);
    // 3/4 and 1/4 into the pull.
    expect(list.filter(([item]) => item === "Pull screw").map((row) => row.slice(1, 3))).toEqual([[1, 2]]);
    // The butted back alone is pocket screwed: two at each of its ends.
    expect(list.filter(([item]) => item === "Pocket screw").map((row) => row[2])).toEqual([4]);
  });

  test("nails hold it where it is rabbeted", () => {
    const list = HARDWARE(bench, integral(["front joint", "rabbet"]));
    expect(list.filter(([item]) => item === "Corner nail").map((row) => row.slice(1, 3))).toEqual([[1.25, 4]]);
    // 13/32 past the box, and the side's 1/2: the last pass of 1/8 ends at 29/32.
    const rabbets = settings(SETUPS(bench, integral(["front joint", "rabbet"])), "Front rabbet");
    expect(rabbets[rabbets.length - 1]!.slice(1)).toEqual([25 / 32, "Front A1"]);
    // What is narrower than the blade leaves that in a sacrificial fence: (17 13/16 − 17 3/4) / 2 − 1/8.
    const narrow = SETUPS(bench, integral(["side clearance", "1/8"]));
    expect(settings(narrow, "Front rabbet")[1]!.slice(1)).toEqual([1 / 32 - 1 / 8, "Front A1"]);
  });

  test("joints into upright grain, and an applied bottom, are doubtful", () => {
    expect(findings(bench, [["front style", "integral"]], /upright/)).toEqual([
      ["A", "doubtful", "The front's half-blind dovetails hold little along its grain, which is upright."],
    ]);
    expect(findings(bench, integral(["bottom fit", "applied"]), /applied bottom has/)).toEqual([
      ["A", "doubtful", "An applied bottom has nothing to hold on to at the front, which is its box's own."],
    ]);
    expect(findings(bench, integral(), /upright|applied/)).toEqual([]);
  });
});

describe("a lipped front goes into the opening, and its lip laps that", () => {
  test("it is larger than the opening by lip less gap all round; its box is as wide as what goes in", () => {
    const plan = PLAN(seeds, lipped());
    // 16 + 2 × (3/8 − 3/32); 7 + the same; −(3/8 − 3/32).
    expect(first(plan, "Front width", "Front height", "Front bottom")).toEqual([16 + 9 / 16, 7 + 9 / 16, -9 / 32]);
    // 16 − 2 × 3/32, which is 16 9/16 − 2 × 3/8.
    expect(first(plan, "Box width", "Box depth")).toEqual([15 + 13 / 16, 17]);
    // What goes in: from 3/32 to 6 29/32; 6 13/16 − 3/4 = 6 1/16, down to 6.
    expect(first(plan, "Box bottom", "Box height")).toEqual([19 / 32, 6]);
    expect(how(seeds, lipped(), "Front width")).toEqual([
      "opening width 16 + lip 3/8 − inset gap 3/32 + lip 3/8 − inset gap 3/32",
    ]);
    expect(how(seeds, lipped(), "Zone bottom")).toEqual(["lower edge of the front -9/32 + lip 3/8"]);
  });

  test("the sides end at the lip, runners behind the front", () => {
    const parts = PARTS(seeds, lipped());
    expect(sizes(parts, "Side").slice(0, 3)).toEqual([2, 17 - 3 / 8, 6]);
    expect(sizes(parts, "Runner").slice(0, 2)).toEqual([2, 17 - 3 / 4]);
  });

  test("it is rabbeted all round: lip wide above and below, at the sides to the box's width", () => {
    expect(settings(SETUPS(seeds, lipped()), "Front rabbet")).toEqual([
      ["Blade height", 3 / 8, "Front A1"],
      ...["Left and right", "Upper and lower"].flatMap((edges) =>
        [0, 1 / 8, 1 / 4].map((fence) => [`${edges} edge: fence to the near side of the blade`, fence, "Front A1"]),
      ),
    ]);
    expect(how(seeds, lipped(), "Front rabbet at left and right")).toEqual([
      "(front width 16 9/16 − box width 15 13/16) / 2",
    ]);
  });

  test("in millimeters on slides at the sides: lip 10, 10 thick", () => {
    const table = openings(["A", 500, 200, 520, 1]);
    const standards = [
      ["unit", "mm"],
      ["front style", "lipped"],
    ];
    // Slide 520 − 12 − (19 − 10) = 499, so 450; the box 450 + 19 deep; its sides 469 − 10.
    expect(first(PLAN(table, standards), "Front width", "Box width", "Slide length", "Box depth")).toEqual([
      516, 474.6, 450, 469,
    ]);
    expect(sizes(PARTS(table, standards), "Side")[1]).toBe(459);
    // (516 − 474.6) / 2.
    const rabbet = WORKING(table, "A1", standards).find(([name]) => name === "Front rabbet at left and right");
    expect(rabbet![1]).toBe(20.7);
  });

  test("what cannot be: a joint that shows, a lap as thick as the front, a box wider than its front", () => {
    const message = (standards: unknown[][], table = seeds) => messageOf(PLAN(table, standards)[1]![2]);
    expect(message(lipped(["front joint", "dovetail"]))).toContain(
      "a dovetail shows on the face of the front, and so needs one without a lip and as wide as its box: 16 9/16 in and 15 13/16 in",
    );
    expect(message(integral(["front lap", "3/4"]), bench)).toContain(
      "front lap is 3/4 in. It must be less than the front is thick, 3/4 in",
    );
    expect(findings(seeds, lipped(["side clearance", "1/2"], ["lip", "1/16"]), /stops short/).length).toBeGreaterThan(
      0,
    );
    expect(findings(bench, integral(["side clearance", "1/16"]), /The box is/)).toEqual([
      ["A", "wrong", "The box is 17 7/8 in wide, and the inset front before it 17 13/16 in."],
    ]);
  });

  test("two side by side need a partition that both lap, with a gap", () => {
    const two = openings(["A", 16, 7, 18, 1], ["B", 16, 7, 18, 1]);
    // 3/4 − 2 × 9/32 = 3/16, more than 1/8.
    expect(findings(two, lipped(), /lap/)).toEqual([]);
    expect(findings(two, lipped(["partition thickness", "5/8"]), /lap/)).toEqual([
      [
        "A, B",
        "wrong",
        "Lipped fronts lap the 5/8 in between them by 9/32 in and 9/32 in, and leave 1/16 in for a gap of 1/8 in.",
      ],
    ]);
  });
});

test("overlay and inset fronts have no use for a front joint, a lap or a lip", () => {
  const found = CHECKS(bench, [
    ["front lap", "3/16"],
    ["lip", "1/2"],
  ]).map((row) => row[2]);
  expect(found).toContain("The standard front lap has no effect: no opening has integral fronts.");
  expect(found).toContain("The standard lip has no effect: no opening has lipped fronts.");
});
