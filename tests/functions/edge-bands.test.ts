import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, PARTS, PIECES, QUOTE, SETUPS, WORKING } from "../../src/functions";
import { column, openings } from "./tables";

/** A printer's type cabinet: 24 × 10 × 20 1/2. Its front is 25 3/8 × 11 3/8, its box 23 × 9 1/4 × 20. */
const one = openings(["A", 24, 10, 20.5, 1]);
const band = (...more: unknown[][]) => [
  ["edge band", "1/32"],
  ["top edge band", "1/16"],
  ["left edge band", "none"],
  ["right edge band", "none"],
  ...more,
];
const part = (name: string, standards: unknown[][]) =>
  PARTS(one, standards)
    .filter(([other]) => other === name)
    .map((row) => row.slice(3, 5))[0];
const bought = (standards: unknown[][]) =>
  HARDWARE(one, standards)
    .filter(([item]) => item === "Edge band")
    .map((row) => row.slice(1, 4));

describe("each edge of a front has a band of its own", () => {
  test("the front is cut smaller by the bands that it gets", () => {
    // 11 3/8 − 1/16 − 1/32; its sides are bare.
    expect(part("Front", band())).toEqual([11 + 9 / 32, 25 + 3 / 8]);
    // The bander takes 1/32 off the two edges that go through it.
    expect(part("Front", band(["pre-mill", "1/32"]))).toEqual([11 + 11 / 32, 25 + 3 / 8]);
    // What is said of all four holds for those of which nothing is said.
    expect(part("Front", [["edge band", "1/16"]])).toEqual([11 + 1 / 4, 25 + 1 / 4]);
    expect(part("Front", [["left edge band", "1/8"]])).toEqual([11 + 3 / 8, 25 + 1 / 4]);
  });

  test("WORKING names each", () => {
    const how = (standards: unknown[][]) =>
      WORKING(one, "A1", standards)
        .filter(([size]) => /^Front cut/.test(String(size)))
        .map((row) => row[2]);
    expect(how(band(["pre-mill", "1/32"]))).toEqual([
      "front height 11 3/8 − top edge band 1/16 − bottom edge band 1/32 + 2 × pre-mill 1/32",
    ]);
    expect(how([["edge band", "1/16"]])).toEqual([
      "front width 25 3/8 − 2 × edge band 1/16",
      "front height 11 3/8 − 2 × edge band 1/16",
    ]);
  });

  test("HARDWARE buys each thickness by its length, with the allowance for each edge", () => {
    // 25 3/8 in are 2.11 ft: up to the next tenth.
    expect(bought(band())).toEqual([
      [1 / 16, 2.2, "foot"],
      [1 / 32, 2.2, "foot"],
    ]);
    // 27 3/8 in are 2.28 ft.
    expect(bought(band(["edge band allowance", 2]))).toEqual([
      [1 / 16, 2.3, "foot"],
      [1 / 32, 2.3, "foot"],
    ]);
    // 2 × (25 3/8 + 11 3/8) = 73 1/2 in = 6.125 ft; with four times 1 in 77 1/2 in = 6.46 ft.
    expect(bought([["edge band", "1/32"]])).toEqual([[1 / 32, 6.2, "foot"]]);
    expect(
      bought([
        ["edge band", "1/32"],
        ["edge band allowance", 1],
      ]),
    ).toEqual([[1 / 32, 6.5, "foot"]]);
  });

  test("PIECES says which", () => {
    expect(column(PIECES(one, band()), "Edges").at(-1)).toBe("top 1/16 in, bottom 1/32 in");
    expect(column(PIECES(one, [["left edge band", "1/8"]]), "Edges").at(-1)).toBe("left 1/8 in");
  });

  test("matched fronts hang apart by gap and both bands between them", () => {
    const table = openings(["A", 24, 20, 20.5, 2]);
    const between = SETUPS(table, [...band(), ["front match", "opening"], ["front gap", "1/4"]])
      .filter((row) => /^To cut away/.test(String(row[2])))
      .map((row) => row[3]);
    expect(between).toEqual([1 / 4 + 1 / 16 + 1 / 32]);
  });
});

describe("the upper edges of a box are banded by a standard of their own", () => {
  const box = [["box edge band", "1/32"]];

  test("sides and ends are cut lower by it", () => {
    expect(part("Side", box)).toEqual([20, 9.25 - 1 / 32]);
    expect(part("Box front", box)).toEqual([22, 9.25 - 1 / 32]);
    expect(part("Box back", box)).toEqual([22, 9.25 - 1 / 32]);
    expect(part("Side", [...box, ["pre-mill", "1/64"]])).toEqual([20, 9.25 - 1 / 64]);
    // Under the back: inside height 9 1/4 − 3/8 − 1/4.
    expect(part("Box back", [...box, ["bottom fit", "under back"]])).toEqual([22, 8.625 - 1 / 32]);
    expect(part("Front", box)).toEqual([11 + 3 / 8, 25 + 3 / 8]);
  });

  test("it is bought by the length of sides and ends, and marked on each", () => {
    // 2 × 20 + 2 × 22 = 84 in = 7 ft; four allowances of 3 in more: 8 ft.
    expect(bought(box)).toEqual([[1 / 32, 7, "foot"]]);
    expect(bought([...box, ["edge band allowance", 3]])).toEqual([[1 / 32, 8, "foot"]]);
    expect(column(PIECES(one, box), "Edges")).toEqual([...Array<string>(4).fill("top 1/32 in"), "", ""]);
  });

  test("QUOTE charges it with the band of the fronts", () => {
    const lines = QUOTE(
      one,
      [...box, ["edge band", "1/32"]],
      [
        ["Length", "Width", "Price"],
        [96, 48, 0.01],
      ],
      [
        ["edge band price", 2],
        ["slide price", "none"],
        ["pull price", "none"],
        ["screw price", "none"],
        ["labor rate", "none"],
      ],
    ).filter(([, item]) => /edge band/i.test(String(item)));
    // Of 1/2 in stock 7 ft, of 3/4 in stock 6.2 ft.
    expect(lines.map((row) => row.slice(2, 6))).toEqual([
      [6.2, "foot", 2, 12.4],
      [7, "foot", 2, 14],
    ]);
  });

  test("an allowance without any band has no effect", () => {
    expect(column(CHECKS(one, [["edge band allowance", 1]]), "Finding")).toContain(
      "The standard edge band allowance has no effect: no opening has an edge band.",
    );
    expect(column(CHECKS(one, [...box, ["edge band allowance", 1]]), "Finding").join()).not.toContain("no effect");
  });
});
