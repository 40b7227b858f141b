import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, PARTS, PLAN, SETUPS, WORKING } from "../../src/functions";
import { column, openings } from "./tables";

/** A box 20 deep, sides and ends 1/2, grooves 1/4 deep, play 1/16. */
const one = openings(["A", 18, 10, 20.5, 1]);
const joint = (name: string, ...more: unknown[][]) => [["corner joint", name], ["joint depth", "1/4"], ...more];
const bottom = (standards: unknown[][]) =>
  PARTS(one, standards)
    .find(([part]) => part === "Bottom")!
    .slice(3, 5);
const passes = (operation: string, standards: unknown[][], table = one) =>
  SETUPS(table, standards)
    .filter((row) => row[1] === operation && /^Fence/.test(String(row[2])))
    .map((row) => row[3]);

/** Common practice: a dado has wood on both sides, a rabbet lies at the end, so that only the first makes the inside shorter. */
describe("a dado stands in from the end of the side, a rabbet at it", () => {
  test("inside depth and a grooved bottom are less deep by both insets", () => {
    expect(column(PLAN(one, joint("dado")), "Inside depth")).toEqual([20 - 1 - 0.5]);
    expect(column(PLAN(one, joint("rabbet")), "Inside depth")).toEqual([19]);
    expect(bottom(joint("dado"))).toEqual([16 + 7 / 16, 20 - 0.5 - 1 + 0.5 - 1 / 16]);
    expect(bottom(joint("rabbet"))).toEqual([16 + 7 / 16, 19 + 7 / 16]);
  });

  test("a bottom under the back ends flush with that, an applied one covers the whole box", () => {
    expect(bottom(joint("dado", ["bottom fit", "under back"]))[1]).toBe(20 - 0.5 - 0.5 + 0.25 - 1 / 16);
    expect(bottom(joint("dado", ["bottom fit", "applied"]))[1]).toBe(20);
  });

  test("the fence is set to the inset, and in millimeters to 6", () => {
    expect(passes("Dado", joint("dado"))).toEqual([0.25, 0.375, 0.5, 0.625]);
    expect(passes("Dado", joint("dado", ["dado inset", "1/2"]))[0]).toBe(0.5);
    expect(passes("Rabbet", joint("rabbet"))).toEqual([0, 0.125, 0.25, 0.375]);
    const mm = [
      ["unit", "mm"],
      ["corner joint", "dado"],
      ["joint depth", 6],
    ];
    const table = openings(["A", 450, 250, 520, 1]);
    expect(passes("Dado", mm, table)[0]).toBe(6);
    expect(column(PLAN(table, mm), "Inside depth")).toEqual([500 - 24 - 12]);
  });

  test("screws into the front bridge the inset too", () => {
    const size = (item: string, standards: unknown[][]) => HARDWARE(one, standards).find(([name]) => name === item)![1];
    // Through 1/2 of box front and 1/4 of air into 3/4 of front, 1/8 short of its face: 1 3/8, so 1 1/4.
    expect([size("Front screw", joint("dado")), size("Front screw", joint("rabbet"))]).toEqual([1.25, 1]);
    // 1/2 + 1/4 + 3/4 + 1/4 into the pull.
    expect([size("Pull screw", joint("dado")), size("Pull screw", joint("rabbet"))]).toEqual([1.75, 1.5]);
  });

  test("a dado without an inset leaves short grain", () => {
    const found = (inset: string) =>
      CHECKS(one, joint("dado", ["dado inset", inset]))
        .map((row) => row.slice(0, 3))
        .filter(([, , finding]) => /^A dado/.test(String(finding)));
    expect(found("1/16")).toEqual([
      ["A", "doubtful", "A dado 1/16 in from the end of the side leaves short grain that breaks out."],
    ]);
    expect(found("1/8")).toEqual([]);
  });

  test("WORKING names the inset", () => {
    const how = (size: string) => WORKING(one, "A1", joint("dado")).find(([name]) => name === size)![2];
    expect(how("Inside depth")).toBe("box depth 20 − 2 × end thickness 1/2 − 2 × dado inset 1/4");
  });
});
