import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellKey, createEngine, type Cell, type Outcome } from "../../../src/workbook/engine";
import { cellName, parseCell } from "../../../src/workbook/address";
import { bookOf, results, sheetOf, value, type Given } from "../support/sheet";

describe("thousands of formulas over one long range", () => {
  const LENGTH = 20_000;
  const RANGE = `A$1:A$${LENGTH}`;
  /** The whole numbers from 1 on, in another order, and what the functions give of them. */
  const numbers = Array.from({ length: LENGTH }, (_, i) => ((i * 7_919) % LENGTH) + 1);
  const KNOWN: Record<string, (row: number) => number> = {
    [`SUM(${RANGE})`]: () => 200_010_000,
    [`AVERAGE(${RANGE})`]: () => 10_000.5,
    [`MIN(${RANGE})`]: () => 1,
    [`MAX(${RANGE})`]: () => LENGTH,
    [`COUNT(${RANGE})`]: () => LENGTH,
    [`COUNTA(${RANGE})`]: () => LENGTH,
    [`COUNTBLANK(${RANGE})`]: () => 0,
    [`MEDIAN(${RANGE})`]: () => 10_000.5,
    // Of 1 to n the squares' sum about the mean is n(n²-1)/12.
    [`DEVSQ(${RANGE})`]: () => 666_666_665_000,
    [`LARGE(${RANGE},ROW())`]: (row) => LENGTH + 1 - row,
    [`SMALL(${RANGE},ROW())`]: (row) => row,
    [`QUARTILE(${RANGE},1)`]: () => 5_000.75,
  };

  it.each(Object.keys(KNOWN))("=%s", (formula) => {
    const given: Given = {};
    numbers.forEach((number, i) => {
      given[`A${i + 1}`] = number;
      given[`B${i + 1}`] = `=${formula}`;
    });
    const found = results(bookOf(given));
    for (let row = 1; row <= LENGTH; row++)
      if (found[`B${row}`] !== KNOWN[formula]!(row))
        expect([row, found[`B${row}`]]).toEqual([row, KNOWN[formula]!(row)]);
  });
});

describe("arrays of hundreds of thousands of cells", () => {
  it.each<[string, unknown]>([
    ["ROWS(FILTER(SEQUENCE(100000,2),SEQUENCE(100000)>40000))", 60_000],
    ["SUM(FILTER(SEQUENCE(100000,2),SEQUENCE(100000)<=2))", 10],
    ["SUM(TAKE(SEQUENCE(300000),-1))", 300_000],
    ["SUM(TOCOL(TRANSPOSE(SEQUENCE(150000,2))))", 45_000_150_000],
    ["ROWS(VSTACK(SEQUENCE(150000),SEQUENCE(150000)))", 300_000],
    ["MEDIAN(SEQUENCE(300001))", 150_001],
    ["STDEV.P(SEQUENCE(300000,1,1,0))", 0],
  ])("=%s", (formula, expected) => {
    expect(value(`{=${formula}`)).toBe(expected);
  });
});

/** Each several times, for what is asked for once has nothing remembered. */
const READERS = ["SUM(A$1:A$300)", "COUNTA(A:A)", "LARGE(A$1:A$300,2)", "OR(A1:A300)", "SUM(A:A)+COUNT(A$1:A$300)"];
const content = fc.constantFrom<Given[string]>(
  ...[null, 1, 2.5, "oak", true, "=C1+1", "=C1", "=1/0", "{=SEQUENCE(3)", "=D1", "=SUM(A$1:A$300)", "=NA()"],
);
const edit = fc.record({
  address: fc.oneof(
    fc.integer({ min: 1, max: 340 }).map((row) => `A${row}`),
    fc.constantFrom("A1", "A2", "A3", "C1"),
  ),
  content,
});

it("what is remembered of a long range is other once one of its cells is", () => {
  const engine = createEngine({ functions: {} });
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 12 }), (edits) => {
      const given: Given = { A1: 1, A2: 2, A7: 3, A300: 4, C1: 5 };
      READERS.forEach((formula, column) => {
        for (let row = 1; row <= 4; row++) given[cellName(row, 3 + column)] = `=${formula}`;
      });
      const book = bookOf(given);
      const followed = engine.follow(book);
      followed.calculate();
      for (const { address, content } of edits) {
        const { row, column } = parseCell(address)!;
        const cell = sheetOf("", { [address]: content }).cells.get(cellKey(row, column)) as Cell;
        if (content === null) book.sheets[0]!.cells.delete(cellKey(row, column));
        else book.sheets[0]!.cells.set(cellKey(row, column), cell);
        expect(shown(followed.update([{ sheet: 0, row, column }]))).toEqual(shown(engine.calculate(book)));
      }
    }),
    { numRuns: 60 },
  );
});

function shown({ results, kept }: Outcome): Record<string, unknown> {
  const all: Record<string, unknown> = {};
  for (const { row, column, values, area } of results) all[cellName(row, column)] = { values, area };
  for (const { row, column, reason } of kept) all[cellName(row, column)] = reason;
  return all;
}
