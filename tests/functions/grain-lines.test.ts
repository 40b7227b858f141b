import { describe, expect, test } from "vitest";
import { CUTS, LAYOUT, SHEETS } from "../../src/functions";
import { records } from "../laws/jobs";
import { shown } from "../cell";

const HEADINGS = ["Part", "Length", "Width", "Qty", "Grain", "Grain group", "Grain gap", "Grain line", "Line gap"];
const part = (name: string, length: number, width: number, line: unknown, qty = 1) => [
  name,
  length,
  width,
  qty,
  "length",
  "P",
  0.25,
  line,
  0.375,
];
const sheet = (length: unknown, width: unknown, grain = "") => [
  ["Length", "Width", "Grain", "Price"],
  [length, width, grain, 40],
];
const places = (parts: unknown[][], stock: unknown[][]) =>
  records(LAYOUT(parts, stock, "1/8", 0, "quick" as never)).map((row) => [
    row["Part"],
    row["From left"],
    row["From bottom"],
    row["Turned"],
  ]);

/**
 * Worked by hand. Two lines of two: 10 and 6 long with 1/4 between them, 16 1/4; the lines 8 and 12 wide with 3/8 between
 * them, 20 3/8. Common practice: grain that runs on both ways is that of one panel, and what lies between two finished
 * fronts is cut away.
 */
const PANEL = [HEADINGS, part("A1", 10, 8, ""), part("A2", 6, 8, 1), part("B1", 10, 12, 2), part("B2", 6, 12, 2)];

describe("parts of a grain group in several lines", () => {
  test("are one panel: each line along the sheet in table order, the next line a line gap above it", () => {
    expect(places(PANEL, sheet(16.25, 20.375))).toEqual([
      ["A1", 0, 0, false],
      ["A2", 10.25, 0, false],
      ["B1", 0, 8.375, false],
      ["B2", 10.25, 8.375, false],
    ]);
  });

  test("come in the order of their numbers, wherever they stand in the table", () => {
    const mixed = [HEADINGS, PANEL[3]!, PANEL[1]!, PANEL[4]!, PANEL[2]!];
    expect(new Set(places(mixed, sheet(16.25, 20.375)))).toEqual(new Set(places(PANEL, sheet(16.25, 20.375))));
  });

  test("are ripped line by line, and each line is crosscut in order; what lies between comes off as well", () => {
    const cuts = records(CUTS(PANEL, sheet(16.25, 20.375), "1/8", 0, "quick" as never));
    expect(cuts.map((row) => [row["Cut"], row["Setting"], String(row["Gives"])])).toEqual([
      ["rip", 8, "piece B 16 1/4 × 8; rest of the sheet 16 1/4 × 12 1/4"],
      ["rip", 12, "piece C 16 1/4 × 12"],
      ["crosscut", 10, "A1 10 × 8; piece B 6 1/8 × 8"],
      ["crosscut", 10, "B1 10 × 12; piece C 6 1/8 × 12"],
      ["crosscut", 6, "A2 6 × 8"],
      ["crosscut", 6, "B2 6 × 12"],
    ]);
  });

  test.each([
    [sheet("16 15/64", 20.375)],
    [sheet(16.25, "20 23/64")],
    // Turned it would fit, but its grain would lie across.
    [sheet(20.375, 16.25)],
  ])("are refused where no sheet takes the panel", (stock) => {
    expect(shown(() => SHEETS(PANEL, stock, "1/8"))).toBe(
      '#N/A The parts of grain group "P" in one piece fit no sheet of their stock.',
    );
  });

  test("lie turned on stock without grain as a panel that is turned, never mirrored", () => {
    expect(places(PANEL, sheet(20.375, 16.25, "none"))).toEqual([
      ["B1", 0, 0, true],
      ["B2", 0, 10.25, true],
      ["A1", 12.375, 0, true],
      ["A2", 12.375, 10.25, true],
    ]);
  });

  test("stacked, lie across the sheet, and line after line from the left", () => {
    const stacked = PANEL.map((row, i) => [...row, i === 0 ? "Grain row" : "stacked"]);
    // As wide as they are ripped, 8 + 1/4 + 8 and 12 + 1/4 + 12; as long as the longest of each line.
    expect(places(stacked, sheet(20.375, 24.25))).toEqual([
      ["A1", 0, 0, false],
      ["A2", 0, 8.25, false],
      ["B1", 10.375, 0, false],
      ["B2", 10.375, 12.25, false],
    ]);
  });

  test("may be lines of unlike lengths: what they leave of the panel is left over", () => {
    const ragged = [HEADINGS, part("A1", 10, 8, 1), part("A2", 6, 5, 1), part("B", 12, 4, 2)];
    expect(places(ragged, sheet(16.25, 12.375))).toEqual([
      ["A1", 0, 0, false],
      ["A2", 10.25, 0, false],
      ["B", 0, 8.375, false],
    ]);
  });

  test("make as many panels as all their quantities have as a common divisor", () => {
    const twice = PANEL.map((row, i) => (i === 0 ? row : [...row.slice(0, 3), 2, ...row.slice(4)]));
    // Beside each other with the kerf between: 16 1/4 + 1/8 + 16 1/4.
    const laid = places(twice, sheet(32.625, 20.375));
    expect(laid.filter(([name]) => name === "A1").map(([, left, bottom]) => [left, bottom])).toEqual([
      [0, 0],
      [16.375, 0],
    ]);
    expect(records(SHEETS(twice, sheet(16.25, 20.375), "1/8"))[0]!["Sheets"]).toBe(2);
  });

  test("are told apart from the same parts in one line, and with another gap, by what is remembered", () => {
    const stock = sheet(60, 48);
    const withCell = (column: number, value: unknown) =>
      PANEL.map((row, i) => (i === 0 ? row : row.map((cell, c) => (c === column ? value : cell))));
    const asked = [PANEL, withCell(8, 0.5), withCell(7, 1)];
    const heights = asked.map((parts) => places(parts, stock).find(([name]) => name === "B1")![2]);
    expect(heights).toEqual([8.375, 8.5, 0]);
  });

  test("say where a cell cannot be read", () => {
    const wrong = PANEL.map((row, i) => (i === 1 ? part("A1", 10, 8, 1.5) : row));
    expect(shown(() => SHEETS(wrong, sheet(96, 48), "1/8"))).toMatch(/^#VALUE! parts, row 2, Grain line is 1\.5/);
  });
});
