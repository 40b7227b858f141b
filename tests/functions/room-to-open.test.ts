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
        "Take an undermount or center-mount slide, or slides that are tied together, or a wider opening.",
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
        "Of a box 21 1/4 in deep comes out as far as its slide is long, 20 in: 1 1/4 in stay in the case.",
        "Make the box less deep, or the opening deeper for the next slide.",
      ],
    ]);
  });
});
