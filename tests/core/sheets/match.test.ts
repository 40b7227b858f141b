import { describe, expect, test } from "vitest";
import { ratio, type Fault } from "../../../src/core/length";
import { matchStock, type OfMaterial, type PartToCut, type SheetStock } from "../../../src/core/sheets";

interface Board extends OfMaterial {
  isBoard: true;
}
type Row = SheetStock | Board;

const isBoard = (row: Row): row is Board => "isBoard" in row;
const sheet = (place: number, material: string, thickness = ratio(1, 2)): SheetStock => ({
  name: material,
  place,
  material,
  thickness,
  length: ratio(96),
  width: ratio(48),
});
const board = (place: number, material: string): Board => ({ name: material, place, material, isBoard: true });
const part = (place: number, material: string, thickness = ratio(1, 2)): PartToCut => ({
  name: `P${place}`,
  place,
  material,
  thickness,
  quantity: 1,
  length: ratio(20),
  width: ratio(10),
  grain: "any",
});
const match = (parts: PartToCut[], stock: Row[]) => matchStock(parts, stock, isBoard, "in");

describe("matchStock(parts, stock, isSolid, unit)", () => {
  test("what has to do with each other goes together, in the order of the lists", () => {
    const stock = [sheet(1, "Birch"), sheet(2, "Maple"), sheet(3, "")];
    const { sheets } = match([part(2, "Maple"), part(1, "Birch"), part(3, "Maple", ratio(1, 2))], stock);
    expect(
      sheets.map(({ parts, stock: rows }) => [parts.map(({ place }) => place), rows.map(({ place }) => place)]),
    ).toEqual([
      [
        [1, 2, 3],
        [1, 2, 3],
      ],
    ]);
    expect(sheets[0]!.parts.map(({ from }) => from)).toEqual([
      [0, 2],
      [1, 2],
      [1, 2],
    ]);
  });

  test("a part of any material joins what stood apart, and leaves what its thickness keeps apart", () => {
    const stock = [sheet(1, "Birch"), sheet(2, "Maple"), sheet(3, "Oak", ratio(3, 4))];
    const parts = [part(1, "Birch"), part(2, "Maple"), part(3, "Oak", ratio(3, 4)), part(4, "")];
    const { sheets } = match(parts, stock);
    expect(sheets.map((group) => group.parts.map(({ name, from }) => [name, from]))).toEqual([
      [
        ["P1", [0]],
        ["P2", [1]],
        ["P4", [0, 1]],
      ],
      [["P3", [0]]],
    ]);
  });

  test("materials apart are groups apart, by the order of their stock; boards take their parts without a layout", () => {
    const { sheets, solid } = match(
      [part(1, "Oak"), part(2, "Maple"), part(3, "Birch")],
      [sheet(1, "Birch"), board(2, "Oak"), sheet(3, "Maple")],
    );
    expect(sheets.map(({ parts }) => parts.map(({ name }) => name))).toEqual([["P3"], ["P2"]]);
    expect(solid.map(({ stock, parts }) => [stock.place, parts.map(({ name }) => name)])).toEqual([[2, ["P1"]]]);
  });

  test.each<[string, string, PartToCut[], Row[], Record<string, unknown>]>([
    ["a part of a material that is not there", "sheets.noStockFor", [part(1, "Oak")], [sheet(1, "Birch")], {}],
    [
      "a part that could be cut from a board or a sheet",
      "stock.severalMeasures",
      [part(1, "Oak")],
      [sheet(4, "Oak"), board(7, "Oak")],
      { name: "P1", first: 4, second: 7 },
    ],
  ])("refuses %s, as %s", (_, code, parts, stock, data) => {
    expect(() => match(parts, stock)).toThrow(
      expect.objectContaining({ code, data: expect.objectContaining(data) }) as Fault,
    );
  });
});
