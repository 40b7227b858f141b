import { describe, expect, test } from "vitest";
import { CHECKS, PARTS, SETUPS } from "../../src/functions";
import { column, openings } from "./tables";

/** A watchmaker's drawer: 18 × 6 1/4 × 20 1/2, so that its box is 17 wide, 5 1/2 high and 20 deep. */
const drawer = openings(["A", 18, 6.25, 20.5, 1]);
const rows = (standards: unknown[][], part: string, table = drawer) => {
  const parts = PARTS(table, standards);
  const at = (heading: string) => column(parts, heading);
  return at("Part").flatMap((name, i) => (name === part ? [[at("Length")[i], at("Width")[i], at("Grain")[i]]] : []));
};
const found = (standards: unknown[][], pattern: RegExp, table = drawer) =>
  CHECKS(table, standards)
    .filter(([, , finding]) => pattern.test(String(finding)))
    .map((row) => row.slice(0, 3));

describe("the grain of a bottom runs as its standard says", () => {
  // Grooved all round: 17 − 2 × 1/2 + 2 × 1/4 − 1/16 = 16 7/16 wide; 20 − 1 + 1/2 − 1/16 = 19 7/16 deep.
  test("any way, unless something is said", () => {
    expect(rows([], "Bottom")).toEqual([[16.4375, 19.4375, "any"]]);
    expect(rows([["bottom grain", "any"]], "Bottom")).toEqual([[16.4375, 19.4375, "any"]]);
  });

  test("side to side it runs along its width, front to back along its depth", () => {
    expect(rows([["bottom grain", "side to side"]], "Bottom")).toEqual([[16.4375, 19.4375, "length"]]);
    expect(rows([["bottom grain", "front to back"]], "Bottom")).toEqual([[19.4375, 16.4375, "length"]]);
  });
});

describe("the grain of sides and ends runs as their standards say", () => {
  test("horizontal, vertical or any way", () => {
    expect(rows([], "Side")).toEqual([[20, 5.5, "length"]]);
    expect(rows([["box grain", "vertical"]], "Side")).toEqual([[5.5, 20, "length"]]);
    expect(rows([["box grain", "any"]], "Side")).toEqual([[20, 5.5, "any"]]);
  });

  test("that of ends as that of sides, unless they have their own", () => {
    // Butt joint: 17 − 2 × 1/2.
    expect(rows([["box grain", "vertical"]], "Box front")).toEqual([[5.5, 16, "length"]]);
    const ends = [["box end grain", "vertical"]];
    expect(rows(ends, "Side")).toEqual([[20, 5.5, "length"]]);
    expect(rows(ends, "Box front")).toEqual([[5.5, 16, "length"]]);
    expect(rows(ends, "Box back")).toEqual([[5.5, 16, "length"]]);
  });

  test("the saw's settings follow: upright grain is ripped to the length, and crosscut to the height", () => {
    const cuts = SETUPS(drawer, [["box grain", "vertical"]])
      .filter((row) => /Side/.test(String(row[5])))
      .map((row) => [row[1], row[3]]);
    expect(cuts).toContainEqual(["Rip", 20]);
    expect(cuts).toContainEqual(["Crosscut", 5.5]);
  });

  test("grooves run along the length of upright parts as well: none is short", () => {
    const short = (width: number, height: number) =>
      SETUPS(openings(["A", width, height, 20.5, 1]), [["box grain", "vertical"]]).filter((row) =>
        /under 6 in .* the guard is off/.test(String(row[2])),
      );
    expect(short(18, 6.25)).toEqual([]);
    // Ends of 7 − 1 − 1 = 5.
    expect(short(7, 12)).toHaveLength(1);
  });
});

/** Common practice: face grain runs the way that carries. */
describe("plywood whose weak way carries is doubtful where its grain was chosen", () => {
  test("a bottom carries over its shorter span", () => {
    // Inside 36 − 1 − 2 × 1/2 = 34 wide, 14 − 2 × 1/2 = 13 deep.
    const wide = openings(["A", 36, 6.25, 14.5, 1]);
    expect(found([["bottom grain", "side to side"]], /weak way/, wide)).toEqual([
      [
        "A",
        "doubtful",
        "The bottom of Plywood has its grain along its longer span, 34 in: its weak way carries over the shorter, 13 in.",
      ],
    ]);
    expect(found([["bottom grain", "front to back"]], /weak way/, wide)).toEqual([]);
    expect(found([], /weak way/, wide)).toEqual([]);
    expect(
      found(
        [
          ["bottom grain", "side to side"],
          ["bottom material", "MDF"],
        ],
        /weak way/,
        wide,
      ),
    ).toEqual([]);
    // 16 × 19: neither span is longer by half.
    expect(found([["bottom grain", "front to back"]], /weak way/)).toEqual([]);
  });

  test("sides and ends carry along their length where they are longer than high", () => {
    expect(found([["box grain", "vertical"]], /weak way/)).toEqual([
      ["A1", "doubtful", "The sides and ends of Plywood have upright grain: their weak way spans their length."],
    ]);
    expect(found([["box end grain", "vertical"]], /weak way/)).toEqual([
      ["A1", "doubtful", "The ends of Plywood have upright grain: their weak way spans their length."],
    ]);
    // A bottle drawer: ends 9 − 1 = 8 long and 19 1/4 high.
    expect(found([["box end grain", "vertical"]], /weak way/, openings(["A", 10, 20, 20.5, 1]))).toEqual([]);
    expect(found([["box grain", "any"]], /weak way/)).toEqual([]);
    expect(found([], /weak way/)).toEqual([]);
  });
});

describe("solid wood whose grain runs the wrong way is wrong", () => {
  test("a bottom with its grain front to back swells against the sides", () => {
    const solid = (grain: string) => [
      ["bottom material", "Oak"],
      ["bottom fit", "under back"],
      ["bottom grain", grain],
    ];
    expect(found(solid("front to back"), /against the sides/)).toEqual([
      [
        "A",
        "wrong",
        "The bottom of Oak, which reads as solid wood, has its grain front to back: it swells against the sides.",
      ],
    ]);
    expect(found(solid("side to side"), /against the sides/)).toEqual([]);
  });

  test("sides and ends with upright grain break, and their joints do not hold", () => {
    const solid = (grain: string) => [
      ["side material", "Maple"],
      ["box grain", grain],
    ];
    const words =
      "Sides and ends of Maple, which reads as solid wood, may have upright grain: they break across their length, and joints at their ends hold little.";
    expect(found(solid("vertical"), /upright grain/)).toEqual([["A1", "wrong", words]]);
    expect(found(solid("any"), /upright grain/)).toEqual([["A1", "wrong", words]]);
    expect(found(solid("horizontal"), /upright grain/)).toEqual([]);
  });
});
