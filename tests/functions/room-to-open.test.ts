import { describe, expect, test } from "vitest";
import { CHECKS } from "../../src/functions";
import { openings } from "./tables";

const found = (table: unknown[][], standards: unknown[][], pattern: RegExp) =>
  CHECKS(table, standards)
    .filter(([, , finding]) => pattern.test(String(finding)))
    .map((row) => row.slice(0, 4));

/** Common practice. */
describe("a tall narrow box racks on slides at its sides", () => {
  // A spice pull-out: 10 wide, so its box 9; 20 1/2 deep, so 20; 18 1/2 high or more.
  const tall = (width: number) => openings(["A", width, 20, 20.5, 1]);

  test("where it is more than twice as deep as wide, and higher than wide", () => {
    expect(found(tall(10), [], /rack/)).toEqual([
      [
        "A1",
        "doubtful",
        "The box, 9 in wide, is 19 1/4 in high and 20 in deep: on slides at its sides it may rack.",
        "Take undermount slides, or slides that are tied together, or a wider opening.",
      ],
    ]);
    // 10 wide: exactly twice is not more.
    expect(found(tall(11), [], /rack/)).toEqual([]);
    expect(found(openings(["A", 10, 8, 20.5, 1]), [], /rack/)).toEqual([]);
    expect(found(tall(10), [["slide", "wood runner"]], /rack/)).toEqual([]);
  });
});

describe("fronts keep from the cabinet's ends what a handle, a door or a wall there wants", () => {
  const two = openings(["A", 18, 20, 20.5, 2], ["B", 24, 20, 20.5, 2]);

  test("by the reveal of overlay fronts", () => {
    expect(found(two, [["end clearance", "3/4"]], /end/)).toEqual([
      [
        "A",
        "wrong",
        "At the cabinet's left end the fronts keep 1/16 in from it, and the end clearance is 3/4 in.",
        "Make that reveal or a filler 11/16 in wider, or they meet what stands there.",
      ],
      ["B", "wrong", expect.stringMatching(/^At the cabinet's right end the fronts keep 1\/16 in/), expect.anything()],
    ]);
    expect(found(two, [["end clearance", "1/16"]], /end clearance/)).toEqual([]);
    expect(found(two, [], /end clearance/)).toEqual([]);
  });

  test("by the carcase and gap of inset ones, by the stile that shows of a face frame", () => {
    const inset = (asked: string) => [
      ["front style", "inset"],
      ["end clearance", asked],
    ];
    // 3/4 + 3/32.
    expect(found(two, inset("27/32"), /end clearance/)).toEqual([]);
    expect(found(two, inset("7/8"), /keep 27\/32 in from it/)).toHaveLength(2);
    const framed = (asked: string) => [
      ["construction", "face frame"],
      ["end clearance", asked],
    ];
    // 1 1/2 − 1/2.
    expect(found(two, framed("1"), /end clearance/)).toEqual([]);
    expect(found(two, framed("1 1/4"), /keep 1 in from it/)).toHaveLength(2);
  });
});

describe("a slide brings out no more of its box than it is long", () => {
  test("a box that is deeper by more than an inch stays in the case", () => {
    const deep = (depth: number) => found(openings(["A", 18, 10, 21.75, 1]), [["box depth", depth]], /comes out/);
    // Opening 21 3/4: the longest slide is 20.
    expect(deep(21)).toEqual([]);
    expect(deep(21.25)).toEqual([
      [
        "A",
        "doubtful",
        "The box is 21 1/4 in deep, and comes out as far as its slide is long, 20 in: 1 1/4 in stay in the case.",
        "Make the box less deep, or the opening deeper for the next slide.",
      ],
    ]);
  });

  // Opening 546 deep: 500 with 12 behind it.
  test("in metric jobs by more than 25 mm", () => {
    const deep = (depth: number) =>
      found(
        openings(["A", 450, 250, 546, 1]),
        [
          ["unit", "mm"],
          ["box depth", depth],
        ],
        /comes out/,
      ).length;
    expect([deep(525), deep(526)]).toEqual([0, 1]);
  });

  test("the same on a center-mount slide; runners are as long as their box, and undermount slides have data sheets", () => {
    const deep = (...standards: unknown[][]) =>
      found(openings(["A", 18, 10, 21.75, 1]), [["box depth", 21.25], ...standards], /comes out/).length;
    expect(deep(["slide", "center-mount"])).toBe(1);
    expect(deep(["slide", "wood runner"])).toBe(0);
    const undermount = [
      ["slide", "undermount"],
      ["undermount deduction", 0.4],
      ["undermount depth difference", "none"],
    ];
    expect(deep(...undermount)).toBe(0);
    // What is held against a data sheet is told in its words.
    expect(
      found(openings(["A", 18, 10, 21.75, 1]), [["box depth", 21.25], ...undermount], /asks for 20 in/),
    ).toHaveLength(1);
  });

  test("where slides on sale leave out what the opening has room for", () => {
    // 24 1/2 deep has room for 24, and the shop buys none between 18 and 28.
    const shop = [["slide lengths", "18; 28"]];
    const table = openings(["A", 18, 10, 24.5, 1]);
    expect(found(table, [...shop, ["box depth", 24]], /comes out/)[0]![2]).toBe(
      "The box is 24 in deep, and comes out as far as its slide is long, 18 in: 6 in stay in the case.",
    );
    expect(found(table, shop, /comes out/)).toEqual([]);
  });

  test("of a front that is its box's own, only what lies behind it counts", () => {
    const deep = (depth: number) =>
      found(
        openings(["A", 18, 10, 22, 1]),
        [
          ["front style", "integral"],
          ["box depth", depth],
        ],
        /comes out/,
      );
    // A front of 3/4 sets the slide back: 22 − 3/4 − 1/2 has room for 20. Behind it 21 and 21 1/4 are left.
    expect(deep(21.75)).toEqual([]);
    expect(deep(22)[0]![2]).toMatch(/^The box is 21 1\/4 in deep, .* 1 1\/4 in stay in the case\.$/);
  });
});
