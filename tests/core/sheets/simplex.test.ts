import { describe, expect, test } from "vitest";
import { Simplex } from "../../../src/core/sheets/algorithms/simplex";

/** Two pieces: 10 of the first, of which a sheet holds 2; 9 of the second, of which it holds 3. A sheet costs 1. */
const begun = (): Simplex => new Simplex([2, 3], [10, 9], [1, 1]);
const cost = ({ basis, amounts }: Simplex): number =>
  basis.reduce((sum, column, b) => sum + (column < 0 ? 0 : amounts[b]!), 0);

describe("a linear program by columns", () => {
  test("begins with each piece on sheets of its own, priced by how many a sheet holds", () => {
    const program = begun();
    expect(cost(program)).toBe(5 + 3);
    expect([...program.prices()]).toEqual([1 / 2, 1 / 3].map((price) => expect.closeTo(price, 12) as number));
  });

  test("a sheet of one and two takes the place of what it first uses up", () => {
    // Worth 1/2 + 2/3. Of 4 1/2 such sheets come all 9; of the first, 10 - 4 1/2 are left, on half as many sheets.
    const program = begun();
    expect(program.enter(2, [1, 2], 1)).toBe(true);
    expect(program.basis).toEqual([0, 2]);
    expect([...program.amounts]).toEqual([2.75, 4.5]);
    expect([...program.prices()]).toEqual([0.5, 0.25]);
  });

  test("a column that uses nothing up does not enter, and changes nothing", () => {
    const program = begun();
    expect(program.enter(-1, [-1, 0], 0)).toBe(false);
    expect([program.basis, [...program.amounts]]).toEqual([
      [0, 1],
      [5, 3],
    ]);
  });
});
