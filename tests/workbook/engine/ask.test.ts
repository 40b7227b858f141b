import { expect, test } from "vitest";
import { CellError, cellKey, createEngine, type Book, type Scalar } from "../../../src/workbook/engine/index";

/** A sheet with 1, 2, 3 in column A and their doubles spilled into column B. */
function book(): Book {
  const own = { top: 0, left: 1, bottom: 0, right: 1 };
  const formula = { text: "A1:A3*2", rowShift: 0, columnShift: 0, kind: "dynamic" as const, area: own };
  const cells = new Map([1, 2, 3].map((value, row) => [cellKey(row, 0), { row, column: 0, value: value as Scalar }]));
  cells.set(cellKey(0, 1), { row: 0, column: 1, value: null, formula } as never);
  const sheet = { name: "Job", cells, merged: [], hiddenRows: new Set<number>(), filters: [] };
  return { sheets: [sheet], names: [], tables: [], date1904: false };
}

const ask = (formula: string, row = 0, column = 0): Scalar =>
  createEngine({ functions: { F: () => 1 } })
    .calculate(book())
    .ask({ formula, sheet: 0, row, column, rowShift: row, columnShift: column });

test.each([
  ["A1+B1", 0, 0, 3],
  ["A1+B1", 2, 0, 9],
  ["$A$1+B1", 2, 0, 7],
  ["A1", 1, 1, 4],
  ["SUM(A1:B$3)", 1, 0, 15],
  ['COUNTIF($B$1:$B$3,">"&B1)', 1, 0, 1],
])("ask: %s, from %i down and %i to the right, is %j", (formula, row, column, expected) => {
  expect(ask(formula, row, column)).toBe(expected);
});

test("ask: what cannot be read, is not known or is ours gives an error", () => {
  const codes = ["1+", "NOSUCH(1)", "_xldudf_DRAWER_F(1)", "1/0"].map((formula) => (ask(formula) as CellError).code);
  expect(codes).toEqual(["#NAME?", "#NAME?", "#NAME?", "#DIV/0!"]);
});

test("ask: what no formula reads is other once it has changed", () => {
  const given = book();
  given.sheets[0]!.cells.set(cellKey(8, 3), { row: 8, column: 3, value: 5 });
  const followed = createEngine({ functions: {} }).follow(given);
  const question = { formula: "D9+SUM(D8:D9)", sheet: 0, row: 0, column: 5, rowShift: 0, columnShift: 0 };
  expect(followed.calculate().ask(question)).toBe(10);
  given.sheets[0]!.cells.set(cellKey(8, 3), { row: 8, column: 3, value: 7 });
  expect(followed.update([{ sheet: 0, row: 8, column: 3 }]).ask(question)).toBe(14);
});
