import { describe, expect, test } from "vitest";
import { ratio } from "../../../src/core/length";
import { offcuts, placements, stockUses } from "../../../src/core/sheets";
import { inches, workedAnswer } from "./worked";

const at = (sheet: number, x: string, y: string, length: string, width: string) => ({
  sheet,
  stock: sheet - 1,
  fromLeft: inches(x),
  fromBottom: inches(y),
  length: inches(length),
  width: inches(width),
});

describe("placements(solution)", () => {
  test("says where each part lies, from the sheet's lower left, as it lies there", () => {
    expect(placements(workedAnswer())).toEqual([
      { ...at(1, "0", "0", "40", "20"), part: 1, turned: false },
      { ...at(1, "40 1/8", "0", "30", "16"), part: 0, turned: false },
      { ...at(1, "0", "20 1/8", "40", "16"), part: 2, turned: true },
      { ...at(1, "40 1/8", "20 1/8", "30", "16"), part: 0, turned: false },
      { ...at(2, "0", "0", "40", "20"), part: 1, turned: false },
    ]);
  });
});

describe("offcuts(solution)", () => {
  test("lists all that is left and is no part, each once", () => {
    expect(offcuts(workedAnswer())).toEqual([
      at(1, "40 1/8", "16 1/8", "30", "3 7/8"),
      at(1, "70 1/4", "0", "25 3/4", "20"),
      at(1, "70 1/4", "20 1/8", "25 3/4", "16"),
      at(1, "0", "36 1/4", "96", "11 3/4"),
    ]);
  });
});

describe("stockUses(solution)", () => {
  test("counts sheets and parts of each row of stock that is used, its yield, cost and largest offcut", () => {
    // (40 × 20 + 2 × 30 × 16 + 40 × 16) / (96 × 48) = 2400 / 4608 = 25 / 48; of the offcuts 96 × 11 3/4 has most area.
    const { sheet: one, stock, ...largest } = at(1, "0", "36 1/4", "96", "11 3/4");
    expect(stockUses(workedAnswer())).toEqual([
      {
        stock: 0,
        sheets: 1,
        parts: 4,
        yield: ratio(25, 48),
        cost: ratio(60),
        largestOffcut: { sheet: one, stock, ...largest },
      },
      { stock: 1, sheets: 1, parts: 1, yield: ratio(1), cost: ratio(0) },
    ]);
  });

  test("costs nothing where nothing has a price", () => {
    const answer = workedAnswer();
    const stock = answer.problem.stock.map(({ price: _, ...row }) => row);
    expect(stockUses({ ...answer, problem: { ...answer.problem, stock } }).map(({ cost }) => cost)).toEqual([
      ratio(0),
      ratio(0),
    ]);
  });
});
