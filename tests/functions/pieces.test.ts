import { describe, expect, test } from "vitest";
import { PIECES, SETUPS } from "../../src/functions";
import { expectValueError } from "../cell";
import { column, openings } from "./tables";

const one = openings(["A", 18, 20, 20.5, 1]);

describe("PIECES(openings, [standards])", () => {
  test("one row a physical piece, in the order of the cut list", () => {
    const table = PIECES(one);
    expect(table[0]).toEqual([
      "Piece",
      "Drawer",
      "Part",
      "Length",
      "Width",
      "Thickness",
      "Material",
      "Grain",
      "Edges",
      "Set-ups",
    ]);
    expect(table.slice(1).map((row) => row.slice(0, 9))).toEqual([
      ["A1 left side", "A1", "Side", 20, 19.25, 0.5, "Plywood", "length", ""],
      ["A1 right side", "A1", "Side", 20, 19.25, 0.5, "Plywood", "length", ""],
      ["A1 box front", "A1", "Box front", 16, 19.25, 0.5, "Plywood", "length", ""],
      ["A1 box back", "A1", "Box back", 16, 19.25, 0.5, "Plywood", "length", ""],
      ["A1 bottom", "A1", "Bottom", 16.4375, 19.4375, 0.25, "Plywood", "any", ""],
      ["A1 front", "A1", "Front", 21.375, 19.375, 0.75, "Plywood", "length", ""],
    ]);
  });

  test("names the steps of SETUPS that each piece goes through", () => {
    const steps = SETUPS(one).filter(([step]) => typeof step === "number");
    const bottom = PIECES(one).find(([piece]) => piece === "A1 bottom")!;
    const through = steps.filter((row) => String(row[5]).includes("Bottom")).map(([step]) => step);
    expect(through.length).toBe(2);
    expect(bottom[9]).toBe(through.join(", "));
  });

  test("copies of an opening, and pulls of one front, are counted", () => {
    const table = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Quantity"],
      ["C", 30, 20, 20.5, 1, 2],
    ];
    const pieces = column(PIECES(table, [["pull kind", "shop-made"]]), "Piece");
    expect(pieces.filter((piece) => /side|plate/.test(String(piece)))).toEqual([
      "C1 left side, copy 1 of 2",
      "C1 right side, copy 1 of 2",
      "C1 left side, copy 2 of 2",
      "C1 right side, copy 2 of 2",
      "C1 pull plate 1, copy 1 of 2",
      "C1 pull plate 2, copy 1 of 2",
      "C1 pull plate 1, copy 2 of 2",
      "C1 pull plate 2, copy 2 of 2",
    ]);
    expect(new Set(pieces).size).toBe(pieces.length);
  });

  test("edges to be banded: all four of a front, with the band's thickness; nothing else is banded", () => {
    const table = PIECES(one, [["edge band", "1/32"]]);
    expect(table.slice(1).map((row) => row[8])).toEqual(["", "", "", "", "", "all four, 1/32 in"]);
    expect(
      PIECES(
        [
          ["Width", "Height", "Depth", "Drawers"],
          [450, 500, 520, 1],
        ],
        [
          ["unit", "mm"],
          ["edge band", 0.8],
        ],
      ).at(-1)![8],
    ).toBe("all four, 0.8 mm");
  });

  test("one bad row fails the whole call and names it", () => {
    expectValueError(
      () => PIECES(openings(["A", 18, 20, 20.5, 1], ["B", "wide", 20, 20.5, 1])),
      `openings, row 3, Width is "wide", which is no length. Write a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
  });

  test("refuses more pieces than a spreadsheet takes at once, before they are made", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Quantity"],
      ...Array.from({ length: 50 }, () => [18, 40, 20.5, 10, 1000]),
    ];
    expectValueError(
      () => PIECES(table),
      "The job has 3,000,000 pieces. At most 10,000 are listed at once: give fewer openings a call.",
    );
  });
});
