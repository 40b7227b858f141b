import { describe, expect, test } from "vitest";
import { CHECKS, FIT, HARDWARE, MOUNTING, PLAN } from "../../src/functions";
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

  test("each of its halves has its screws, as every slide's (common practice)", () => {
    const screws = (more: unknown[][] = []) =>
      HARDWARE(openings(["A", 18, 10, 20.5, 1], ["B", 18, 10, 20.5, 1]), [...center, ...more])
        .filter(([item]) => item === "Slide screw")
        .map((row) => row.slice(1, 4));
    expect(screws()).toEqual([
      [0.625, 6, "each"],
      [0.625, 6, "each"],
    ]);
    expect(
      screws([
        ["slide screws", 2],
        ["slide screw length", "3/4"],
      ]),
    ).toEqual([
      [0.75, 4, "each"],
      [0.75, 4, "each"],
    ]);
    const notes = HARDWARE(one, center)
      .filter(([item]) => item === "Slide screw")
      .map((row) => String(row[4]));
    expect(notes[0]).toMatch(/^under the box, into the edges of box front and back, predrilled; .*data sheet decides/);
    expect(notes[1]).toMatch(/^into the rail in front and, through the rear bracket, into the case's back/);
  });

  test("a wide box takes slides at both sides instead, for one in the middle cannot be tied to another", () => {
    const [row] = CHECKS(openings(["A", 34, 10, 20.5, 1]), center).filter(([, , words]) =>
      /may rack/.test(String(words)),
    );
    expect(row![3]).toBe("Use two pulls and slides at both sides that are tied together, or divide the opening.");
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
