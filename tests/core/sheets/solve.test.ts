import { describe, expect, test } from "vitest";
import { ratio, type Fault } from "../../../src/core/length";
import {
  flaws,
  piecesOf,
  placements,
  solve,
  type Part,
  type Piece,
  type Problem,
  type Solution,
} from "../../../src/core/sheets";
import { leastSheets } from "./exhaustive";

const part = (name: string, length: number, width: number, more: Partial<Part> = {}): Part => ({
  name,
  quantity: 1,
  length: ratio(length, 16),
  width: ratio(width, 16),
  grain: "length",
  ...more,
});
const on = (parts: Part[], more: Partial<Problem> = {}): Problem => ({
  parts,
  stock: [{ name: "sheet", length: ratio(96), width: ratio(48) }],
  kerf: ratio(1, 8),
  trim: ratio(0),
  ...more,
});
const IN = 16;

describe("solve(problem, effort)", () => {
  test("a part as large as the trimmed sheet fits, a hair larger is refused by name", () => {
    const trim = ratio(1, 2);
    expect(solve(on([part("Top", 95 * IN, 47 * IN)], { trim }), "quick").sheets).toHaveLength(1);
    const refused = expect.objectContaining({
      code: "sheets.partTooLarge",
      data: expect.objectContaining({ part: "Top" }),
    }) as Fault;
    expect(() => solve(on([part("Top", 95 * IN + 1, 47 * IN)], { trim }), "quick")).toThrow(refused);
    expect(() => solve(on([part("Top", 95 * IN, 47 * IN + 1)], { trim }), "quick")).toThrow(refused);
  });

  test("parts of a grain group lie in one row, in their order", () => {
    const fronts = [5, 9, 7].map((height, i) => part(`F${i + 1}`, height * IN, 19 * IN, { grainGroup: "A" }));
    const row = placements(solve(on([part("Side", 22 * IN, 8 * IN, { quantity: 6 }), ...fronts]), "standard")).filter(
      ({ part: p }) => p > 0,
    );
    const inOrder = [...row].sort((a, b) => a.fromLeft.compare(b.fromLeft));
    expect(inOrder.map(({ part: p }) => p)).toEqual([1, 2, 3]);
    expect(new Set(row.map(({ sheet, fromBottom }) => `${sheet} ${fromBottom.toFraction()}`)).size).toBe(1);
  });

  test("equal parts in numbers are all cut", () => {
    const solution = solve(on([part("Side", 22 * IN, 7.5 * IN, { quantity: 40 })]), "standard");
    expect(placements(solution)).toHaveLength(40);
    expect(flaws(solution)).toEqual([]);
  });
});

describe("flaws(solution)", () => {
  const good = (): Solution =>
    structuredCloneOf(
      solve(
        on([
          part("Side", 22 * IN, 7.5 * IN, { quantity: 9 }),
          part("End", 16 * IN, 7 * IN, { quantity: 9, grain: "any" }),
        ]),
        "quick",
      ),
    );
  const firstPart = (solution: Solution): Piece =>
    [...piecesOf(solution.sheets[0]!.piece)].find((piece) => piece.part)!;

  test("finds nothing in an answer that can be cut", () => expect(flaws(good())).toEqual([]));

  test.each<[string, (solution: Solution) => void]>([
    ["a part that is larger than it should be", (solution) => (firstPart(solution).length += 1)],
    ["a part that was moved", (solution) => (firstPart(solution).x += 3)],
    ["a part turned against its grain", (solution) => (firstPart(solution).part = { index: 0, turned: true })],
    [
      "a part that is another",
      (solution) =>
        (firstPart(solution).part = { index: firstPart(solution).part!.index === 0 ? 1 : 0, turned: false }),
    ],
    ["a part that is missing", (solution) => delete firstPart(solution).part],
    ["a sheet that is not the stock's", (solution) => (solution.sheets[0]!.piece.length += 1)],
    ["a sheet of no stock", (solution) => (solution.sheets[0]!.stock = 7)],
    ["a sheet cut twice", (solution) => (solution.sheets as unknown[]).push(solution.sheets[0])],
    [
      "more sheets than are available",
      (solution) => ((solution.problem.stock[0] as { available?: number }).available = 0),
    ],
  ])("finds %s", (_, spoil) => {
    const solution = good();
    spoil(solution);
    expect(flaws(solution)).not.toEqual([]);
  });
});

/** A copy that may be spoilt; exact numbers are never changed, and stay as they are. */
function structuredCloneOf(solution: Solution): Solution {
  const copy = (piece: Piece): Piece => ({
    ...piece,
    ...(piece.part ? { part: { ...piece.part } } : {}),
    ...(piece.cut ? { cut: { ...piece.cut, into: piece.cut.into.map(copy) } } : {}),
  });
  return {
    ...solution,
    problem: { ...solution.problem, stock: solution.problem.stock.map((row) => ({ ...row })) },
    sheets: solution.sheets.map((sheet) => ({ ...sheet, piece: copy(sheet.piece) })),
  };
}

test("the plain solver knows the least sheets of cases worked by hand", () => {
  const square = { length: 4, width: 4, turns: false };
  expect(leastSheets([square, square, square, square], 8, 8, 0)).toBe(1);
  expect(leastSheets([square, square, square, square], 8, 8, 1)).toBe(4);
  // Four 3 × 2 pieces round a middle of 1 × 1 lie in 5 × 5, but no edge-to-edge cut parts them.
  const pinwheel = { length: 3, width: 2, turns: true };
  expect(leastSheets([pinwheel, pinwheel, pinwheel, pinwheel], 5, 5, 0)).toBe(2);
});
