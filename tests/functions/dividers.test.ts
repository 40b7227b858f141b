import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, PARTS, PIECES, QUOTE, SETUPS, WORKING } from "../../src/functions";
import { FREE, rates, sheetsAt } from "./money";
import { column, openings } from "./tables";

/**
 * A bicycle workshop's small-parts drawer, worked by hand: 24 wide, so a box of 24 − 2 × 1/2 = 23, inside
 * 23 − 2 × 1/2 = 22; 20 1/2 deep, so a slide and box of 20, inside 19; 8 high, so a box of 8 − 1/2 − 1/4 = 7 1/4, inside
 * 7 1/4 − 3/8 − 1/4 = 6 5/8.
 */
const bench = (drawers: unknown = 1, height = 8) => openings(["A", 24, height, 20.5, drawers]);
const divided = (dividers: unknown, ...more: unknown[][]) => [["dividers", dividers], ...more];
const parts = (standards: unknown[][], table = bench()) =>
  PARTS(table, standards)
    .filter(([name]) => name === "Divider")
    .map((row) => row.slice(1));
const working = (standards: unknown[][]) =>
  WORKING(bench(), "A1", standards)
    .filter(([size]) => /divider/i.test(String(size)))
    .map((row) => row);
const dadoes = (standards: unknown[][], table = bench()) =>
  SETUPS(table, standards)
    .filter(([, operation]) => operation === "Dadoes for dividers")
    .map((row) => row.slice(2));
const found = (standards: unknown[][], pattern = /divid|dado/i) =>
  CHECKS(bench(), standards)
    .filter(([, , finding]) => pattern.test(String(finding)))
    .map((row) => row.slice(0, 3));

const EITHER = "From either end: fence to the near side of the blade";
const LEFT = "From the end at the box's left: fence to the near side of the blade";
const FRONT = "From the front end: fence to the near side of the blade";

describe("dividers by their count", () => {
  test("none where nothing is said, or none", () => {
    expect(parts([])).toEqual([]);
    expect(parts(divided("none"))).toEqual([]);
    expect(dadoes([])).toEqual([]);
    expect(working([])).toEqual([]);
  });

  test("divide the inside evenly, in dadoes of box front and back", () => {
    // (22 − 3 × 1/4) / 4 = 21 1/4 / 4 = 5 5/16; 19 + 2 × 1/8 − 1/32 = 19 7/32.
    expect(working(divided(3))).toEqual([
      ["Divider cell", 5.3125, "(inside width 22 − 3 × divider thickness 1/4) / 4"],
      ["Divider length", 19.21875, "inside depth 19 + 2 × divider dado depth 1/8 − divider play 1/32"],
      ["Divider height", 6.625, "inside height 6 5/8"],
    ]);
    expect(parts(divided(3))).toEqual([["A1", 3, 19.21875, 6.625, 0.25, "Plywood", "length"]]);
    expect(parts(divided("3"))).toEqual(parts(divided(3)));
  });

  test("their dadoes lie alike from both ends, and are set once", () => {
    // Ends are 22 long: the first at 5 5/16, the second, in the middle, at 5 5/16 + 1/4 + 5 5/16 = 10 7/8. Kerf 1/8.
    const ends = [2, "Box front A1; Box back A1"];
    expect(dadoes(divided(3))).toEqual([
      ["Blade height", 0.125, ...ends],
      [EITHER, 5.3125, ...ends],
      [EITHER, 5.4375, ...ends],
      [EITHER, 10.875, ...ends],
      [EITHER, 11, ...ends],
    ]);
  });

  test("in ends that stand in the sides' rabbets they begin behind these", () => {
    // Ends 22 + 2 × 1/4 = 22 1/2 long: 1/4 more from each end.
    expect(dadoes(divided(1, ["corner joint", "rabbet"], ["joint depth", 0.25])).map((row) => row[1])).toEqual([
      0.125, // (22 − 1/4) / 2 + 1/4
      11.125,
      11.25,
    ]);
  });

  test("from side to side they stand in the sides", () => {
    // (19 − 2 × 1/4) / 3 = 6 1/6; sides are 20 long, the inside begins 1/2 from their ends: 6 2/3.
    expect(dadoes(divided(2, ["divider run", "side to side"])).map((row) => [row[0], row[1], row[3]])).toEqual([
      ["Blade height", 0.125, "Side A1"],
      [EITHER, 20 / 3, "Side A1"],
      [EITHER, 20 / 3 + 1 / 8, "Side A1"],
    ]);
    expect(parts(divided(2, ["divider run", "side to side"]))[0]!.slice(1, 4)).toEqual([2, 22.21875, 6.625]);
  });

  test("loose they are as long as the inside less their play, and nothing is cut for them", () => {
    expect(parts(divided(3, ["divider fit", "loose"]))[0]!.slice(1, 4)).toEqual([3, 18.96875, 6.625]);
    expect(dadoes(divided(3, ["divider fit", "loose"]))).toEqual([]);
  });

  test("behind a front that is the box's own they stand in that and in the back", () => {
    const own = [
      ["front style", "integral"],
      ["front grain", "horizontal"],
    ];
    expect(dadoes(divided(1, ...own)).map((row) => row[3])).toContain("Box back A1");
    expect(new Set(dadoes(divided(1, ...own)).map((row) => row[3]))).toEqual(
      new Set(["Front A1; Box back A1", "Front A1", "Box back A1"]),
    );
    // Front 24 − 2 × 3/32 = 23 13/16; the inside begins (23 13/16 − 22) / 2 = 29/32 from its end; the middle cell is 10 7/8.
    expect(dadoes(divided(1, ...own)).filter((row) => row[3] === "Front A1")).toEqual([
      [EITHER, 29 / 32 + 10.875, 1, "Front A1"],
      [EITHER, 29 / 32 + 11, 1, "Front A1"],
    ]);
  });

  /** common practice: a dado that would show at a drawer's upper edge is stopped where its divider ends */
  test("a front that is the box's own shows them at its upper edge: CHECKS tells how far below that to stop them", () => {
    const own = [["front style", "integral"]];
    const showing = (...more: unknown[][]) =>
      CHECKS(bench(), divided(1, ...own, ...more))
        .filter(([, , finding]) => /run out/.test(String(finding)))
        .map((row) => row.slice(0, 4));
    // The front goes from 3/32 to 7 29/32. Behind it the box begins 1/2 higher and is 7 13/16 − 1/2 − 1/4 high, in steps
    // of 1/8: from 19/32 to 7 19/32, where its divider ends as well.
    expect(showing()).toEqual([
      [
        "A1",
        "doubtful",
        "The dividers' dadoes run out at the front's upper edge.",
        "Stop them 5/16 in below it, or take loose dividers.",
      ],
    ]);
    // On a bottom at 19/32 + 3/8 + 1/4 = 1 7/32 one of 4 ends at 5 7/32, which is 2 11/16 below the edge.
    expect(showing(["divider height", 4])[0]![3]).toContain("Stop them 2 11/16 in below it");
    for (const quiet of [
      ["front style", "inset"],
      ["divider fit", "loose"],
      ["divider run", "side to side"],
      ["top edge band", "1/32"],
    ]) {
      expect(showing(quiet)).toEqual([]);
    }
  });
});

describe("dividers by their spacing", () => {
  test("are as many as go in, and what is left stands behind the last", () => {
    // 5 × (4 + 1/4) = 21 1/4 of 22: 3/4 is left.
    expect(working(divided("4 in"))).toEqual([
      ["Divider cell", 4, "as the standard says"],
      ["Last divider cell", 0.75, "inside width 22 − 5 × spacing 4 − 5 × divider thickness 1/4"],
      ["Divider length", 19.21875, "inside depth 19 + 2 × divider dado depth 1/8 − divider play 1/32"],
      ["Divider height", 6.625, "inside height 6 5/8"],
    ]);
    expect(parts(divided("5 1/4"))[0]![1]).toBe(3);
    // 3 × 7 1/6 and 2 × 1/4 are 22: two, and the last cell is as wide as the others.
    expect(parts(divided(43 / 6))[0]![1]).toBe(2);
  });

  test("their dadoes are set one by one from one end, the box's left or the side's front", () => {
    expect(dadoes(divided("9 in"))).toEqual([
      ["Blade height", 0.125, 2, "Box front A1; Box back A1"],
      [LEFT, 9, 2, "Box front A1; Box back A1"],
      [LEFT, 9.125, 2, "Box front A1; Box back A1"],
      [LEFT, 18.25, 2, "Box front A1; Box back A1"],
      [LEFT, 18.375, 2, "Box front A1; Box back A1"],
    ]);
    expect(dadoes(divided("12 in", ["divider run", "side to side"])).map((row) => row.slice(0, 2))).toEqual([
      ["Blade height", 0.125],
      [FRONT, 12.5],
      [FRONT, 12.625],
    ]);
  });

  test("in millimeters, and with a unit of their own", () => {
    const metric = [["unit", "mm"], ...divided(`4"`)];
    // 600 − 25.4 = 574.6, inside 550.6: 5 × (101.6 + 6) = 538.
    const [row] = PARTS(openings(["A", 600, 200, 520, 1]), metric).filter(([name]) => name === "Divider");
    expect(row!.slice(2, 6)).toEqual([5, 476 + 6 - 0.8, 200 - 18 - 10 - 6, 6]);
  });
});

describe("of each drawer by itself", () => {
  test("a list from the top, and as often as the opening is there", () => {
    const three = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Quantity"],
      ["A", 24, 24, 20.5, 3, 2],
    ];
    // Two of 2, and two of 5: all of one size.
    expect(parts(divided("none; 2; 4 in"), three).map((row) => row.slice(0, 2))).toEqual([["A2, A3", 14]]);
    expect(column(CHECKS(bench(), divided("none; 2")), "Finding")).toContain(
      "Opening A: dividers lists 2 for 1 drawers. Give one for all, or one a drawer.",
    );
  });

  test("equal boxes of unlike dividers have bands of their own", () => {
    const banded = (dividers: string) =>
      HARDWARE(bench(2, 16), divided(dividers, ["box edge band", "1/64"])).filter(
        ([item, , , , note]) => item === "Edge band" && /edges 1\/4 in/.test(String(note)),
      );
    // 2 × 19 7/32 in are 3.203 ft, 4 × are 6.406: up to a tenth.
    expect(banded("none; 2").map((row) => row[2])).toEqual([3.3]);
    expect(banded("2; 2").map((row) => row[2])).toEqual([6.5]);
  });

  test("each is a piece with its band, its set-ups, and its place in the sheets", () => {
    const pieces = PIECES(bench(), divided(2, ["box edge band", "1/64"], ["divider material", "Birch"])).filter(
      ([, , part]) => part === "Divider",
    );
    expect(pieces.map((row) => [row[0], row[4], row[6], row[8]])).toEqual([
      ["A1 divider 1", 6.609375, "Birch", "top 1/64 in"],
      ["A1 divider 2", 6.609375, "Birch", "top 1/64 in"],
    ]);
    const quote = (dividers: unknown) =>
      Number(
        column(
          QUOTE(bench(), divided(dividers), sheetsAt(46.08), rates({ ...FREE, "charge sheets": "used" })),
          "Amount",
        ).at(-1),
      );
    // A sheet of 96 × 48 is 4608 square inches, one cent each.
    expect(quote(3) - quote("none")).toBeCloseTo((3 * 19.21875 * 6.625) / 100, 1);
  });
});

describe("what dividers do not go well with", () => {
  test("cells that no hand goes into, 2 in at least", () => {
    // (22 − 9 × 1/4) / 10 = 1 39/40.
    expect(found(divided(9))).toEqual([["A1", "doubtful", "A cell between dividers is ≈ 1 31/32 in wide."]]);
    expect(found(divided(8))).toEqual([]);
    expect(found(divided("4 in"))).toEqual([["A1", "doubtful", "A cell between dividers is 3/4 in wide."]]);
  });

  test("more than go in", () => {
    expect(found(divided(88))).toEqual([
      ["A", "wrong", "Opening A: 88 dividers 1/4 in thick leave nothing of 22 in inside."],
    ]);
    expect(found(divided("22 in"))).toEqual([
      ["A", "wrong", "Opening A: dividers 22 in apart leave no second cell in 22 in inside."],
    ]);
    expect(found(divided("0.01 in", ["divider thickness", 0.01]))[0]![2]).toMatch(/are 1099 in 22 in inside/);
  });

  test("dadoes through what they are cut into, or through more than half of it", () => {
    expect(found(divided(3, ["divider dado depth", 0.5]))).toEqual([
      ["A", "wrong", "Opening A: divider dado depth is 1/2 in. It must be less than the end is thick, 1/2 in."],
    ]);
    expect(found(divided(3, ["divider dado depth", "5/16"], ["divider run", "side to side"]))).toEqual([
      ["A1", "doubtful", "The dividers' dadoes, 5/16 in deep, take more than half of the side's 1/2 in."],
    ]);
    expect(found(divided(3, ["divider dado depth", "1/4"]))).toEqual([]);
    expect(found(divided(3, ["divider dado depth", 0.5], ["divider fit", "loose"]), /deep|through/)).toEqual([]);
  });

  test("dadoes on both faces of a side that meet", () => {
    const runners = [
      ["slide", "wood runner"],
      ["runner", "side groove"],
      ["divider run", "side to side"],
    ];
    // Runners take 1/4 of 1/2, which leaves 1/4.
    expect(found(divided(1, ...runners, ["divider dado depth", 0.25]))).toContainEqual([
      "A1",
      "wrong",
      "The dividers' dadoes, 1/4 in deep, meet the runner's groove, 1/4 in deep, in a side 1/2 in thick.",
    ]);
    expect(found(divided(1, ...runners), /meet the runner/)).toEqual([]);
  });

  test("dividers higher than the box is inside", () => {
    expect(found(divided(3, ["divider height", 6.75]))).toEqual([
      ["A1", "wrong", "The dividers are 6 3/4 in high, and the box is 6 5/8 in high inside."],
    ]);
    expect(found(divided(3, ["divider height", 6.625]))).toEqual([]);
  });

  test("standards of dividers where there are none", () => {
    expect(found([["divider thickness", 0.5]], /no effect/)[0]![2]).toBe(
      "The standard divider thickness has no effect: no opening has dividers.",
    );
  });
});
