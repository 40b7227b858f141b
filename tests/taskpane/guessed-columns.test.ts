import { describe, expect, test } from "vitest";
import { guessedColumns } from "../../src/taskpane/new-job/guessed-columns";

const guess = (from: "openings" | "cabinets", ...headings: unknown[]) =>
  Object.fromEntries([...guessedColumns(headings, from)].map(([ours, place]) => [ours, headings[place]]));

describe("which column of a shop's table is which", () => {
  test("is told by our own headings, whatever their case, marks and unit", () => {
    expect(guess("openings", "OPENING", "width (mm)", "Height, in", "depth.", "Drawers")).toEqual({
      ...{ Opening: "OPENING", Width: "width (mm)", Height: "Height, in", Depth: "depth.", Drawers: "Drawers" },
    });
  });

  test("is told by what shops head their lists with", () => {
    expect(guess("cabinets", "Cab", "W", "H", "D", "Drs", "Qty", "Kick")).toEqual({
      ...{ Cabinet: "Cab", Width: "W", Height: "H", Depth: "D", Drawers: "Drs", Quantity: "Qty", "Toe kick": "Kick" },
    });
  });

  test("takes the plain heading before one that has the word among others", () => {
    expect(guess("openings", "Front width", "Width", "Clear depth")).toEqual({ Width: "Width", Depth: "Clear depth" });
  });

  test("knows standards by their names, and leaves open what it does not know", () => {
    expect(guess("openings", "Side thickness", "Remarks", "", 7)).toEqual({ "side thickness": "Side thickness" });
  });

  test("gives no column twice", () => {
    expect(Object.values(guess("openings", "Count", "W"))).toEqual(["W", "Count"]);
  });
});
