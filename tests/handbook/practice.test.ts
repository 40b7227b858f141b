import { describe, expect, test } from "vitest";
import {
  BOTTOMWIDTH,
  BOXWIDTH,
  FRONTHEIGHT,
  GROOVEPASSES,
  HARDWARE,
  LENGTH,
  MOUNTING,
  SETUPS,
  SLIDELENGTH,
} from "../../src/functions";
import { reference } from "./reference";

const mm = "mm" as never;
const fact = (id: string, words: RegExp): string => {
  const text = reference(id).fact!;
  expect(text).toMatch(words);
  return text;
};

describe("common practice", () => {
  test("side-mount slides take 1/2 in (12.7 mm) a side: the box is 1 in narrower than its opening", () => {
    fact("practice.side.space", /1\/2 in \(12\.7 mm\) a side; box width = opening − 1 in/);
    for (const opening of [12, 18, 24, 30.0625, 36]) expect(BOXWIDTH(opening)).toBe(opening - 1);
    expect(BOXWIDTH(500, "side-mount", mm)).toBe(500 - 2 * 12.7);
  });

  test("slides come from 10 to 28 in by 2 in", () => {
    fact("practice.slide.lengths", /10 to 28 in in 2 in steps/);
    const bought = new Set(Array.from({ length: 400 }, (_, i) => SLIDELENGTH(10.5 + i / 16)));
    expect([...bought]).toEqual([10, 12, 14, 16, 18, 20, 22, 24, 26, 28]);
  });

  test("applied fronts stand 1/8 in apart", () => {
    fact("practice.front.gap", /1\/8 in apart/);
    expect(FRONTHEIGHT(20.125, 2)).toBe(10);
  });

  test("a full kerf is 1/8 in: a groove for a 1/2 in bottom, 1/4 in up and 1/4 in deep in a 3/4 in side, takes four passes", () => {
    fact("practice.kerf", /full kerf 1\/8 in/);
    fact("practice.groove", /1\/4 in up from the lower edge and 1\/4 in deep in 3\/4 in sides, for a 1\/2 in bottom/);
    expect(GROOVEPASSES("1/2", "1/8", "1/4", "1/4").slice(1)).toEqual([
      [1, 0.25, 0.25],
      [2, 0.375, 0.25],
      [3, 0.5, 0.25],
      [4, 0.625, 0.25],
    ]);
  });

  test("a groove of a third to half of the side's thickness holds the bottom on both sides", () => {
    fact("practice.groove.depth", /a third to half of the side thickness/);
    for (const groove of [0.25, 0.375]) {
      const bottom = BOTTOMWIDTH(23, 0.75, groove);
      expect(bottom).toBeGreaterThan(23 - 1.5);
      expect(bottom).toBe(23 - 1.5 + 2 * groove - 1 / 16);
    }
  });

  const drawers = (width: number, count: unknown) => [
    ["Width", "Height", "Depth", "Drawers"],
    [width, 20, 20.5, count],
  ];
  const sizes = (item: string, standards: unknown[][], width = 18) =>
    HARDWARE(drawers(width, 1), standards)
      .filter(([name]) => name === item)
      .map(([, size, quantity]) => [size, quantity]);

  test("a 1/2 in spacer under the lowest box, and 1/2 in between boxes that fill their spaces", () => {
    fact("practice.spacers", /^a 1\/2 in spacer under the lowest box and between boxes/);
    const filled = [
      ["space above", "none"],
      ["height step", "none"],
      ["match heights", "none"],
    ];
    const spacers = MOUNTING(drawers(18, 4), filled)
      .slice(1)
      .map((row) => row[1]);
    expect(spacers).toEqual([0.5, 0.5, 0.5, 0.5]);
  });

  test("two screws hold a front, four a wide one", () => {
    fact("practice.front.screws", /^two screws hold a front to its box, four on a wide one$/);
    expect([sizes("Front screw", [])[0]![1], sizes("Front screw", [], 30)[0]![1]]).toEqual([2, 4]);
  });

  test("pocket screws: 1/2 in stock takes 1 in, 3/4 in stock 1 1/4 in, 1 1/2 in stock 2 1/2 in", () => {
    const text = fact("practice.pocket.screws", /1\/2 in stock 1 in/);
    for (const [, stock, screw] of text.matchAll(/([\d/ ]+) in stock ([\d/ ]+) in/g)) {
      const [[size]] = sizes("Pocket screw", [["side thickness", stock!.trim()]]) as [[number]];
      expect(size, stock).toBe(LENGTH(screw!.trim()));
    }
  });

  test("a small box: the bottom nailed on with glue, cut a little large, and trimmed flush", () => {
    fact("practice.small.box", /1\/4 in bottom glued and nailed on, cut a little large and trimmed flush/);
    const standards = [
      ["bottom fit", "applied"],
      ["bottom overhang", "1/16"],
    ];
    expect(sizes("Bottom nail", standards).length).toBe(1);
    expect(SETUPS(drawers(18, 1), standards).find(([, operation]) => operation === "Trim flush")![3]).toBe(1 / 16);
  });

  test("pieces that share one saw setting are cut together", () => {
    fact("practice.order", /batch every piece that shares one saw setting/);
    const stops = SETUPS(drawers(18, 3)).filter(([, operation]) => operation === "Crosscut");
    expect(stops.find((row) => row[3] === 20)!.slice(4)).toEqual([6, "Side A1, A2, A3"]);
  });
});
