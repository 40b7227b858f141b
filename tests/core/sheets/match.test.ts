import { describe, expect, test } from "vitest";
import { parseLength, ratio, type Unit } from "../../../src/core/length";
import { matchStock, type PartToCut, type SheetStock } from "../../../src/core/sheets";

const part = (thickness: string, unit: Unit): PartToCut => ({
  name: "Shelf",
  place: 2,
  quantity: 1,
  length: ratio(10),
  width: ratio(5),
  grain: "any",
  material: "",
  thickness: parseLength(thickness, unit),
});
const sheet = (place: number, thickness: string, unit: Unit): SheetStock => ({
  name: `row ${place}`,
  place,
  length: ratio(96),
  width: ratio(48),
  material: "",
  thickness: parseLength(thickness, unit),
});
const isSolid = (_: unknown): _ is never => false;
const match = (thickness: string, stock: readonly string[], unit: Unit): string[] =>
  matchStock(
    [part(thickness, unit)],
    stock.map((own, i) => sheet(i + 2, own, unit)),
    isSolid,
    unit,
  ).sheets.flatMap((group) => group.stock.map(({ name }) => name));

/** Common practice: a sheet measures up to 1/32 in (0.8 mm) less than its name. */
describe("matchStock(parts, stock) finds the stock of a part's thickness, exactly", () => {
  test.each([
    ["23/32", ["3/4"], "in"],
    ["18", ["18.8"], "mm"],
  ] as const)("%s may be cut from %s, in %s", (thickness, stock, unit) =>
    expect(match(thickness, stock, unit)).toEqual(["row 2"]),
  );

  test.each([
    ["23/32", ["3000001/4000000"], "in"],
    ["18", ["18.8000001"], "mm"],
  ] as const)("%s may not be cut from %s, in %s", (thickness, stock, unit) =>
    expect(() => match(thickness, stock, unit)).toThrow("sheets.noStockFor"),
  );

  test("the nearest is taken, and all that are equally near", () => {
    expect(match("1/2", ["17/32", "33/64", "31/64"], "in")).toEqual(["row 3", "row 4"]);
  });
});
