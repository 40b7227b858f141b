import { describe, expect, test } from "vitest";
import { PLAN } from "../../src/functions";
import { column, openings } from "./tables";

// The top front stays below the carcase's top: its box alone would be higher than the others.
const low = ["top reveal", "3/4"];
const boxes = (table: unknown[][], match: string) =>
  column(PLAN(table, [low, ["match heights", match]]), "Box height") as number[];
const fronts = (table: unknown[][]) => column(PLAN(table, [low]), "Front height");

/** Common practice: boxes behind equal fronts are made alike, from one setting of the saw. */
describe("boxes behind fronts of equal share are equally high", () => {
  test("though the step gives the lowest front its spare sixteenth", () => {
    // A face of 20 3/4 in three with two gaps: 6 5/6, so twice 6 13/16, and 6 7/8.
    const table = openings(["A", 18, 20, 20.5, 3]);
    expect(fronts(table)).toEqual([6.8125, 6.8125, 6.875]);
    // From the floor to 6 3/16, less 3/4: 5 7/16.
    expect(boxes(table, "none")).toEqual([6.125, 6.125, 5.375]);
    expect(boxes(table, "opening")).toEqual([5.375, 5.375, 5.375]);
  });

  test("also across the openings of a job", () => {
    const table = openings(["A", 18, 20, 20.5, 3], ["B", 24, 20, 20.5, "1 part; 2 parts"], ["C", 24, 20, 20.5, 3]);
    const all = boxes(table, "job");
    expect([...all.slice(0, 3), ...all.slice(5)]).toEqual(Array(6).fill(5.375));
  });

  test("a fixed front's height is its own: only the step makes it equal to the shared ones", () => {
    const table = openings(["A", 18, 20, 20.5, 3], ["B", 18, 20, 20.5, '6 13/16"; 1 part; 1 part']);
    expect(fronts(table)[3]).toBe(6.8125);
    expect(boxes(table, "job")[3]).toBe(boxes(table, "none")[3]);
    expect(boxes(table, "job")[0]).toBeLessThan(boxes(table, "job")[3]!);
  });
});
