import { describe, expect, test } from "vitest";
import { CUTS, LAYOUT, PARTS, SHEETS } from "../../src/functions";
import { expectValueError, shown } from "../cell";
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

describe("LAYOUT of a layout", () => {
  const STOCK = [
    ["Length", "Width", "Price", "Available"],
    [96, 48, 60, ""],
    [40, 24, 0, 1],
  ];
  const HEADINGS = ["Sheet", "Part", "From left", "From bottom", "Length", "Width", "Turned"];
  const laid = (...rows: unknown[][]): unknown[][] => [HEADINGS, ...rows];

  test("parts that tell where they lie stay there, a blank place being the edge", () => {
    const rows = laid([1, "Shelf", "", "", 50, 20, false], [1, "End", 50.125, "", 20, 30, "TRUE"]);
    expect(pieces(layout(rows, STOCK))).toEqual([
      { sheet: 1, name: "Shelf", x: 0, y: 0, length: 50, width: 20, turned: false },
      { sheet: 1, name: "End", x: 50.125, y: 0, length: 20, width: 30, turned: true },
    ]);
  });

  test("a sheet is of the cheapest stock that holds it, as long as there is some", () => {
    const small = (sheet: number): unknown[] => [sheet, "Lid", 0, 0, 30, 20, ""];
    const table = SHEETS(laid(small(1), small(2)), STOCK);
    expect(table.slice(1).map((row) => [row[2], row[3]])).toEqual([
      ["96 × 48", 1],
      ["40 × 24", 1],
    ]);
  });

  test("cuts that the parts leave room for are found, whatever lies between them", () => {
    const cuts = CUTS(laid([1, "A", 3, 5, 20, 10, ""], [1, "B", 30, 5, 20, 10, ""]), [STOCK[0]!, STOCK[1]!]);
    const gives = cuts.slice(1).map((row) => String(row[7]));
    expect(gives.join("; ")).toContain("A 20 × 10");
    expect(gives.join("; ")).toContain("B 20 × 10");
  });

  test.each([
    ["overlap", [1, "A", 0, 0, 20, 20, ""], [1, "B", 10, 10, 20, 20, ""]],
    ["lie nearer than a kerf", [1, "A", 0, 0, 20, 20, ""], [1, "B", 20.0625, 0, 20, 20, ""]],
  ])("parts that %s are refused", (_, ...rows) => {
    expectValueError(
      () => layout(laid(...rows), STOCK),
      "The parts on sheet 1 lie so that no cuts from edge to edge part them: they overlap, or less than a kerf lies between them.",
    );
  });

  test("parts that only a saw turning inside the sheet could part are refused", () => {
    const ring = [
      [1, "A", 0, 0, 20, 10, ""],
      [1, "B", 20.125, 0, 10, 20, ""],
      [1, "C", 10.125, 20.125, 20, 10, ""],
      [1, "D", 0, 10.125, 10, 20, ""],
    ];
    expect(shown(() => layout(laid(...ring), STOCK))).toMatch(/no cuts from edge to edge/);
  });

  test("a part beyond every sheet is named", () => {
    expect(shown(() => layout(laid([1, "Shelf", 80, 0, 20, 20, ""]), STOCK))).toBe(
      "#VALUE! parts, row 2 (Shelf) reaches beyond every sheet of its stock, where it lies on sheet 1.",
    );
  });
});
