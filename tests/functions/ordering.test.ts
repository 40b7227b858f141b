import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, QUOTE } from "../../src/functions";
import { expectValueError } from "../cell";
import { column, openings } from "./tables";

/** Two banks of a bindery: five drawers on 18 in slides, two on 22 in ones; each box 4 in high. */
const job = openings(["A", 20, 26, 18.5, 5], ["B", 20, 26, 22.5, 2]).map((row, i) => [
  ...row,
  i === 0 ? "Box heights" : 4,
]);
const stock = [
  ["Length", "Width", "Price"],
  [96, 48, 0.01],
];
const rates = (...more: unknown[][]) => [
  ["pull price", "none"],
  ["screw price", 0.05],
  ["labor rate", "none"],
  ...more,
];
const list = (standards: unknown[][], item: RegExp) =>
  HARDWARE(job, standards)
    .filter(([name]) => item.test(String(name)))
    .map((row) => row.slice(0, 4));
const lines = (standards: unknown[][], item: RegExp, ...more: unknown[][]) =>
  QUOTE(job, standards, stock, rates(...more))
    .filter(([, name]) => item.test(String(name)))
    .map((row) => row.slice(1, 6));

describe("a price of slides may stand for each length", () => {
  test("the length's own price counts, the others have that of all slides", () => {
    expect(lines([], /slide,/, ["slide price", 12], ["slide price 22", 15.5])).toEqual([
      ["Side-mount slide, 18 in", 5, "pair", 12, 60],
      ["Side-mount slide, 22 in", 2, "pair", 15.5, 31],
    ]);
    expect(lines([], /slide,/, ["slide price 18", 11], ["Slide price 22 in", 15.5]).map((row) => row[3])).toEqual([
      11, 15.5,
    ]);
    // 558.8 mm are 22 in.
    expect(lines([], /slide,/, ["slide price", 12], ["slide price 558.8 mm", 14]).map((row) => row[3])).toEqual([
      12, 14,
    ]);
  });

  test("where a length has none and there is none for all, the rate is missed by its name", () => {
    expectValueError(
      () => QUOTE(job, [], stock, rates(["slide price 18", 11])),
      'rates lacks "slide price", which this job needs, or has it as 0, which an empty cell also gives. Give it, or write none where nothing is charged.',
    );
    expect(column(CHECKS(job, [], stock, rates(["slide price 18", 11])), "Finding").join()).toContain(
      'lacks "slide price"',
    );
  });

  test("what is no length is no rate", () => {
    expectValueError(
      () => QUOTE(job, [], stock, rates(["slide price long", 11])),
      'rates, row 4 has the name "slide price long", which is none. The nearest is "slide price". A charge of your own begins with "extra".',
    );
  });
});

describe("what is sold in packs is ordered in packs", () => {
  test("slides by length: packs, and what is left over", () => {
    // Of 4 pairs: 5 want two packs and leave 3, 2 want one and leave 2.
    expect(list([["slide pack", 4]], /slide$/)).toEqual([
      ["Side-mount slide", 18, 5, "pair"],
      ["Side-mount slide", 22, 2, "pair"],
      ["Side-mount slide", 18, 2, "pack"],
      ["Side-mount slide", 22, 1, "pack"],
    ]);
    const notes = HARDWARE(job, [["slide pack", 4]]).filter((row) => row[3] === "pack");
    expect(notes.map((row) => row[4])).toEqual([
      expect.stringMatching(/^of 4, for what is listed above: 3 left over/),
      expect.stringMatching(/^of 4, for what is listed above: 2 left over/),
    ]);
    expect(HARDWARE(job, [["slide pack", 5]]).filter((row) => row[3] === "pack")[0]![4]).toMatch(
      /^of 5, .*: none left over/,
    );
  });

  test("screws by box, whatever they are for", () => {
    // Of 7 pairs: 3 screws at both sides of the box, 1/2 long, 42; as many of 5/8 into the cabinet; the pocket screws 56.
    expect(list([["fastener pack", 50]], /slide screw|pocket/i).filter((row) => row[3] === "pack")).toEqual([
      ["Slide screw", 1 / 2, 1, "pack"],
      ["Slide screw", 5 / 8, 1, "pack"],
      ["Pocket screw", 1, 2, "pack"],
    ]);
    expect(list([], /./).filter((row) => row[3] === "pack")).toEqual([]);
  });

  test("QUOTE charges what is bought: left over pairs and screws too", () => {
    const slides = (standards: unknown[][]) => lines(standards, /slide,/, ["slide price", 12]).map((row) => row[1]);
    expect(slides([])).toEqual([5, 2]);
    expect(slides([["slide pack", 4]])).toEqual([8, 4]);
    const screws = (standards: unknown[][]) => lines(standards, /^Screws/, ["slide price", 12])[0]![1] as number;
    const packs = list([["fastener pack", 50]], /screw/i).filter((row) => row[3] === "pack");
    expect(screws([["fastener pack", 50]])).toBe(packs.reduce((sum, row) => sum + 50 * (row[2] as number), 0));
    expect(screws([["fastener pack", 50]])).toBeGreaterThan(screws([]));
  });
});
