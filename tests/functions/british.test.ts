import { describe, expect, test } from "vitest";
import { BOTTOMDEPTH, BOXWIDTH, ENDLENGTH, PLAN, QUOTE } from "../../src/functions";
import { column, openings } from "./tables";

/** Pairs of words of the two trades: common practice. */
describe("British words of the trade are read, and the American ones are shown", () => {
  test("joints, slides and bottoms", () => {
    expect(ENDLENGTH(20, 0.5, "rebate" as never, 0.25)).toBe(ENDLENGTH(20, 0.5, "rabbet" as never, 0.25));
    expect(ENDLENGTH(20, 0.5, "housing" as never, 0.25)).toBe(ENDLENGTH(20, 0.5, "dado" as never, 0.25));
    expect(ENDLENGTH(20, 0.5, "finger joint" as never)).toBe(ENDLENGTH(20, 0.5, "box joint" as never));
    expect(BOXWIDTH(24, "Centre-mount")).toBe(BOXWIDTH(24, "center-mount"));
    expect(BOTTOMDEPTH(22, 0.75, 0.25, null, "Open-Back" as never)).toBe(21.4375);
  });

  test("names and values of standards", () => {
    const [, american] = PLAN(openings(["A", 18, 20, 20.5, 1]), [
      ["corner joint", "box joint"],
      ["bottom fit", "under back"],
      ["slide centerline", "center"],
    ]);
    const [, british] = PLAN(openings(["A", 18, 20, 20.5, 1]), [
      ["corner joint", "finger joint"],
      ["bottom fit", "open back"],
      ["slide centreline", "centre"],
    ]);
    expect(british).toEqual(american);
  });

  test("rates, and measures of stock", () => {
    const quote = (rate: string, measure: string) =>
      QUOTE(
        openings(["A", 450, 500, 520, 1]),
        [["unit", "mm"]],
        [
          ["Length", "Width", "Material", "Price", "Sold by", "Waste"],
          [2440, 1220, "Plywood", 60, "", ""],
          ["", "", "Oak", 1200, measure, 20],
        ],
        [
          [rate, 60],
          ["box minutes", 30],
          ["slide price", 10],
          ["pull price", 3],
          ["screw price", 0.1],
        ],
      );
    expect(quote("labour rate", "cubic metre")).toEqual(quote("labor rate", "cubic meter"));
    expect(column(quote("labour rate", "cubic metres"), "Section")).toContain("Labor");
  });
});
