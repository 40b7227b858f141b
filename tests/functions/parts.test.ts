import { describe, expect, test } from "vitest";
import { PARTS } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { column, openings } from "./tables";

const row = (part: string, table: unknown[][]) => table.find(([name]) => name === part);

describe("PARTS(openings, standards, grouped)", () => {
  const three = openings(["B", 24, 26.25, 23.25, 3]);

  test("groups pieces equal in all but their drawer, in the order of a cut list", () => {
    expect(PARTS(three)).toEqual([
      ["Part", "Drawer", "Qty", "Length", "Width", "Thickness", "Material", "Grain"],
      ["Side", "B1, B2, B3", 6, 22, 7.625, 0.5, "Plywood", "length"],
      ["Box front", "B1, B2, B3", 3, 22, 7.625, 0.5, "Plywood", "length"],
      ["Box back", "B1, B2, B3", 3, 22, 7.625, 0.5, "Plywood", "length"],
      ["Bottom", "B1, B2, B3", 3, 22.4375, 21.4375, 0.25, "Plywood", "any"],
      ["Front", "B1, B2, B3", 3, 9.125, 25.375, 0.75, "Plywood", "length"],
    ]);
    expect(PARTS(three, [["height step", "1/8"]], false)).toHaveLength(1 + 5 * 3);
  });

  test("grouped takes TRUE and FALSE, also as 1 and text; a 0, which an empty cell also gives, is TRUE as a blank is", () => {
    expect([true, 1, "TRUE", "", null, 0].map((flag) => PARTS(three, undefined, flag).length)).toEqual([
      6, 6, 6, 6, 6, 6,
    ]);
    expect([false, "false"].map((flag) => PARTS(three, undefined, flag).length)).toEqual([16, 16]);
    expectValueError(() => PARTS(three, undefined, "maybe"), `grouped is "maybe". It can be TRUE or FALSE.`);
  });

  test("quantity multiplies pieces, never rows", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Quantity"],
      [24, 26.25, 23.25, 1, 4],
    ];
    expect(column(PARTS(table), "Qty")).toEqual([8, 4, 4, 4, 4]);
  });

  test("an applied bottom is cut larger by its overhang, and lowers the sides by its thickness", () => {
    const parts = PARTS(openings(["A", 18, 10, 20.5, 1]), [
      ["bottom fit", "applied"],
      ["bottom overhang", "1/8"],
    ]);
    expect(row("Bottom", parts)!.slice(3, 5)).toEqual([17.25, 20.25]);
    expect(row("Side", parts)!.slice(3, 5)).toEqual([20, 9]);
  });

  test("a front is cut for its edge band, and has the direction of its grain as its length", () => {
    const cut = (grain: string) =>
      row(
        "Front",
        PARTS(openings(["A", 18, 10, 20.5, 1]), [
          ["edge band", "1/16"],
          ["pre-mill", "1/32"],
          ["front grain", grain],
        ]),
      )!.slice(3, 5);
    expect([cut("vertical"), cut("horizontal")]).toEqual([
      [11.3125, 19.3125],
      [19.3125, 11.3125],
    ]);
  });

  test("fronts that match carry their opening as grain group, and other parts none", () => {
    const parts = PARTS(openings(["A", 18, 20, 20.5, 2], ["B", 18, 20, 20.5, 2]), [["front match", "opening"]]);
    expect(parts[0]!.at(-1)).toBe("Grain group");
    expect(parts.filter(([name]) => name === "Front").map((r) => [r[1], r.at(-1)])).toEqual([
      ["A1", "A"],
      ["A2", "A"],
      ["B1", "B"],
      ["B2", "B"],
    ]);
    expect(row("Side", parts)!.at(-1)).toBe("");
  });

  test("shop-made pulls enter the list, as many as the fronts carry", () => {
    const parts = PARTS(openings(["A", 18, 10, 20.5, 1], ["B", 30, 10, 20.5, 1]), [["pull kind", "shop-made"]]);
    expect(row("Pull plate", parts)).toEqual(["Pull plate", "A1, B1", 3, 6, 1, 0.75, "Plywood", "length"]);
    expect(row("Pull strip", parts)).toEqual(["Pull strip", "A1, B1", 3, 6, 0.5, 0.75, "Plywood", "length"]);
  });

  test("one bad row fails the whole call and names it, so that nobody cuts too little", () => {
    expect(shown(() => PARTS(openings(["A", 18, 10, 20.5, 1], ["B", 18, 10, 9, 1])))).toBe(
      "#N/A Opening B: No slide fits: an inside depth of 9 in leaves 8 1/2 in, and the shortest slide is 10 in.",
    );
    expect(shown(() => PARTS(openings(["A", 18, 10, 20.5, 1], ["B", "x", 10, 20.5, 1])))).toMatch(
      /^#VALUE! openings, row 3, Width is "x"/,
    );
  });
});
