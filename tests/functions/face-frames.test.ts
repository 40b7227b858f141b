import { describe, expect, test } from "vitest";
import { CHECKS } from "../../src/functions";

/** Rows of finding, in a job that has nothing else to find. */
function found(rows: unknown[][], standards: unknown[][] = []): unknown[][] {
  const table = [["Opening", "Width", "Height", "Depth", "Drawers", "Case width", "Partition thickness"], ...rows];
  const quiet = [
    ["construction", "face frame"],
    ["side thickness", "15/32"],
    ["bottom thickness", "7/32"],
    ["groove depth", "7/32"],
  ];
  return CHECKS(table, [...quiet, ...standards]).slice(1);
}
const one = (standards: unknown[][] = []) => found([["A", 15, 20, 20.5, 2, 16.5, ""]], standards);
const two = (partition: unknown, standards: unknown[][] = []) =>
  found(
    [
      ["A", 15, 20, 20.5, 2, 16.5, partition],
      ["B", 15, 20, 20.5, 2, 16.5, ""],
    ],
    standards,
  );
const ALL_CLEAR = [["", "", "All clear", ""]];

/** Common practice: fronts of two openings lie side by side on the stile or rail between them, a gap apart. */
describe("fronts on the stiles and rails of a face frame", () => {
  test("between two openings a stile takes two overlays and the front gap, or it cannot be built", () => {
    // Two overlays of 1/2 and a gap of 1/8 want 1 1/8.
    expect(two("", [["stile width", "1 1/8"]])).toEqual(ALL_CLEAR);
    const [[where, level, finding]] = two("", [["stile width", "1 1/16"]]) as [unknown[]];
    expect([where, level]).toEqual(["A, B", "wrong"]);
    expect(finding).toBe(
      "The fronts overlay the stile between them, 1 1/16 in wide, by 1/2 in and 1/2 in: that leaves 1/16 in, and the front gap is 1/8 in.",
    );
  });

  test("a partition's thickness that was typed is the stile's width, unless that was typed itself", () => {
    expect(two(0.75)[0]!.slice(0, 3)).toEqual([
      "A, B",
      "wrong",
      "The fronts overlay the stile between them, 3/4 in wide, by 1/2 in and 1/2 in, and collide.",
    ]);
    expect(two(0.75, [["stile width", 2]])).toEqual(ALL_CLEAR);
    expect(two("")).toEqual(ALL_CLEAR);
  });

  test("fronts of two overlays and the larger of two gaps stand on one stile", () => {
    const table = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Case width", "Frame overlay", "Front gap"],
      ["A", 15, 20, 20.5, 1, 16.5, "5/8", ""],
      ["B", 15, 20, 20.5, 1, 16.5, "3/8", "9/16"],
    ];
    const rows = CHECKS(table, [["construction", "face frame"]]);
    expect(rows.filter(([, , finding]) => /stile/.test(String(finding))).map((row) => row.slice(1, 3))).toEqual([
      [
        "wrong",
        "The fronts overlay the stile between them, 1 1/2 in wide, by 5/8 in and 3/8 in: that leaves 1/2 in, and the front gap is 9/16 in.",
      ],
    ]);
  });

  test.each(["rail above", "rail below"])("a %s shared with another opening takes two overlays and the gap", (rail) => {
    expect(one([[rail, "1 1/8"]])).toEqual(ALL_CLEAR);
    expect(one([[rail, 1]])[0]!.slice(0, 3)).toEqual([
      "A",
      "wrong",
      `Fronts overlay the frame by 1/2 in from both sides of a ${rail} of 1 in, and meet.`,
    ]);
    expect(one([[rail, "1 1/16"]])[0]!.slice(0, 3)).toEqual([
      "A",
      "wrong",
      `Fronts overlay the frame by 1/2 in from both sides of a ${rail} of 1 1/16 in: that leaves 1/16 in, and the front gap is 1/8 in.`,
    ]);
  });

  test("an overlay wider than the stile at the cabinet's end, or than its outer rail, stands out past the cabinet", () => {
    const wide = one([["frame overlay", "1 5/8"]]);
    expect(wide.map((row) => row.slice(0, 3))).toEqual([
      [
        "A",
        "doubtful",
        "Fronts overlay the frame by 1 5/8 in, and stand 1/8 in past its stile of 1 1/2 in at the left.",
      ],
      [
        "A",
        "doubtful",
        "Fronts overlay the frame by 1 5/8 in, and stand 1/8 in past its stile of 1 1/2 in at the right.",
      ],
      ["A", "doubtful", "Fronts overlay the frame by 1 5/8 in, and stand 1/8 in past its rail of 1 1/2 in at the top."],
      [
        "A",
        "doubtful",
        "Fronts overlay the frame by 1 5/8 in, and stand 1/8 in past its rail of 1 1/2 in at the bottom.",
      ],
    ]);
    expect(one([["frame overlay", "1 1/2"]])).toEqual(ALL_CLEAR);
    expect(
      one([
        ["frame overlay", 2],
        ["stile width", 2],
        ["rail width", 2],
      ]),
    ).toEqual(ALL_CLEAR);
  });

  test("inset fronts lie on no stile", () => {
    expect(two(0.75, [["front style", "inset"]]).filter(([, , finding]) => /overlay/.test(String(finding)))).toEqual(
      [],
    );
  });
});
