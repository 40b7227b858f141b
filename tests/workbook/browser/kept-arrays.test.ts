import { beforeEach, expect, test } from "vitest";
import type { Content } from "../../../src/workbook/edit/index";
import { apply } from "../../../src/workbook/browser/worker/difference";
import { Bookkeeper } from "../../../src/workbook/browser/worker/bookkeeper";
import { valueAt, type Results } from "../../../src/workbook/browser/worker/results";
import { oneSheet } from "../support/handmade";

/** D1:D3 doubles A1:A3, as an older array formula; the file holds values that nobody would work out. */
const SHEET =
  '<row r="1"><c r="A1"><v>1</v></c><c r="D1"><f t="array" ref="D1:D3">A1:A3*2</f><v>70</v></c></row>' +
  '<row r="2"><c r="A2"><v>3</v></c><c r="D2"><v>71</v></c></row>' +
  '<row r="3"><c r="A3"><v>10</v></c><c r="D3"><v>72</v></c></row>';
/** The circle that makes it one that is not worked out. */
const CIRCLE = { formula: "=D2" };

let keeper: Bookkeeper;
let results: Results;
beforeEach(() => begin([]));

function begin(edits: [string, Content][]): void {
  keeper = new Bookkeeper();
  const opened = keeper.answer("open", {
    bytes: oneSheet(SHEET),
    edits: edits.map(([cell, content]) => ({ ...at(cell), content })),
  });
  results = structuredClone(opened.results);
}

const at = (cell: string) => ({ sheet: "sheet-0", row: Number(cell[1]) - 1, column: cell.charCodeAt(0) - 65 });

function put(cell: string, content: Content): void {
  apply(results, keeper.answer("put", { edits: [{ ...at(cell), content }] }).difference);
}

const inD = () => [0, 1, 2].map((row) => valueAt(results, "sheet-0", row, 3));
const contents = () => keeper.answer("contents", { cells: ["D2", "D3"].map(at) });

test("an array formula that is no longer worked out shows all that the file has for it, and is worked out again after", () => {
  expect(inD()).toEqual([2, 6, 20]);
  put("A1", CIRCLE);
  expect(inD()).toEqual([70, 71, 72]);
  expect(contents()).toEqual([null, null]);
  put("A1", 4);
  expect(inD()).toEqual([8, 6, 20]);
});

test("where it is not worked out from the beginning, what it fills is its own, and no content of those cells", () => {
  begin([["A1", CIRCLE]]);
  expect(inD()).toEqual([70, 71, 72]);
  expect(contents()).toEqual([null, null]);
  put("A1", 4);
  expect(inD()).toEqual([8, 6, 20]);
});

test("to delete what it fills changes nothing, and what is typed there stands there until it is deleted", () => {
  put("A1", { formula: "=D1" });
  put("D2", null);
  put("D3", 9);
  expect(contents()).toEqual([null, 9]);
  expect(inD().slice(0, 2)).toEqual([70, 71]);
  put("D3", null);
  expect(inD()).toEqual([70, 71, 72]);
  const saved = new Bookkeeper().answer("open", { bytes: keeper.answer("save", {}), edits: [] });
  expect([0, 1, 2].map((row) => valueAt(saved.results, "sheet-0", row, 3))).toEqual([70, 71, 72]);
});
