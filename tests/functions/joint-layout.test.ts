import { describe, expect, test } from "vitest";
import { CHECKS, SETUPS, WORKING } from "../../src/functions";
import { column, openings } from "./tables";

/** A chest for a saddler's thread: 18 × 6 1/4 × 20 1/2, so that its box is 17 wide, 5 1/2 high and 20 deep. */
const chest = openings(["A", 18, 6.25, 20.5, 1]);
const dovetails = (...more: unknown[][]) => [["corner joint", "dovetail"], ["joint pitch", "1 3/8"], ...more];
const marks = (table: unknown[][], standards: unknown[][], operation = "Dovetail") =>
  SETUPS(table, standards)
    .filter((row) => row[1] === operation && /^Mark/.test(String(row[2])))
    .map((row) => row[3]);
const working = (standards: unknown[][], size: string) =>
  WORKING(chest, "A1", standards)
    .filter(([name]) => name === size)
    .map((row) => row.slice(1));

describe("dovetails are laid out by their pitch, with half pins at both edges", () => {
  test("the pitch is the nearest that comes out even", () => {
    // 5 1/2 / 1 3/8 = 4 tails.
    expect(working(dovetails(), "Joint pitch")).toEqual([[1.375, "side height 5 1/2 / 4"]]);
    // 5 1/2 / 1 1/2 = 3.67, so 4 as well; / 1 1/4 = 4.4; / 2 = 2.75, so 3 of 1 5/6.
    expect(
      working(
        dovetails(["joint pitch", 2])
          .slice(0, 1)
          .concat([["joint pitch", 2]]),
        "Joint pitch",
      ),
    ).toEqual([[11 / 6, "side height 5 1/2 / 3"]]);
    expect(working([["corner joint", "dovetail"]], "Joint pitch")).toEqual([]);
  });

  test("pins are a third of the pitch where nothing else is said", () => {
    expect(working(dovetails(), "Pin width")).toEqual([[11 / 24, "a third of joint pitch 1 3/8"]]);
    expect(working(dovetails(["pin width", "3/8"]), "Pin width")).toEqual([[0.375, "as the standard says"]]);
  });

  test("each tail begins and ends half a pin from the middle between tails", () => {
    // Half a pin, 3/16; then pin middles at 1 3/8, 2 3/4, 4 1/8; half a pin up to 5 1/2.
    expect(marks(chest, dovetails(["pin width", "3/8"]))).toEqual([
      3 / 16,
      1.375 - 3 / 16,
      1.375 + 3 / 16,
      2.75 - 3 / 16,
      2.75 + 3 / 16,
      4.125 - 3 / 16,
      4.125 + 3 / 16,
      5.5 - 3 / 16,
    ]);
    const row = SETUPS(chest, dovetails()).find((one) => /^Mark/.test(String(one[2])))!;
    expect([row[2], ...row.slice(4)]).toEqual([
      "Mark, from the upper edge to the edge of a tail",
      4,
      "Side A1; Box front A1; Box back A1",
    ]);
  });

  test("of a back that ends above the bottom they are its own", () => {
    const standards = dovetails(["bottom fit", "under back"], ["pin width", "3/8"]);
    // Inside height 5 1/2 − 3/8 − 1/4 = 4 7/8, so 4 tails of 1 7/32.
    expect(working(standards, "Joint pitch at the back")).toEqual([[39 / 32, "box back height 4 7/8 / 4"]]);
    expect(marks(chest, standards)).toContain(39 / 32 + 3 / 16);
    expect(marks(chest, standards)).toContain(1.375 + 3 / 16);
  });

  test("in an integral front as well", () => {
    const standards = [
      ["front style", "integral"],
      ["front grain", "horizontal"],
      ["joint pitch", 1],
    ];
    const rows = SETUPS(chest, standards).filter((row) => /^Mark/.test(String(row[2])));
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows.map((row) => `${row[1]}: ${row[5]}`))).toEqual(
      new Set(["Half-blind dovetail: Side A1; Front A1"]),
    );
  });
});

describe("box joints are an odd number of equal fingers", () => {
  const fingers = (...more: unknown[][]) => [["corner joint", "box joint"], ["joint pitch", 1], ...more];

  test("so that both edges have one of the side's", () => {
    // Fingers of 1/2: 5 1/2 / 1/2 = 11, odd.
    expect(working(fingers(), "Finger width")).toEqual([[0.5, "side height 5 1/2 / 11"]]);
    expect(marks(chest, fingers(), "Box joint")).toEqual([0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5]);
    // Of 3/8: 14.67, and the nearest odd number is 15.
    expect(
      working(
        [
          ["corner joint", "box joint"],
          ["joint pitch", "3/4"],
        ],
        "Finger width",
      ),
    ).toEqual([[11 / 30, "side height 5 1/2 / 15"]]);
  });
});

describe("what cannot be cut is found", () => {
  const found = (standards: unknown[][], pattern: RegExp) =>
    CHECKS(chest, standards)
      .filter(([, , finding]) => pattern.test(String(finding)))
      .map((row) => row.slice(0, 3));

  test("pins narrower than the cutter that goes between tails", () => {
    expect(found(dovetails(["joint cutter", "1/2"]), /joint cutter/)).toEqual([
      ["A1", "wrong", "Pins or fingers ≈ 29/64 in wide are narrower than the joint cutter, 1/2 in."],
    ]);
    expect(found(dovetails(["joint cutter", "1/4"]), /cutter/)).toEqual([]);
  });

  test("pins as wide as their pitch leave no tails", () => {
    expect(found(dovetails(["pin width", "1 3/8"]), /tails/)).toEqual([
      [
        "A",
        "wrong",
        "Opening A: pin width is 1 3/8 in. It must be less than the joint pitch, 1 3/8 in, or no tails are left.",
      ],
    ]);
  });

  test("a pitch without such a joint has no effect", () => {
    expect(column(CHECKS(chest, [["joint pitch", 1]]), "Finding")).toContain(
      "The standard joint pitch has no effect: no opening has dovetails or box joints.",
    );
  });
});
