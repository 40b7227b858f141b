import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { CHECKS } from "../../src/functions";
import { shown } from "../cell";
import { openings } from "./tables";

/** Nothing to find: measured plywood, grooves of half its thickness. */
const QUIET = [
  ["side thickness", "15/32"],
  ["bottom thickness", "7/32"],
  ["groove depth", "7/32"],
];

const found = (table: unknown[][], standards: unknown[][] = []) =>
  CHECKS(table, [...QUIET.filter(([name]) => !standards.some(([other]) => other === name)), ...standards]).slice(1);
const one = (
  standards: unknown[][] = [],
  width: unknown = 18,
  height: unknown = 20,
  depth: unknown = 20.5,
  drawers: unknown = 2,
) => found(openings(["A", width, height, depth, drawers]), standards);

describe("CHECKS(openings, standards)", () => {
  test("is All clear where nothing is wrong or doubtful", () => {
    expect(CHECKS(openings(["A", 18, 20, 20.5, 2]), QUIET)).toEqual([
      ["Where", "Level", "Finding", "Remedy"],
      ["", "", "All clear", ""],
    ]);
  });

  test.each<[string, unknown[][], string, string, RegExp]>([
    [
      "a bottom groove near the edge",
      one([["groove offset", "3/16"]]),
      "A",
      "doubtful",
      /^Only 3\/16 in of wood stands below the groove/,
    ],
    [
      "a groove deeper than half the side",
      one([["groove depth", "1/4"]]),
      "A",
      "doubtful",
      /takes more than half of sides and ends 15\/32 in thick\.$/,
    ],
    [
      "a groove through the side",
      one([["groove depth", "15/32"]]),
      "A",
      "wrong",
      /groove depth is 15\/32 in\. It must be less than the side is thick/,
    ],
    [
      "a small offset with undermount slides",
      one([
        ["slide", "undermount"],
        ["undermount deduction", 1.5],
      ]),
      "A",
      "doubtful",
      /little for an undermount slide/,
    ],
    [
      "a side lower than its slide",
      one([], 18, 8, 20.5, 4),
      "A1, A2, A3, A4",
      "wrong",
      /lower than the slide, 1 3\/4 in/,
    ],
    ["a box of little use", one([], 18, 6.75, 20.5, 2), "A1, A2", "doubtful", /left inside/],
    [
      "a deep rabbet",
      one([
        ["corner joint", "rabbet"],
        ["joint depth", "3/8"],
      ]),
      "A",
      "doubtful",
      /leaves little of stock 15\/32 in/,
    ],
    [
      "little space below an applied bottom",
      one([
        ["bottom fit", "applied"],
        ["space below", "1/8"],
      ]),
      "A",
      "doubtful",
      /applied bottom has only 1\/8 in below/,
    ],
    [
      "a box much wider than deep",
      one([["bottom thickness", "15/32"]], 36, 20, 16.5),
      "A1, A2",
      "doubtful",
      /deep, may rack/,
    ],
    [
      "a thin bottom with a wide span",
      one([], 30, 20, 24),
      "A1, A2",
      "doubtful",
      /^The bottom, 7\/32 in thick, sags by an estimated/,
    ],
    ["a wide front with one pull", one([["pulls per front", 1]], 25, 20, 24), "A", "doubtful", /has one pull/],
    [
      "plywood by its nominal size",
      one([["side thickness", "3/4"]]),
      "A",
      "doubtful",
      /given as 3\/4 in; sanded plywood sold by that name may measure 0\.719 to 0\.781 in \(PS 1\); hardwood plywood .* \(HP-1\)/,
    ],
    [
      "upright grain on a wide solid front",
      one([["front material", "Cherry"]]),
      "A",
      "doubtful",
      /^A front of Cherry, which reads as solid wood, with upright grain, 19 3\/8 in wide/,
    ],
    [
      "a solid bottom held all round",
      one([["bottom material", "Cedar"]]),
      "A",
      "doubtful",
      /cannot move with the seasons/,
    ],
    [
      "a solid bottom slid in under the back",
      one([
        ["bottom material", "Cedar"],
        ["bottom fit", "under back"],
      ]),
      "A",
      "doubtful",
      /^The bottom is of Cedar, which reads as solid wood\./,
    ],
    ["an opening out of square", one([], "18; 18 1/16"), "A", "doubtful", /measured from 18 in to 18 1\/16 in/],
    [
      "a unit that does not suit",
      one([["bottom thickness", "15/32"]], 610),
      "A",
      "doubtful",
      /An opening width of 610 in is unlikely/,
    ],
    ["a date where a fraction was typed", one([], 46219), "A", "wrong", /may be a date/],
    [
      "fronts rounded down",
      one([["front step", "1/4"]], 18, 20.125),
      "A",
      "doubtful",
      /^Rounding the fronts down to 1\/4 in leaves/,
    ],
    ["fixed fronts that leave a rest", one([], 18, 20, 20.5, "6; 8 1/2"), "A", "doubtful", /^The fixed fronts leave/],
    [
      "a reveal wider than the carcase",
      one([["end reveal", 1]]),
      "A",
      "wrong",
      /stops short of the opening's left edge/,
    ],
    [
      "fronts that stand out of the carcase",
      one([["end reveal", "-1/4"]]),
      "A",
      "doubtful",
      /^Fronts stand 1\/4 in past the carcase at the left/,
    ],
    ["a tight gap", one([["front gap", "1/32"]]), "A", "doubtful", /gap of 1\/32 in between fronts is tight/],
    [
      "a kerf wider than the gap",
      one([
        ["front match", "opening"],
        ["front gap", "1/16"],
      ]),
      "A",
      "doubtful",
      /the grain jumps by 1\/16 in/,
    ],
    ["slides of too low a rating", one([["slide rating", 20]]), "A1, A2", "wrong", /carry 20 lb; an estimated/],
    [
      "a box that takes its rear clearance",
      one([
        ["box depth", "20 1/4"],
        ["slide lengths", 20],
      ]),
      "A",
      "doubtful",
      /leaves 1\/4 in behind it/,
    ],
    ["side-mount slides behind a face frame", one([["construction", "face frame"]]), "A", "doubtful", /need blocking/],
    ["no slide that fits", one([], 18, 20, 9), "A", "wrong", /No slide fits/],
    [
      "a slide that reaches past its box",
      one([["slide centerline", "1/2"]]),
      "A1, A2",
      "doubtful",
      /reaches past the box's edge/,
    ],
    [
      "tolerances of the shop's own that the slides do not allow",
      one([["thickness tolerance", "1/32"]]),
      "A",
      "doubtful",
      /^The side space is likely up to 3\/64 in short or 1\/64 in over a side of what the slide allows\.$/,
    ],
    [
      "a box as wide as its opening",
      one([
        ["slide", "undermount"],
        ["undermount deduction", "15/16"],
        ["groove offset", "1/2"],
      ]),
      "A",
      "wrong",
      /^The side space is 0 in: the box is as wide as its opening, or wider/,
    ],
    [
      "a screw that comes out of its stock",
      one([["slide screw length", "5/8"]]),
      "A1, A2",
      "wrong",
      /^A slide screw of 5\/8 in comes out of its stock, 15\/32 in in all/,
    ],
    [
      "a screw that nobody sells",
      one([["screw lengths", "1/2; 1; 1 1/2"]]),
      "A1, A2",
      "doubtful",
      /^None of the screw lengths suits as slide screw for this stock/,
    ],
    [
      "a front that no pull line falls on",
      one([["pull line", 40]]),
      "A1, A2",
      "doubtful",
      /^None of the places of pull line/,
    ],
    [
      "a pull whose holes lie past the front's side",
      one([["pull line", 2]]),
      "A1, A2",
      "doubtful",
      /^The holes of a pull lie past the side of a front 19 3\/8 in wide/,
    ],
    [
      "a pull below its front",
      one([["pull height", 12]]),
      "A1, A2",
      "doubtful",
      /^A pull 12 in down .* misses a front/,
    ],
    [
      "a case narrower than its frame's opening",
      found(
        [
          ["Width", "Height", "Depth", "Drawers", "Case width"],
          [18, 20, 20.5, 2, 17.5],
        ],
        [["construction", "face frame"]],
      ),
      "A",
      "doubtful",
      /narrower than the frame's opening, by 1\/4 in a side/,
    ],
    [
      "no space between box and front",
      one(
        [
          ["space below", "none"],
          ["match heights", "none"],
        ],
        18,
        20,
        20.5,
        2,
      ),
      "A1",
      "doubtful",
      /reaches 1\/16 in below its front/,
    ],
  ])("%s", (_, rows, where, level, finding) => {
    const match = rows.find((row) => finding.test(String(row[2])));
    expect(match, JSON.stringify(rows)).toBeDefined();
    expect(match!.slice(0, 2)).toEqual([where, level]);
    expect(String(match![3]).length).toBeGreaterThan(10);
  });

  test("the default tolerances, a guess at any shop, raise nothing; the shop's own raise what likely does not fit", () => {
    const raised = (...standards: unknown[][]) =>
      one(standards).filter((row) => /^The side space/.test(String(row[2]))).length;
    expect(raised()).toBe(0);
    expect(raised(["corner joint", "rabbet"], ["joint depth", "1/4"])).toBe(0);
    expect(raised(["opening tolerance", "1/16"])).toBe(1);
    expect(
      raised(["opening tolerance", "1/16"], ["slide tolerance low", "1/16"], ["slide tolerance high", "1/16"]),
    ).toBe(0);
    const remedy = one([["opening tolerance", "1/16"]]).find((row) => /^The side space/.test(String(row[2])))![3];
    expect(remedy).toMatch(/^Make the boxes 1\/32 in narrower.* measure closer.*side clearance, with slide tolerances/);
  });

  test("a cell that the plan has no use for is still found, and hides no other opening", () => {
    const table = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Front screws"],
      ["A", 18, 20, 20.5, 2, "many"],
      ["B", 18, 20, 9, 2, ""],
    ];
    expect(found(table).map((row) => row.slice(0, 3))).toEqual([
      ["A", "wrong", 'openings, row 2, Front screws is "many". It must be a whole number from 0 to 20.'],
      ["B", "wrong", expect.stringMatching(/No slide fits/)],
    ]);
  });

  test("knows at least twenty kinds of findings", () => {
    const codes = [...readFileSync("src/functions/words/findings.ts", "utf8").matchAll(/^ {2}"([a-z]+\.\w+)":/gm)];
    expect(new Set(codes.map(([, code]) => code)).size).toBeGreaterThanOrEqual(20);
  });

  test("what to do about an opening out of square goes by what was measured: no shim makes up for a depth", () => {
    const remedies = Object.fromEntries(
      CHECKS([
        ["Opening", "Width", "Height", "Depth", "Drawers"],
        ["A", "18; 18 1/8", "20; 20 1/8", "20 1/2; 20 5/8", 2],
      ]).map(([, , finding, remedy]) => [/^The (\w+) is measured/.exec(String(finding))?.[1], String(remedy)]),
    );
    expect(remedies["width"]).toMatch(/shim the slides/);
    expect([remedies["height"], remedies["depth"]].join()).not.toMatch(/shim/);
    expect(remedies["depth"]).toMatch(/Slides have room everywhere/);
  });

  test.each([
    ["front step", [["front step", "1/4"]], /^Rounding the fronts/],
    ["end reveal", [["end reveal", "-1/4"]], /^Fronts stand/],
  ])("a remedy's zero is one that the standards take: %s", (name, standards, finding) => {
    const remedy = String(one(standards, 18, 20.125).find((row) => finding.test(String(row[2])))![3]);
    const [, value] = /(?:step to|the reveal) (\w+)\.$/.exec(remedy)!;
    // A cell that is typed into turns digits into a number.
    const typed = Number.isNaN(Number(value)) ? value : Number(value);
    expect(
      one([[name, typed]])
        .flat()
        .join(),
    ).not.toMatch(/empty cell/);
  });

  test("a box that its owner made low is to be made higher", () => {
    const remedy = CHECKS([
      ["Opening", "Width", "Height", "Depth", "Drawers", "Box heights"],
      ["A", 18, 10, 20.5, 1, 2.5],
    ]).find((row) => /left inside/.test(String(row[2])))![3];
    expect(remedy).toMatch(/^A higher box/);
  });

  test("headings that are not read, zeros read as blanks and reveals without effect are listed", () => {
    const table = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Note", "Front gap", "Left reveal", "Rail above"],
      ["A", 18, 20, 20.5, 2, "by the door", 0, "", 0],
      ["B", 18, 20, 20.5, 2, "", 0, "1/8", 0],
    ];
    expect(found(table).map((row) => row.slice(0, 3))).toEqual([
      ["openings", "doubtful", "The column Note is not read."],
      ["A", "doubtful", "The 0 under Front gap is read as a blank."],
      ["B", "doubtful", "The left reveal has no effect on a side that has a neighbor."],
    ]);
  });

  test("reports bad rows and tables, and never fails on them", () => {
    const rows = found(openings(["A", "wide", 20, 20.5, 2], ["B", 18, 20, 20.5, "5; tall"], ["C", 18, 20, 20.5, 2]));
    expect(rows.map((row) => row.slice(0, 2))).toEqual([
      ["A", "wrong"],
      ["B", "wrong"],
    ]);
    expect(CHECKS([["a"], ["b"]])[1]!.slice(0, 2)).toEqual(["openings", "wrong"]);
    expect(CHECKS(openings(["A", 18, 20, 20.5, 2]), [["kerf", "thin"]])[1]!.slice(0, 2)).toEqual([
      "standards",
      "wrong",
    ]);
    expect(CHECKS(openings(["A", 18, 20, 20.5, 2], ["A", 18, 20, 20.5, 2]))[1]!.slice(0, 2)).toEqual([
      "openings",
      "wrong",
    ]);
    expect(shown(() => CHECKS(openings(["A", "#N/A", 20, 20.5, 2])))).toBe("#N/A");
  });
});
