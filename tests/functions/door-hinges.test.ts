import { describe, expect, test } from "vitest";
import { CHECKS, PLAN } from "../../src/functions";
import { openings } from "./tables";

const found = (table: unknown[][], ...standards: unknown[][]) =>
  CHECKS(table, standards)
    .filter(([, , finding]) => /hinge/.test(String(finding)))
    .map((row) => row.slice(0, 4));

/** Common practice: a hinge's plate reaches an inch, 25 mm, up and down from its center. */
describe("a drawer behind a door must pass the hinges on its stile", () => {
  // 10 high: the box stands 1/2 above the floor and is 9 1/4 high, up to 9 3/4; its slides leave 1/2 at each side.
  const one = openings(["A", 18, 10, 20.5, 1]);

  test("a box is too high where it reaches a hinge that stands in farther than it keeps from the side", () => {
    expect(found(one, ["door hinges", "3; 40"])).toEqual([
      [
        "A1",
        "wrong",
        "It stands from 1/2 in to 9 3/4 in up the opening, 1/2 in from its sides: the hinge at 3 in wants 3/4 in.",
        "Make it lower or move the hinge; or pack out the sides, and plan for the opening between them.",
      ],
    ]);
    expect(found(one, ["door hinges", "40; 10 1/2"])[0]![2]).toMatch(/the hinge at 10 1\/2 in wants 3\/4 in/);
  });

  test("a hinge over or under it, one that stands in no farther, and no door at all are none", () => {
    // 10 3/4 − 1 is where the box ends.
    expect(found(one, ["door hinges", "10 3/4"])).toEqual([]);
    expect(found(one, ["door hinges", "3"], ["hinge room", "1/2"])).toEqual([]);
    expect(found(one, ["door hinges", "none"])).toEqual([]);
    expect(found(one)).toEqual([]);
  });

  test("of several drawers those that reach one are named", () => {
    const three = openings(["A", 18, 30, 20.5, 3]);
    const [, ...rows] = PLAN(three);
    expect(rows).toHaveLength(3);
    // Thirds of about 10: a hinge 3 up stands beside the lowest, one 27 up beside the highest.
    expect(found(three, ["door hinges", "3; 27"]).map(([where]) => where)).toEqual(["A1", "A3"]);
  });

  test("of an inset front the gap round it counts, and its own height", () => {
    // 3/32 round the front, up to 10 − 3/32.
    const inset = ["front style", "inset"];
    expect(found(one, inset, ["door hinges", "3"])[0]![2]).toBe(
      "It stands from 3/32 in to 9 29/32 in up the opening, 3/32 in from its sides: the hinge at 3 in wants 3/4 in.",
    );
    expect(found(one, inset, ["door hinges", "10 29/32"])).toEqual([]);
    expect(found(one, inset, ["door hinges", "10 7/8"])).toHaveLength(1);
    expect(found(one, inset, ["inset gap", "3/4"], ["door hinges", "3"])).toHaveLength(1);
    expect(found(one, inset, ["inset gap", "3/4"], ["side clearance", "3/4"], ["door hinges", "3"])).toEqual([]);
  });

  test("in metric jobs by 25 mm", () => {
    // 250 high: from 12 up to 244; 12.7 at each side.
    const metric = (hinge: number) => found(openings(["A", 450, 250, 521, 1]), ["unit", "mm"], ["door hinges", hinge]);
    expect(metric(269)).toEqual([]);
    expect(metric(268)[0]![2]).toBe(
      "It stands from 12 mm to 244 mm up the opening, 12.7 mm from its sides: the hinge at 268 mm wants 20 mm.",
    );
  });

  test("room for hinges without hinges is told to be of no use", () => {
    expect(found(one, ["hinge room", 1])).toEqual([
      ["standards", "doubtful", expect.stringContaining("hinge room"), expect.anything()],
    ]);
  });
});
