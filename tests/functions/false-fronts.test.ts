import { describe, expect, test } from "vitest";
import { CHECKS, FIT, HARDWARE, MOUNTING, PARTS, PIECES, PLAN, QUOTE, SETUPS, WORKING } from "../../src/functions";
import { boxApart, elevation, spacerStack, storyStick, svgOf } from "../../src/drawing";
import { plannedJob } from "../drawing/jobs";
import { FREE, lines, rates, sheetsAt } from "./money";
import { column, openings } from "./tables";

/**
 * The sink of a bicycle workshop's kitchen corner, worked by hand. Opening 30 × 28 × 22; face 30 + 2 × (3/4 − 1/16) =
 * 31 3/8 wide, from −3/4 to 28 + 3/4 − 1/8 = 28 5/8, so 29 3/8 high. A fixed front of 6 from the top stands at
 * 28 5/8 − 6 = 22 5/8; two others share 29 3/8 − 6 − 2 × 1/8 = 23 1/8: 11 9/16 each.
 */
const sink = (drawers: unknown = "6; 1 part; 1 part") => openings(["S", 30, 28, 22, drawers]);
const without = (count: unknown, ...more: unknown[][]) => [["false fronts", count], ...more];
const BLANKS = Array.from({ length: 9 }, () => "");

describe("fronts without a box", () => {
  test("are sized like the others, and have no box", () => {
    const plan = PLAN(sink(), without(1));
    expect(plan[1]).toEqual(["S1", "S", 31.375, 6, 22.625, ...BLANKS]);
    // Those below are as they would be without: the zone ends in the middle of the gap.
    expect(plan.slice(2)).toEqual(PLAN(sink(), []).slice(2));
  });

  test("are counted from the top, up to all", () => {
    const boxes = (count: unknown) => column(PLAN(sink(), without(count)), "Box width");
    expect(boxes("none")).toEqual([29, 29, 29]);
    expect(boxes(0)).toEqual([29, 29, 29]);
    expect(boxes(2)).toEqual(["", "", 29]);
    expect(boxes("all")).toEqual(["", "", ""]);
    expect(boxes(7)).toEqual(["", "", ""]);
  });

  test("of one opening alone, by its column", () => {
    const two = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "False fronts"],
      ["S", 30, 28, 22, 2, 1],
      ["T", 18, 28, 22, 2, ""],
    ];
    expect(column(PLAN(two, []), "Box width")).toEqual(["", 29, 17, 17]);
  });

  test("need no depth for a slide where none has a box", () => {
    expect(column(PLAN(openings(["S", 30, 6, 3, 1]), without("all")), "Front height")).toEqual([7.375]);
    expect(column(CHECKS(openings(["S", 30, 6, 3, 1]), without("all")), "Finding").join()).not.toMatch(/slide|box/i);
  });

  test("do not take part where boxes are matched", () => {
    // Three equal fronts: the top zone ends at the opening, higher than the middle one by what its front overlays less.
    const heights = (count: number) => column(PLAN(sink(3), without(count)), "Box height");
    const alone = (place: number) => column(PLAN(sink(3), [["match heights", "none"]]), "Box height")[place];
    expect(heights(2)).toEqual(["", "", alone(2)]);
  });
});

describe("what is made and bought for them", () => {
  test("a front each, in its strip with the others", () => {
    const parts = PARTS(sink(), without(1, ["front match", "opening"]), false).filter(([name]) => name === "Front");
    expect(parts.map((row) => [row[1], row[3], row[4], row[8]])).toEqual([
      ["S1", 6, 31.375, "S"],
      ["S2", 11.5625, 31.375, "S"],
      ["S3", 11.5625, 31.375, "S"],
    ]);
    const strip = SETUPS(sink(), without(1, ["front match", "opening"])).filter(
      ([, operation]) => operation === "Set aside",
    );
    // 29 3/8, as the face: two gaps as wide as the kerf.
    expect(strip.map((row) => row.slice(3))).toEqual([
      [29.375, 1, "Front S1, S2, S3"],
      [0.125, 1, "Front S1, S2, S3"],
    ]);
    expect(
      PARTS(sink(), without("all"))
        .slice(1)
        .map(([name]) => name),
    ).toEqual(["Front", "Front"]);
  });

  test("a piece with its bands and set-ups, but no pulls", () => {
    const [piece] = PIECES(sink(), without(1, ["edge band", "1/32"], ["pre-mill", "1/64"])).filter(
      ([, drawer]) => drawer === "S1",
    );
    expect([piece![0], piece![3], piece![8]]).toEqual(["S1 front", 6 - 1 / 16 + 1 / 32, "all four, 1/32 in"]);
    const steps = SETUPS(sink(), without(1, ["edge band", "1/32"], ["pre-mill", "1/64"]));
    const of = (operation: string) => steps.filter((row) => row[1] === operation).map((row) => row[5]);
    expect(of("Pre-mill")).toEqual(["Front S1, S2, S3"]);
    expect(new Set(of("Pull holes"))).toEqual(new Set(["Front S2, S3"]));
  });

  test("screws through cleats, and neither slides nor pulls", () => {
    const items = (count: unknown) => HARDWARE(sink(), without(count)).slice(1);
    // Wide as 24 or more: four. Through 3/4 and less than 3/4 into the front.
    expect(items("all").map((row) => row.slice(0, 4))).toEqual([["Front screw", 1.25, 12, "each"]]);
    expect(String(items("all")[0]![4])).toMatch(/^from inside the case, through cleats as thick as the cabinet/);
    const quantity = (count: unknown, name: string) =>
      items(count).flatMap(([item, , qty]) => (item === name ? [qty] : []));
    expect(quantity(1, "Side-mount slide")).toEqual([2]);
    expect(quantity(1, "Front screw")).toEqual([8, 4]);
    expect(quantity(1, "Pull")).toEqual([4]);
  });

  test("bands of their edges", () => {
    const band = (count: unknown) =>
      HARDWARE(sink(), without(count, ["edge band", "1/32"]))
        .filter(([item]) => item === "Edge band")
        .map((row) => row[2]);
    expect(band("all")).toEqual(band("none"));
  });

  test("front minutes, and no minutes of a box", () => {
    const labor = (count: unknown) =>
      lines(
        QUOTE(
          sink(),
          without(count),
          sheetsAt("none"),
          rates({ ...FREE, "labor rate": 60, "box minutes": 60, "front minutes": 60, "fitting minutes": 60 }),
        ),
        "Labor",
      ).map((line) => line[1]);
    expect(labor("none")).toEqual([3, 3, 3]);
    expect(labor(1)).toEqual([2, 3, 2]);
  });
});

describe("what is told of them", () => {
  test("where they hang, and how many screws hold them", () => {
    const [row] = MOUNTING(sink(), without(1)).slice(1);
    expect(row).toEqual(["S1", "", "", "", 22.625, "", "", "", "", "", "", 4]);
    expect(MOUNTING(sink(), without(1)).slice(2)).toEqual(MOUNTING(sink(), []).slice(2));
  });

  test("no fit, for there is nothing to fit", () => {
    expect(column(FIT(sink(), without(1)), "Drawer")).toEqual(["S2", "S3"]);
    expect(FIT(sink(), without("all"))).toHaveLength(1);
  });

  test("their sums", () => {
    const rows = WORKING(sink(), "S1", without(1));
    expect(rows.find(([size]) => size === "Front bottom")).toEqual([
      "Front bottom",
      22.625,
      "upper edge of the face 28 5/8 − front height 6",
    ]);
    expect(rows.map(([size]) => size)).not.toContain("Box width");
    expect(rows.at(-1)![0]).toBe("Front diagonal");
  });

  test("drawings show them without a pull", () => {
    const [planned] = plannedJob({ openings: sink(), standards: [["false fronts", 1]] });
    const [bare] = plannedJob({ openings: sink(), standards: [["false fronts", "all"]] });
    expect(svgOf(elevation([planned!]))).toMatch(/Fronts, width × height: S1 .*, S2 .*, S3 /);
    expect(svgOf(elevation([planned!]))).toContain("S1 Front height");
    expect(svgOf(elevation([bare!]))).not.toContain("Pull from left");
    expect(
      storyStick(bare!)
        .map((drawing) => svgOf(drawing))
        .join(""),
    ).toContain("S1 Front bottom");
    expect(svgOf(spacerStack(planned!))).not.toContain("S1");
    expect(svgOf(boxApart(planned!.drawers[0]!))).toContain("Parts of S2");
  });
});
