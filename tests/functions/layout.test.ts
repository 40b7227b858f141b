import { describe, expect, test } from "vitest";
import { LAYOUT, PARTS } from "../../src/functions";
import { shown } from "../cell";
import { openings } from "./tables";

const layout = (...args: unknown[]) => (LAYOUT as (...a: unknown[]) => unknown[][])(...args);

interface Piece {
  sheet: number;
  name: string;
  x: number;
  y: number;
  length: number;
  width: number;
  turned: boolean;
}
const pieces = (rows: unknown[][]): Piece[] =>
  rows
    .slice(1)
    .map(([sheet, , , name, , x, y, length, width, turned]) => ({ sheet, name, x, y, length, width, turned }) as Piece);

describe("LAYOUT(parts, stock, kerf, trim, effort, unit)", () => {
  const list = [
    ["Part", "Length", "Width", "Qty", "Grain"],
    ["Side", 22, 7.5, 9, "length"],
    ["End", 16, 7.5, 9, ""],
    ["Tall", 20, 30, 2, "width"],
  ];
  const placed = pieces(
    layout(
      list,
      [
        ["Length", "Width"],
        [96, 48],
      ],
      0.125,
      0.5,
    ),
  );

  test("places every piece once, inside the trimmed sheet, a kerf or more from its neighbors", () => {
    expect(placed.map(({ name }) => name).sort()).toEqual([
      ...Array<string>(9).fill("End"),
      ...Array<string>(9).fill("Side"),
      "Tall",
      "Tall",
    ]);
    for (const a of placed) {
      expect(a.x >= 0.5 && a.y >= 0.5 && a.x + a.length <= 95.5 && a.y + a.width <= 47.5).toBe(true);
      for (const b of placed) {
        if (a === b || a.sheet !== b.sheet) continue;
        const apart =
          a.x + a.length + 0.125 <= b.x ||
          b.x + b.length + 0.125 <= a.x ||
          a.y + a.width + 0.125 <= b.y ||
          b.y + b.width + 0.125 <= a.y;
        expect(apart, JSON.stringify([a, b])).toBe(true);
      }
    }
  });

  test("says which lie turned: their length across the sheet's", () => {
    const sizes: Record<string, [number, number]> = { Side: [22, 7.5], End: [16, 7.5], Tall: [20, 30] };
    for (const { name, length, width, turned } of placed) {
      expect(turned ? [width, length] : [length, width]).toEqual(sizes[name]);
      if (name === "Side") expect(turned).toBe(false);
      if (name === "Tall") expect(turned).toBe(true);
    }
  });

  test("fronts in one grain lie in one row, in their order from the top, the kerf between them", () => {
    const cut = PARTS(openings(["A", 18, 26.25, 23.25, "5; 1 part; 5"]), [["front match", "opening"]]);
    const fronts = layout(cut, [
      ["Thickness", "Length", "Width"],
      [0.25, 96, 48],
      [0.5, 96, 48],
      [0.75, 96, 48],
    ])
      .slice(1)
      .filter((row) => row[3] === "Front")
      .sort((a, b) => (a[5] as number) - (b[5] as number));
    expect(fronts.map((row) => row[4])).toEqual(["A1", "A2", "A3"]);
    expect(fronts.map((row) => row.slice(1, 3))).toEqual(Array.from({ length: 3 }, () => ["Plywood", 0.75]));
    expect(new Set(fronts.map((row) => row[6])).size).toBe(1);
    expect(fronts[1]![5]).toBe((fronts[0]![5] as number) + (fronts[0]![7] as number) + 0.125);
  });

  test("a mistake is named as in SHEETS", () => {
    expect(
      shown(() =>
        layout(
          [
            ["Length", "Width", "Qty"],
            [10, 10, 1],
          ],
          [
            ["Length", "Width"],
            [9, 9],
          ],
        ),
      ),
    ).toBe("#N/A parts, row 2, 10 in × 10 in, fits no sheet of its stock.");
  });
});
