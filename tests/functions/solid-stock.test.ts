import { describe, expect, test } from "vitest";
import { CUTS, LAYOUT, SHEETS } from "../../src/functions";
import { expectValueError } from "../cell";
import { column } from "./tables";

const PARTS = [
  ["Part", "Length", "Width", "Thickness", "Material", "Qty"],
  ["Side", 22, 6, "1/2", "Plywood", 4],
  ["Front", 18, 8, "3/4", "Cherry", 2],
  ["Edge strip", 24, 3, 1, "Cherry", 3],
];
const SHEET = ["Plywood", "1/2", 96, 48, 58, "", ""];
const STOCK = [
  ["Material", "Thickness", "Length", "Width", "Price", "Sold by", "Waste"],
  SHEET,
  ["Cherry", "", "", "", 9.6, "board foot", 20],
];
const effort = "quick" as never;
const sheets = (stock: unknown[][] = STOCK, parts: unknown[][] = PARTS, unit?: string) =>
  SHEETS(parts, stock, "1/8", 0, effort, unit as never).slice(1);

describe("solid stock, sold by its volume", () => {
  test("SHEETS tells how much to buy, its waste included, so that it is not forgotten", () => {
    // 2 × 18 × 8 × 3/4 and 3 × 24 × 3 × 1 are 432 cubic inches: 3 board feet, and a fifth more.
    expect(sheets()).toEqual([
      ["Plywood", 0.5, "96 × 48", 1, 1, 4, expect.any(Number), 58, expect.any(String)],
      ["Cherry", "", "board foot", 3.6, "", 5, "", 34.56, ""],
    ]);
  });

  test("its cost stands to the cent, halves up, as QUOTE's amounts do", () => {
    // 3.6 board feet at 9.5625 are 34.425.
    const price = (each: number) => sheets([STOCK[0]!, SHEET, ["Cherry", "", "", "", each, "board foot", 20]])[1]![7];
    expect([price(9.5625), price(9.5624), price(9.6)]).toEqual([34.43, 34.42, 34.56]);
  });

  test("LAYOUT and CUTS leave it out", () => {
    expect(new Set(column(LAYOUT(PARTS, STOCK, "1/8", 0, effort), "Part"))).toEqual(new Set(["Side"]));
    expect(JSON.stringify(CUTS(PARTS, STOCK, "1/8", 0, effort))).not.toMatch(/Front|Edge strip/);
    const boards = [STOCK[0]!, STOCK[2]!];
    expect(LAYOUT([PARTS[0]!, PARTS[2]!], boards, "1/8", 0, effort)).toHaveLength(1);
  });

  test("stock that tells its thickness is bought as thick as that; the part's counts where it does not", () => {
    const thick = [STOCK[0]!, ["Cherry", "1 1/16", "", "", "", "board foot", ""]];
    expect(sheets(thick, [PARTS[0]!, PARTS[2]!])).toEqual([
      ["Cherry", 17 / 16, "board foot", (2 * 18 * 8 * 17) / 16 / 144, "", 2, "", "", ""],
    ]);
  });

  test("cubic meters, and measures as a person writes them", () => {
    const cubic = (soldBy: string) =>
      sheets(
        [
          ["Length", "Width", "Sold by"],
          ["", "", soldBy],
        ],
        [
          ["Length", "Width", "Thickness", "Qty"],
          [2000, 500, 20, 5],
        ],
        "mm",
      )[0]!.slice(2, 4);
    expect(["cubic metre", "Cubic meter", "cubic metres"].map(cubic)).toEqual(
      Array.from({ length: 3 }, () => ["cubic meter", 0.1]),
    );
    expect(cubic("Board feet")[0]).toBe("board foot");
    // A cubic meter is 423.776 board feet: 1000³ / (25.4³ × 144), NIST Handbook 44, Appendix C.
    expect(cubic("board foot")[1]).toBeCloseTo(42.3776, 4);
  });

  test("a table of boards alone needs no columns of length and width", () => {
    const boards = [
      ["Material", "Sold by"],
      ["", "board foot"],
    ];
    expect(sheets(boards, PARTS.slice(0, 2))[0]![3]).toBe((4 * 22 * 6 * 0.5) / 144);
  });

  test("a sheet still needs its length", () => {
    expectValueError(
      () => sheets([STOCK[0]!, ["Plywood", "1/2", "", 48, "", "sheet", ""]], PARTS.slice(0, 2)),
      `stock, row 2, Length is blank. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
  });

  test("a part without a thickness from boards without one is refused", () => {
    expectValueError(
      () =>
        sheets(
          [
            ["Sold by", "Price"],
            ["board foot", 9],
          ],
          [
            ["Part", "Length", "Width", "Qty"],
            ["Shelf", 30, 10, 1],
          ],
        ),
      "Shelf is of solid wood without a thickness: give it one, or stock, row 2.",
    );
  });

  test("waste between 0 and 1 may be either, and is refused", () => {
    expect(() => sheets([STOCK[0]!, ["Cherry", "", "", "", 9, "board foot", 0.2]], [PARTS[0]!, PARTS[2]!])).toThrow(
      /^stock, row 2, Waste is 0\.2: is that 0\.2 % or 20 %\?/,
    );
  });
});
