import { describe, expect, test } from "vitest";
import { SETUPS } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { openings } from "./tables";

const three = openings(["B", 24, 26.25, 23.25, 3]);
const one = openings(["A", 18, 20, 20.5, 1]);
const steps = (operation: string, table = three, standards?: unknown[][]) =>
  SETUPS(table, standards).filter((row) => row[1] === operation);
/** Setting, value and pieces. */
const set = (...args: Parameters<typeof steps>) => steps(...args).map((row) => row.slice(2, 5));
const cautions = (table: unknown[][], standards?: unknown[][]) =>
  steps("Caution", table, standards).map((row) => row[2]);

describe("SETUPS(openings, standards)", () => {
  test("lists every setting once, in the order to cut", () => {
    const table = SETUPS(three, [["height step", "1/4"]]);
    expect(table[0]).toEqual(["Step", "Operation", "Setting", "Value", "Pieces", "Parts"]);
    const boxes = "Side B1, B2, B3; Box front B1, B2, B3; Box back B1, B2, B3";
    expect(table.filter((row) => row[1] !== "Caution").slice(1, 13)).toEqual([
      [1, "Rip", "Fence", 25.375, 3, "Front B1, B2, B3"],
      [2, "Rip", "Fence", 21.4375, 3, "Bottom B1, B2, B3"],
      [3, "Rip", "Fence", 7.5, 12, boxes],
      [4, "Crosscut", "Stop", 22.4375, 3, "Bottom B1, B2, B3"],
      [5, "Crosscut", "Stop", 22, 12, boxes],
      [6, "Crosscut", "Stop", 9.125, 3, "Front B1, B2, B3"],
      [7, "Groove", "Blade height", 0.25, 12, boxes],
      [8, "Groove", "Fence to the near side of the blade", 0.375, 12, boxes],
      [9, "Groove", "Fence to the near side of the blade", 0.5, 12, boxes],
      [10, "Pocket holes", "Jig and drill collar, for stock of", 0.5, 6, boxes.slice(boxes.indexOf("Box front"))],
      [11, "Pull holes", "Fence, from the front's upper edge to the hole", 4.5625, 3, "Front B1, B2, B3"],
      [12, "Pull holes", "Stop block, from either end to the hole", 25.375 / 4 - 64 / 25.4, 3, "Front B1, B2, B3"],
    ]);
  });

  test("numbers its steps from 1, and cautions have no number", () => {
    const table = SETUPS(three).slice(1);
    const numbers = table.filter((row) => row[1] !== "Caution").map(([step]) => step);
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(new Set(table.filter((row) => row[1] === "Caution").map(([step]) => step))).toEqual(new Set([""]));
  });

  test("one setting serves every piece that needs it, of whatever drawer and part", () => {
    const table = openings(["A", 18, 20, 20.5, 2], ["B", 24, 20, 20.5, 2]);
    const sides = steps("Crosscut", table).find((row) => row[3] === 20)!;
    expect(sides.slice(4)).toEqual([8, "Side A1, A2, B1, B2"]);
  });

  test("quantity multiplies pieces, never rows", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Quantity"],
      [18, 20, 20.5, 1, 5],
    ];
    expect(set("Groove", table).map(([, , pieces]) => pieces)).toEqual([20, 20, 20]);
  });

  test("a groove for a 1/2 in bottom takes four passes, fence at 1/4, 3/8, 1/2, 5/8, blade 1/4 high", () => {
    expect(
      set("Groove", one, [
        ["side thickness", "3/4"],
        ["bottom thickness", "1/2"],
        ["groove offset", "1/4"],
      ]),
    ).toEqual([
      ["Blade height", 0.25, 4],
      ["Fence to the near side of the blade", 0.25, 4],
      ["Fence to the near side of the blade", 0.375, 4],
      ["Fence to the near side of the blade", 0.5, 4],
      ["Fence to the near side of the blade", 0.625, 4],
    ]);
  });

  test("a bottom under the back leaves the box back without a groove, an applied bottom every piece", () => {
    expect(steps("Groove", one, [["bottom fit", "under back"]])[0]!.slice(4)).toEqual([3, "Side A1; Box front A1"]);
    expect(steps("Groove", one, [["bottom fit", "applied"]])).toEqual([]);
  });

  test("grooves of one height share the fence positions that they have in common", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Bottom thickness"],
      [18, 20, 20.5, 1, ""],
      [18, 20, 20.5, 1, "1/2"],
    ];
    expect(set("Groove", table).map(([, value, pieces]) => [value, pieces])).toEqual([
      [0.25, 8],
      [0.375, 8],
      [0.5, 8],
      [0.625, 4],
      [0.75, 4],
    ]);
  });

  test("rabbets: blade height, and the passes that make them as wide as the ends are thick", () => {
    expect(
      set("Rabbet", one, [
        ["corner joint", "rabbet"],
        ["joint depth", "3/16"],
        ["kerf", "1/4"],
      ]).map(([, value, pieces]) => [value, pieces]),
    ).toEqual([
      [0.1875, 2],
      [0, 2],
      [0.25, 2],
    ]);
  });

  test("joints that lock: baselines and sockets, and grooves that stop short of the ends", () => {
    const half = [
      ["corner joint", "half-blind dovetail"],
      ["joint depth", "3/8"],
    ];
    expect(set("Half-blind dovetail", one, half)).toEqual([
      ["Socket depth", 0.375, 2],
      ["Baseline, from the end", 0.375, 2],
      ["Baseline, from the end", 0.5, 2],
    ]);
    expect(set("Box joint", one, [["corner joint", "box joint"]])).toEqual([["Baseline, from the end", 0.5, 4]]);
    expect(cautions(one, half).some((text) => /stop it short of both ends/.test(String(text)))).toBe(true);
    expect(cautions(one).some((text) => /short of both ends/.test(String(text)))).toBe(false);
  });

  test("pocket holes follow the corners' fastening, and not the joint alone", () => {
    const fastened = (fastening: string, joint: string) =>
      set("Pocket holes", one, [
        ["corner fastening", fastening],
        ["corner joint", joint],
        ["joint depth", "1/4"],
      ]);
    expect(fastened("auto", "rabbet")).toEqual([]);
    expect(fastened("none", "butt")).toEqual([]);
    expect(fastened("pocket screws", "rabbet")).toEqual([["Jig and drill collar, for stock of", 0.5, 2]]);
  });

  test("an applied bottom is trimmed flush by its overhang", () => {
    const standards = [
      ["bottom fit", "applied"],
      ["bottom overhang", "1/8"],
    ];
    expect(set("Trim flush", one, standards)).toEqual([["Bearing-guided bit, overhang", 0.125, 1]]);
    expect(steps("Trim flush", one, [["bottom fit", "applied"]])).toEqual([]);
  });

  test("fronts that match are ripped in one strip, and crosscut in order from its top", () => {
    const table = openings(["A", 18, 20, 20.5, "5; 10; 5"], ["B", 18, 20, 20.5, "5; 10; 5"]);
    const matched = SETUPS(table, [["front match", "opening"]]);
    const ordered = matched.filter((row) => row[2] === "Stop, in order from the top");
    expect(ordered.map((row) => row.slice(3))).toEqual([
      [5, 2, "Front A1, B1"],
      [10, 2, "Front A2, B2"],
      [5, 2, "Front A3, B3"],
    ]);
    expect(matched.find((row) => row[1] === "Set aside")!.slice(3)).toEqual([20.25, 2, "Front A1, A2, A3, B1, B2, B3"]);
    expect(matched.find((row) => row[1] === "Rip" && row[3] === 19)!.slice(4)).toEqual([
      2,
      "Front A1, A2, A3, B1, B2, B3",
    ]);
  });

  test("between fronts of a strip as much is cut away as their gap and bands take, but no less than the kerf", () => {
    const between = (...standards: unknown[][]) =>
      set("Set aside", openings(["A", 18, 20, 20.5, 2], ["B", 24, 20, 20.5, 2]), [
        ["front match", "opening"],
        ...standards,
      ])
        .filter(([setting]) => String(setting).startsWith("To cut away"))
        .map(([, value, pieces]) => [value, pieces]);
    expect(between(["front gap", "1/4"])).toEqual([[0.25, 2]]);
    expect(between(["front gap", "1/4"], ["edge band", "1/16"])).toEqual([[0.375, 2]]);
    expect(between(["front gap", "1/16"])).toEqual([[0.125, 2]]);
  });

  test("with horizontal grain the strip is crosscut first, and ripped in order", () => {
    const matched = SETUPS(openings(["A", 18, 20, 20.5, 2]), [
      ["front match", "opening"],
      ["front grain", "horizontal"],
    ]);
    const fronts = matched.filter((row) => String(row[5]).startsWith("Front") && row[1] !== "Pull holes");
    expect(fronts.map((row) => row.slice(1, 5))).toEqual([
      ["Set aside", "Length across the grain, cuts between fronts included", 21.375, 1],
      ["Set aside", "To cut away between two fronts, kerf included", 0.125, 1],
      ["Crosscut", "Stop", 19.375, 1],
      ["Rip", "Fence, in order from the top", 10.625, 2],
    ]);
  });

  test("pull holes: one stop for holes that lie alike from both ends, else each from the left", () => {
    const spaced = (standards: unknown[][]) =>
      set("Pull holes", one, [["pull spacing", 4], ["pull height", 2], ...standards]);
    expect(spaced([])).toEqual([
      ["Fence, from the front's upper edge to the hole", 2, 1],
      ["Stop block, from either end to the hole", 7.6875, 1],
    ]);
    expect(spaced([["pull line", 8]]).slice(1)).toEqual([
      ["Stop block, from the left end to the hole", 5.9375, 1],
      ["Stop block, from the left end to the hole", 9.9375, 1],
    ]);
    expect(spaced([["pulls per front", "none"]])).toEqual([]);
  });

  test("edges are milled for their band", () => {
    expect(
      set("Pre-mill", one, [
        ["edge band", "1/16"],
        ["pre-mill", "1/32"],
      ]),
    ).toEqual([["Taken off each edge", 0.03125, 1]]);
  });

  // common practice: bottoms' grooves, rabbets and dadoes are cut inside, what nobody is to see outside
  test.each<[string, RegExp, unknown[][]]>([
    ["grooves for the bottom", /inner face against fence and table/, []],
    [
      "rabbets",
      /inner face on the table, the end against the fence/,
      [
        ["corner joint", "rabbet"],
        ["joint depth", 0.25],
      ],
    ],
    [
      "dadoes",
      /inner face on the table, the end against the fence/,
      [
        ["corner joint", "dado"],
        ["joint depth", 0.25],
      ],
    ],
    [
      "grooves of runners",
      /outer face against fence and table/,
      [
        ["slide", "wood runner"],
        ["runner", "side groove"],
      ],
    ],
    ["pocket holes", /into the outer faces/, []],
  ])("the face that a piece is worked on is named: %s", (_, face, standards) => {
    expect(cautions(one, standards).join()).toMatch(face);
  });

  test("grooves for runners have the outer face named right before them, those for bottoms the inner one", () => {
    const rows = SETUPS(one, [
      ["slide", "wood runner"],
      ["runner", "side groove"],
    ]);
    const before = (operation: string) => String(rows[rows.findIndex((row) => row[1] === operation) - 1]![2]);
    expect(before("Groove")).toMatch(/inner face/);
    expect(before("Runner groove")).toMatch(/outer face/);
  });

  test("fronts are banded before their pull holes are drilled, which are measured on the finished front", () => {
    const last = (standards: unknown[][]) => cautions(one, standards).slice(-2).join();
    expect(last([["edge band", "1/16"]])).toMatch(/edge band goes on before holes.*finished front.*test front/);
    expect(last([])).not.toMatch(/edge band/);
  });

  test("cautions stand before what they belong to", () => {
    const rows = SETUPS(one, [
      ["bottom fit", "applied"],
      ["pull kind", "shop-made"],
    ]);
    const before = (operation: string) => {
      const place = rows.findIndex((row) => row[1] === operation);
      const above = rows.slice(0, place).reverse();
      const since = above.findIndex((row) => row[1] !== "Caution");
      return above.slice(0, since < 0 ? undefined : since).map((row) => String(row[2]));
    };
    expect(String(rows[1]![2])).toMatch(/makers' manuals.*local codes/);
    expect(before("Rip").join()).toMatch(/Blade upright.*kick back/);
    expect(before("Crosscut").join()).toMatch(/never the fence together/);
    expect(before("Pull holes").join()).toMatch(/Clamp the stop block.*Nail the bottom.*away from corners/);
    expect(cautions(one).join()).toMatch(/Not a through cut: guard off.*push blocks and a featherboard/);
    expect(cautions(one, [["bottom fit", "applied"]]).join()).not.toMatch(/push blocks and a featherboard/);
  });

  /** common practice: no crosscut under 6 in and no rip under 3 in by hand; the saw's manual decides */
  test("narrow rips and short crosscuts have their caution right before the first of them", () => {
    const after = (text: RegExp) => (rows: unknown[][]) => {
      const place = rows.findIndex((row) => row[1] === "Caution" && text.test(String(row[2])));
      return place < 0 ? [] : [rows[place - 1]![3], rows[place + 1]![3]].map(Number);
    };
    const low = SETUPS(openings(["A", 18, 12, 20.5, "2 3/4 in; 1 part"]), [["slide", "wood runner"]]);
    const [wide, narrow] = after(/From here on narrow rips, under 3 in/)(low);
    expect(wide).toBeGreaterThanOrEqual(3);
    expect(narrow).toBeLessThan(3);
    const [long, short] = after(/From here on short pieces, under 6 in/)(low);
    expect(long).toBeGreaterThanOrEqual(6);
    expect(short).toBeLessThan(6);
    const large = SETUPS(openings(["A", 18, 12, 20.5, 1]));
    expect([after(/narrow rips/)(large), after(/short pieces/)(large)]).toEqual([[], []]);
  });

  test("short grooves, pocket holes, routers over nails and milling before the band: each has its caution", () => {
    const narrow = openings(["A", 7, 12, 20.5, 1]);
    expect(cautions(narrow).join()).toMatch(/under 6 in \(150 mm\) long, and the guard is off/);
    expect(cautions(one).join()).not.toMatch(/and the guard is off/);
    // Grooves are cut after crosscuts, and so it is told before.
    expect(cautions(narrow).join()).toMatch(/short pieces, under 6 in[^;]*Grooves come before, in the strip/);
    expect(cautions(one, [["corner joint", "box joint"]]).join()).toMatch(
      /on end in a box-joint jig on the miter gauge, never along the fence; guard off, .*guard back on at once/,
    );
    expect(cautions(one).join()).toMatch(/Clamp piece and jig/);
    const trimmed = cautions(one, [
      ["bottom fit", "applied"],
      ["bottom overhang", "1/8"],
      ["pre-mill", "1/32"],
    ]).join();
    expect(trimmed).toMatch(/meets a nail.*eye and ear protection.*router's manual decides/);
    expect(trimmed).toMatch(/Edges go past the cutter.*hands never over the cutter; its manual decides/);
    expect(String(cautions(one)[0])).toMatch(
      /Eye and ear protection, and dust.*tied to the wall before drawers are hung/,
    );
  });

  test("a kerf wider than a groove, or of nothing, is refused with its opening", () => {
    expectValueError(
      () => SETUPS(one, [["kerf", "3/8"]]),
      "Opening A: groove width is 1/4 in, narrower than the kerf, 3/8 in. This blade cannot cut it.",
    );
    expectValueError(
      () => SETUPS(one, [["kerf", "none"]]),
      "Opening A: kerf is 0, and no blade cuts so thin. Give what the blade cuts.",
    );
  });

  test("one bad row fails the whole call and names it, so that nobody cuts too little", () => {
    expect(shown(() => SETUPS(openings(["A", 18, 10, 20.5, 1], ["B", 18, 10, 9, 1])))).toMatch(
      /^#N\/A Opening B: No slide fits/,
    );
  });
});
