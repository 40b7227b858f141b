import fc from "fast-check";
import { expect, it } from "vitest";
import { areaName, cellName, columnLetters, columnNumber, parseCell } from "../../../src/workbook/address";
import { shiftedArea } from "../../../src/workbook/engine/references";
import { parseFormula } from "../../../src/workbook/formula/parse";

const place = fc.record({
  row: fc.nat(5000),
  column: fc.nat(700),
  rowAbsolute: fc.boolean(),
  columnAbsolute: fc.boolean(),
});

it("a shared formula's reference, shifted, is the reference that would be written there", () => {
  fc.assert(
    fc.property(place, fc.nat(900), fc.nat(90), (at, down, across) => {
      const written = (row: number, column: number) =>
        `${at.columnAbsolute ? "$" : ""}${columnLetters(column)}${at.rowAbsolute ? "$" : ""}${row + 1}`;
      const first = parseFormula(written(at.row, at.column));
      const there = written(at.row + (at.rowAbsolute ? 0 : down), at.column + (at.columnAbsolute ? 0 : across));
      if (first.kind !== "reference") throw new Error("a reference is read as one");
      const area = shiftedArea(first.from, first.to, { rowShift: down, columnShift: across });
      expect(areaName(area)).toBe(there.replaceAll("$", ""));
    }),
  );
});

it("a reference shifted over the grid's edge comes in on the other side", () => {
  const node = parseFormula("B2");
  if (node.kind !== "reference") throw new Error("a reference is read as one");
  expect(areaName(shiftedArea(node.from, node.to, { rowShift: -2, columnShift: -2 }))).toBe("XFD1048576");
});

it("column letters and numbers are each other's inverse, and so are addresses", () => {
  fc.assert(
    fc.property(fc.nat(16_383), fc.nat(1_048_575), (column, row) => {
      expect(columnNumber(columnLetters(column))).toBe(column);
      expect(parseCell(cellName(row, column))).toEqual({ row, column });
    }),
  );
});
