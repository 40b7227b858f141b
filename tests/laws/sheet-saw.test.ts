import { describe, expect, test } from "vitest";
import { listed, sawn } from "./sheet-saw";

describe("sawn(rows, kerf, trim), which laws of sheets rely on", () => {
  const rows = [
    [1, "rip", 20, "sheet 96 × 48", "piece B 96 × 20; rest of the sheet 96 × 27 7/8"],
    [2, "crosscut", 40, "piece B 96 × 20", "Part 1 40 × 20; offcut 55 7/8 × 20. Caution: as the saw's manual says."],
  ];
  const changed = (row: number, cell: number, to: unknown): unknown[][] =>
    rows.map((each, r) => (r === row ? each.map((value, c) => (c === cell ? to : value)) : each));

  test("ends with what was not cut again", () => {
    expect(listed(sawn(rows, 1 / 8, 0).boards)).toEqual(
      listed([
        { label: "Part 1", length: 40, width: 20 },
        { label: "offcut", length: 55.875, width: 20 },
        { label: "rest of the sheet", length: 96, width: 27.875 },
      ]),
    );
  });

  test.each<[string, unknown[][], number, number]>([
    ["a kerf that is not what the rows count with", rows, 1 / 4, 0],
    ["a trim of which the rows know nothing", rows, 1 / 8, 1 / 2],
    ["a setting that gives other sizes", changed(0, 2, 21), 1 / 8, 0],
    ["a piece that is not there", changed(1, 3, "piece C 96 × 20"), 1 / 8, 0],
    ["a piece of another size", changed(1, 3, "piece B 95 × 20"), 1 / 8, 0],
    ["a rest that is not listed", changed(1, 4, "Part 1 40 × 20"), 1 / 8, 0],
    ["a cut of another kind", changed(0, 1, "crosscut"), 1 / 8, 0],
    ["a step left out", rows.slice(1), 1 / 8, 0],
  ])("cannot follow %s", (_, wrong, kerf, trim) => expect(() => sawn(wrong, kerf, trim)).toThrow());
});
