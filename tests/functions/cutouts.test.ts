import { describe, expect, test } from "vitest";
import { CHECKS, PARTS, WORKING } from "../../src/functions";
import { shown } from "../cell";
import { openings } from "./tables";

/**
 * A vanity, worked by hand: an opening of 24 × 12 × 20 1/2 takes a box 23 wide and 20 deep, of sides and ends 1/2 thick:
 * 22 × 19 inside.
 */
const vanity = (drawers: unknown = 1) => openings(["V", 24, 12, 20.5, drawers]);
const found = (table: unknown[][], standards: unknown[][], pattern = /utout/) =>
  CHECKS(table, standards)
    .filter(([, , finding]) => pattern.test(String(finding)))
    .map((row) => row.slice(0, 4));
const left = (standards: unknown[][], drawer = "V1", table = vanity()) =>
  WORKING(table, drawer, standards)
    .filter(([size]) => /cutout/.test(String(size)))
    .map(([, value]) => value);
const BY_HAND =
  "The other tables have the box whole: cut its back, bottom and dividers by hand, and wall the cutout with stock of sides and ends.";

/** common practice: a drawer under a sink goes round trap and lines as a U, its cutout walled like the box */
describe("a drawer cut out for plumbing", () => {
  test("is told what is left of it: at the left, at the right, before it", () => {
    // 23 − 9 = 14, 7 on each side, less two walls of 1/2; 20 − 8 − 2 × 1/2 before it.
    const cutout = [
      ["cutout width", 9],
      ["cutout depth", 8],
    ];
    expect(WORKING(vanity(), "V1", cutout).filter(([size]) => /cutout/.test(String(size)))).toEqual([
      ["Inside at the left of the cutout", 6, "left of the cutout 7 − 2 × side thickness 1/2"],
      [
        "Inside at the right of the cutout",
        6,
        "box width 23 − left of the cutout 7 − cutout width 9 − 2 × side thickness 1/2",
      ],
      ["Inside before the cutout", 11, "inside depth 19 − cutout depth 8"],
    ]);
    expect(found(vanity(), cutout)).toEqual([
      [
        "V1",
        "doubtful",
        "A cutout 9 in wide and 8 in deep leaves 6 in inside at its left, 6 in at its right and 11 in before it.",
        BY_HAND,
      ],
    ]);
    expect(PARTS(vanity(), cutout)).toEqual(PARTS(vanity()));
  });

  test("what is left at its sides, the cutout and its two walls at each side are the box's width", () => {
    for (const from of ["center", "2 3/8", 9.5]) {
      const [a, b] = left([
        ["cutout width", "7 1/4"],
        ["cutout left", from],
      ]) as [number, number, number];
      expect(a + b + 7.25 + 4 * 0.5).toBe(23);
      if (from !== "center") expect(a).toBe(from === 9.5 ? 8.5 : 1.375);
    }
  });

  test("has one of its own each drawer, or none, from the top", () => {
    const cutout = [["cutout width", "9; none"]];
    expect(found(vanity(2), cutout).map(([where]) => where)).toEqual(["V1"]);
    expect(left(cutout, "V2", vanity(2))).toEqual([]);
    expect(shown(() => WORKING(vanity(2), "V1", [["cutout width", "9; none; 8"]]))).toMatch(
      /cutout width lists 3 for 2 drawers/,
    );
    expect(found(vanity(), [])).toEqual([]);
  });

  test("is wrong where it leaves nothing, and narrow where no hand goes in", () => {
    const of = (...standards: unknown[][]) => found(vanity(), standards)[0]!.slice(1);
    // 23 − 18 1/2 = 4 1/2, 2 1/4 a side, less 1.
    expect(of(["cutout width", 18.5])).toEqual([
      "doubtful",
      "A cutout 18 1/2 in wide and 12 in deep leaves 1 1/4 in inside at its left, 1 1/4 in at its right and 7 in before it.",
      `A hand wants 2 in (50 mm) or more: make it smaller, or move it. ${BY_HAND}`,
    ]);
    // From 3, less two walls: exactly 2; from 1, nothing.
    expect(of(["cutout width", 9], ["cutout left", 3])[2]).toBe(BY_HAND);
    expect(of(["cutout width", 9], ["cutout left", 1])).toEqual([
      "wrong",
      expect.stringMatching(/leaves 0 in inside at its left/),
      expect.anything(),
    ]);
    expect(of(["cutout width", 9], ["cutout left", 15])).toEqual([
      "wrong",
      expect.stringMatching(/0 in at its right/),
      expect.anything(),
    ]);
    expect(of(["cutout width", 9], ["cutout depth", 19])).toEqual([
      "wrong",
      expect.stringMatching(/0 in before it/),
      expect.anything(),
    ]);
  });

  test("before it stands a wall as thick as the ends, and behind a box front in dadoes the space begins later", () => {
    // 20 − 2 × 1/4 of insets − 2 × 1/2 is inside; the wall before the cutout has no inset: 18 1/2 + 1/4 − 12.
    const dado = [
      ["corner joint", "dado"],
      ["joint depth", "1/4"],
      ["cutout width", 9],
    ];
    expect(left(dado)[2]).toBe(6.75);
    // 20 − 2 × 3/4 − 12.
    expect(
      left([
        ["end thickness", "3/4"],
        ["cutout width", 9],
      ])[2],
    ).toBe(6.5);
  });

  test("leaves a center-mount slide nothing to run under, unless it is beside it", () => {
    const center = (from: unknown) =>
      found(
        vanity(),
        [
          ["slide", "center-mount"],
          ["cutout width", 9],
          ["cutout left", from],
        ],
        /slide runs/,
      );
    // The box is 23 3/4 wide, its middle at 11 7/8.
    expect(center("center")).toEqual([
      ["V1", "wrong", "The cutout is where the center-mount slide runs.", "Take slides at both sides."],
    ]);
    expect(center("2 7/8")).toEqual([]);
    expect(center(11.875)).toEqual([]);
  });

  test("its sizes have no effect where there is none", () => {
    expect(found(vanity(), [["cutout depth", 8]])[0]!.slice(0, 3)).toEqual([
      "standards",
      "doubtful",
      "The standard cutout depth has no effect: no opening has a cutout.",
    ]);
  });
});
