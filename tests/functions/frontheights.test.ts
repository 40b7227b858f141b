import { describe, expect, test } from "vitest";
import { FRONTHEIGHTS } from "../../src/functions";
import { expectValueError } from "../cell";

const heights = (drawers: unknown, step?: unknown, face: unknown = "27 5/8") =>
  FRONTHEIGHTS(face, drawers as never, null, null, null, step).map(([height]) => height as number);

describe("FRONTHEIGHTS(face_height, drawers, gap, top_reveal, bottom_reveal, step, unit)", () => {
  test("a lone whole number, typed or text, is a count of equal fronts", () => {
    const three = [9.125, 9.125, 9.125];
    expect([heights(3), heights("3"), heights([[3]]), heights([[""], [3], [0]])]).toEqual([three, three, three, three]);
  });

  test("one fixed front has its mark, and leaves the rest at the bottom", () => {
    expect([heights('3"'), heights("3 1/2"), heights(3.5), heights("76.2 mm")]).toEqual([[3], [3.5], [3.5], [3]]);
  });

  test("fixed heights stay, and parts share what they leave", () => {
    expect(heights("5 1/2; 1 part; 1 part")).toEqual([5.5, 10.9375, 10.9375]);
    expect(heights("1 part\n2 Parts")).toEqual([9 + 1 / 6, 18 + 1 / 3]);
    expect(heights([["5 1/2"], ["1.5 parts"], [""], ["1/2 part"]])).toEqual([5.5, 16.40625, 5.46875]);
    expect(
      heights([
        [4, 5],
        ["1 part", null],
      ]),
    ).toEqual([4, 5, 18.375]);
  });

  test("with a step, shared fronts are rounded down, and spare steps go to the lowest upward", () => {
    expect(heights("1 part; 2 parts", "1/16")).toEqual([9.125, 18.375]);
    expect(heights("4", 1, 30)).toEqual([7, 7, 7, 8]);
    expect(heights("1 part; 5 1/4; 1 part", 1, 16.5)).toEqual([5, 5.25, 6]);
  });

  test("what is less than a step widens the bottom reveal", () => {
    expect(heights("2", "1/4", 10)).toEqual([4.75, 5]);
    expect(FRONTHEIGHTS(410, "140; 1 part; 2 parts" as never, 3, 0, 0, 5, "mm" as never)).toEqual([[140], [85], [175]]);
  });

  test.each([
    ["", "drawers is blank or 0. It needs a count of fronts, or a list such as 5 1/2; 1 part; 2 parts."],
    [0, "drawers is blank or 0. It needs a count of fronts, or a list such as 5 1/2; 1 part; 2 parts."],
    [
      101,
      `drawers is 101. A lone whole number is a count of fronts, from 1 to 100; one front of a fixed height has its mark, as 3" or 80 mm.`,
    ],
    [
      "0",
      `drawers is 0. A lone whole number is a count of fronts, from 1 to 100; one front of a fixed height has its mark, as 3" or 80 mm.`,
    ],
    [
      -2,
      `drawers is -2. A lone whole number is a count of fronts, from 1 to 100; one front of a fixed height has its mark, as 3" or 80 mm.`,
    ],
    [
      "5; tall",
      `drawers, item 2 is "tall". It can be a length, as 5 1/2, or parts of what is left, as 2 parts; a count stands alone.`,
    ],
    [
      "5; 2 in parts",
      `drawers, item 2 is "2 in parts". It can be a length, as 5 1/2, or parts of what is left, as 2 parts; a count stands alone.`,
    ],
    ["5; 0 parts", `drawers, item 2 is "0 parts". It must be more than 0.`],
    ["5; -1", `drawers, item 2 is "-1". It must be more than 0.`],
    ["30 in; 1 part", "drawers asks for fixed fronts that add up to 30 in. The face has room for 27 1/2 in."],
    [
      "27 1/2; 1 part",
      "drawers asks for fixed fronts that add up to 27 1/2 in, which leaves nothing for the fronts in parts.",
    ],
  ])("%j is refused", (drawers, message) => expectValueError(() => heights(drawers), message));

  test("refuses a list of more than 100 fronts, and fronts of less than one step", () => {
    expectValueError(
      () => heights(Array.from({ length: 101 }, () => ["1 part"])),
      "drawers lists 101 fronts. At most 100 are allowed.",
    );
    expectValueError(
      () => heights("3", 12),
      "A front would be less than one step of 12 in high. Ask for fewer drawers, or a smaller step.",
    );
  });
});
