import { describe, expect, test } from "vitest";
import { MOUNTING, WORKING } from "../../src/functions";
import { column } from "./tables";

const table = [
  ["Opening", "Width", "Height", "Depth", "Drawers", "Case width"],
  ["A", 15, 20, 20.5, 2, 17],
];
const frame = [["construction", "face frame"]];

/** Common practice: heights behind a face frame are measured from its rail, for that is what a tape rests on. */
describe("heights in the opening of a face frame", () => {
  test("say that they are measured from the rail's top edge", () => {
    expect(column(MOUNTING(table, frame), "Heights from")).toEqual(["top edge of the rail", "top edge of the rail"]);
    expect(MOUNTING(table)[0]).not.toContain("Heights from");
    const how = (drawer: string) =>
      WORKING(table, drawer, [...frame, ["frame overlay", "1/4"]]).find(([size]) => size === "Zone bottom")![2];
    expect(how("A2")).toBe("top edge of the rail");
  });

  test("tell the case floor's offset where it was given, and what spacers from there are", () => {
    const low = [...frame, ["floor offset", "3/4"]];
    expect(column(MOUNTING(table, low), "Heights from")[1]).toBe(
      "top edge of the rail, 3/4 in above the case floor: add that to a spacer that stands on the floor",
    );
    expect(column(MOUNTING(table, [...frame, ["floor offset", "0 in"]]), "Heights from")[1]).toBe(
      "top edge of the rail, level with the case floor",
    );
    const sizes = (drawer: string) => new Map(WORKING(table, drawer, low).map(([size, value]) => [size, value]));
    const a2 = sizes("A2");
    expect(a2.get("Box spacer from the case floor")).toBe((a2.get("Box spacer") as number) + 0.75);
    expect(a2.get("Slide spacer from the case floor")).toBe((a2.get("Slide spacer") as number) + 0.75);
    // The upper box stands on the lower.
    expect(sizes("A1").has("Box spacer from the case floor")).toBe(false);
    expect(sizes("A1").has("Slide spacer from the case floor")).toBe(true);
  });

  test("openings of both kinds in one job each say theirs", () => {
    const both = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Cabinet", "Construction"],
      ["A", 15, 20, 20.5, 1, "K", "face frame"],
      ["B", 15, 20, 20.5, 1, "L", ""],
    ];
    expect(column(MOUNTING(both), "Heights from")).toEqual(["top edge of the rail", "floor of the opening"]);
  });
});
