import { describe, expect, test } from "vitest";
import { WORKING } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { openings } from "./tables";

const table = openings(["A", "18 1/16; 18", 20, 20.5, 2], [7, 18, 10, 9, 1]);
const how = (drawer: unknown, standards?: unknown[][]) =>
  new Map(WORKING(table, drawer, standards).map(([size, value, text]) => [size, [value, text]]));

describe("WORKING(openings, drawer, standards)", () => {
  test("tells every size with its sum", () => {
    expect(how("a1").get("Opening width")).toEqual([18, "least of 18 1/16, 18"]);
    expect(how("A1").get("Box height")).toEqual([
      9.125,
      "height of its space 10 1/16 − space below 1/2 − space above 1/4 = 9 5/16, down to a multiple of 1/8 = 9 1/4, matched to the least behind equal fronts (opening)",
    ]);
  });

  test("a size that is named once is not said to be itself", () => {
    const alone = openings(["A", 18, "9 25/32", 20.5, 1]);
    const sized = (standards: unknown[][]) =>
      new Map(WORKING(alone, "A1", standards).map(([size, , text]) => [String(size), String(text)]));
    expect(sized([]).get("Front height")).toBe("face height 11 5/32, down to a multiple of 1/16");
    const none = [
      ["space below", "none"],
      ["space above", "none"],
    ];
    expect(sized(none).get("Box height")).toBe("height of its space 9 25/32, down to a multiple of 1/8");
  });

  test("proves box and front square by their diagonals", () => {
    expect(how("A1").get("Box diagonal")![0]).toBe(Math.sqrt(17 * 17 + 20 * 20));
    expect(how("A1").get("Front diagonal")![0]).toBeCloseTo(Math.hypot(19, 10.625), 6);
  });

  test("tells how the drawer is mounted", () => {
    expect(how("A1").get("Box spacer")![1]).toMatch(/^box bottom 10 7\/16 − top of the box below 9 5\/8$/);
    expect(how("A2").get("Box spacer")![1]).toBe("box bottom above the floor of the opening 1/2");
    expect(how("A2", [["construction", "face frame"]]).get("Box spacer")![1]).toBe(
      "box bottom above the top edge of the rail 1/2",
    );
    expect(how("A1").get("Front past box left")).toEqual([1.1875, "front past opening 11/16 + side space 1/2"]);
    expect(how("A1").get("Pull from left")).toEqual([9.5, "(front width 19) / 2"]);
  });

  test("gives the cabinet's outside width, which a face frame hides", () => {
    expect(how("A1").get("Cabinet outside width")).toEqual([
      38.25,
      "2 × cabinet thickness 3/4 + openings 36 + partitions 3/4",
    ]);
    expect(how("A1", [["construction", "face frame"]]).has("Cabinet outside width")).toBe(false);
  });

  test("tells what a banded front is cut to; one without a band is cut to its size", () => {
    const banded = how("A1", [
      ["edge band", "1/16"],
      ["pre-mill", "1/32"],
    ]);
    const less = "− 2 × edge band 1/16 + 2 × pre-mill 1/32";
    expect(banded.get("Front cut width")).toEqual([18.9375, `front width 19 ${less}`]);
    expect(banded.get("Front cut height")).toEqual([10.5625, `front height 10 5/8 ${less}`]);
    expect([how("A1").has("Front cut width"), how("A1").has("Front cut height")]).toEqual([false, false]);
  });

  test("tells the share of a rail that is left beside the gap", () => {
    const rails = how("A1", [
      ["rail below", 1],
      ["rail above", "3/4"],
    ]);
    expect(rails.get("Face lower edge")).toEqual([-0.4375, "− (rail 1 − front gap 1/8) / 2"]);
    expect(rails.get("Face upper edge")).toEqual([20.3125, "opening height 20 + (rail 3/4 − front gap 1/8) / 2"]);
  });

  test("gives the strip for fronts in one grain, the wider of gap and kerf between them", () => {
    const strip = (kerf: string) =>
      how("A1", [
        ["front match", "opening"],
        ["kerf", kerf],
      ]).get("Front strip")![0] as number;
    expect(strip("1/4") - strip("1/8")).toBe(0.125);
    expect(strip("1/16") - strip("1/8")).toBe(0);
  });

  test("refuses a number, a drawer that is not there, and says why a drawer has no sizes", () => {
    expectValueError(
      () => WORKING(table, 7.1),
      `drawer is the number 7.1. Type the label as a text, as "A1" or "7-1".`,
    );
    expectValueError(() => WORKING(table, "B1"), `drawer is "B1", which is none of A1, A2.`);
    expectValueError(() => WORKING(table, ""), "drawer is blank. It needs a drawer's label, such as A1.");
    expect(shown(() => WORKING(table, "7-1"))).toMatch(/^#N\/A Opening 7: No slide fits/);
  });
});
