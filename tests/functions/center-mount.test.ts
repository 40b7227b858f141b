import { describe, expect, test } from "vitest";
import { CHECKS, FIT, MOUNTING, PLAN } from "../../src/functions";
import { column, openings } from "./tables";

const center = [
  ["slide", "center-mount"],
  ["side thickness", "15/32"],
  ["bottom thickness", "7/32"],
  ["groove depth", "7/32"],
];
const one = openings(["A", 18, 10, 20.5, 1]);
const found = (standards: unknown[][], table = one) =>
  CHECKS(table, [...center, ...standards])
    .slice(1)
    .map((row) => row.slice(0, 3));
const ALL_CLEAR = [["", "", "All clear"]];

describe("a center-mount slide lies under the bottom", () => {
  test("it has no centerline at the box's side, and no spacer there", () => {
    expect(column(PLAN(one, center), "Slide centerline")).toEqual([""]);
    expect(column(MOUNTING(one, center), "Slide centerline")).toEqual([""]);
    expect(column(MOUNTING(one, center), "Slide spacer")).toEqual([""]);
    const low = PLAN(openings(["A", 18, 4, 20.5, 1]), [...center, ["slide centerline", 6]]);
    expect(column(low, "Slide length")).toEqual([20]);
  });

  test("it needs room below the box", () => {
    expect(found([])).toEqual(ALL_CLEAR);
    expect(found([["space below", "7/16"]])).toEqual([
      ["A", "wrong", "A center-mount slide takes 1/2 in under the box, and the space below is 7/16 in."],
    ]);
    expect(
      found([
        ["space below", "3/8"],
        ["center slide height", "3/8"],
      ]),
    ).toEqual(ALL_CLEAR);
  });

  test("each needs a rail in front, which one opening of several drawers has not", () => {
    expect(found([], openings(["A", 18, 20, 20.5, 2]))).toEqual([
      ["A", "doubtful", "Each of the 2 center-mount slides needs a rail under its drawer in front."],
    ]);
  });

  test("its box is judged by play of its own, and not by what a slide at the side takes", () => {
    const [, , , , , , , least, most, verdict] = ["", ...FIT(one, center)[1]!];
    expect([least, most, verdict]).toEqual([1 / 64, 0.25, "Fits even at worst."]);
    expect(FIT(one, [...center, ["side clearance", "3/8"]])[1]![8]).toMatch(/^May be loose: up to .* a side/);
    expect(found([["side clearance", "3/8"]])[0]).toEqual([
      "A",
      "doubtful",
      expect.stringMatching(/^The side space is likely up to .* over a side/),
    ]);
  });
});
