import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { ratio, type Fault } from "../../../src/core/length";
import { solve, type Part, type Problem, type Stock } from "../../../src/core/sheets";

const top = (more: Partial<Part> = {}): Part => ({
  name: "Top",
  drawer: "A1",
  quantity: 1,
  length: ratio(40),
  width: ratio(20),
  grain: "length",
  ...more,
});
const sheet = (more: Partial<Stock> = {}): Stock => ({ name: "sheet", length: ratio(96), width: ratio(48), ...more });
const asked = (parts: Part[], stock: Stock[] = [sheet()], more: Partial<Problem> = {}): Problem => ({
  parts,
  stock,
  kerf: ratio(1, 8),
  trim: ratio(0),
  ...more,
});
const tall = top({ length: ratio(20), width: ratio(60) });
const group = [1, 2, 3].map((n) => top({ name: `F${n}`, grainGroup: "A" }));

const at = (left: number) => ({ sheet: 3, fromLeft: ratio(left), fromBottom: ratio(0), turned: false });

const CASES: [string, string, Problem, Record<string, unknown>][] = [
  ["no stock", "sheets.noStock", asked([top()], []), {}],
  [
    "a part larger than every sheet, the way its grain lets it lie",
    "sheets.partTooLarge",
    asked([top(), tall], [sheet(), sheet({ name: "other" })]),
    { part: "Top", drawer: "A1", length: ratio(20), width: ratio(60), grain: "length", stock: ["sheet", "other"] },
  ],
  [
    "a part larger than the one row of stock that it may be cut from",
    "sheets.partTooLarge",
    asked([top({ from: [1] })], [sheet(), sheet({ name: "small", length: ratio(24) })]),
    { part: "Top", stock: ["small"] },
  ],
  [
    // 3 × 40 in and two kerfs are more than 96 in.
    "a grain group whose row is longer than every sheet",
    "sheets.groupTooLarge",
    asked(group),
    { part: "F1", group: "A", count: 3, stock: ["sheet"] },
  ],
  [
    "a part that fits only stock of which none is available",
    "sheets.noneAvailable",
    asked([top()], [sheet({ available: 0 })]),
    { part: "Top", drawer: "A1" },
  ],
  [
    "more parts than the sheets available hold",
    "sheets.stockExhausted",
    asked([top({ quantity: 5 })], [sheet({ available: 1 })]),
    { parts: ["Top"] },
  ],
  [
    "a price missing beside others, of stock without limit",
    "sheets.priceMissing",
    asked([top()], [sheet({ price: ratio(60) }), sheet({ name: "bare" })]),
    { stock: "bare" },
  ],
  [
    "a price below 0",
    "sheets.priceNegative",
    asked([top()], [sheet({ price: ratio(-1) })]),
    { stock: "sheet", received: ratio(-1) },
  ],
  [
    "a kerf below 0",
    "length.negative",
    asked([top()], [sheet()], { kerf: ratio(-1, 8) }),
    { argument: "kerf", received: ratio(-1, 8) },
  ],
  ["a trim below 0", "length.negative", asked([top()], [sheet()], { trim: ratio(-1) }), { argument: "trim" }],
  [
    "a quantity that is not whole",
    "sheets.quantityNotWhole",
    asked([top({ quantity: 1.5 })]),
    { part: "Top", drawer: "A1", received: 1.5 },
  ],
  ["a quantity below 0", "sheets.quantityNotWhole", asked([top({ quantity: -1 })]), { part: "Top", received: -1 }],
  [
    "an available number that is not whole",
    "sheets.availableNotWhole",
    asked([top()], [sheet({ available: 0.5 })]),
    { stock: "sheet", received: 0.5 },
  ],
  [
    "a part without size",
    "length.notPositive",
    asked([top({ width: ratio(0) })]),
    { argument: "Top, width", received: ratio(0) },
  ],
  [
    "a sheet without size",
    "length.notPositive",
    asked([top()], [sheet({ length: ratio(-96) })]),
    { argument: "sheet, length", received: ratio(-96) },
  ],
  [
    "sizes without a common measure that is coarse enough",
    "sheets.tooFine",
    asked([top({ length: ratio(1, 999_983) })], [sheet({ length: ratio(96_000_001, 1_000_003) })]),
    {},
  ],
  [
    "prices without a common measure that is coarse enough",
    "sheets.tooFine",
    asked([top()], [sheet({ price: ratio(1, 999_983) }), sheet({ price: ratio(10_000_000_000_001, 1_000_003) })]),
    {},
  ],
  [
    // 6 712 345.67 in cents, times the square of 10 001, is more than 2 ** 53.
    "prices that are too fine for so many parts",
    "sheets.tooFine",
    asked([top({ quantity: 10_000 })], [sheet({ price: ratio(671_234_567, 100) }), sheet({ price: ratio(1) })]),
    {},
  ],
  [
    "parts that only a size of which there are too few takes, though of a smaller one there is no end",
    "sheets.stockExhausted",
    asked([top({ quantity: 5 })], [sheet({ available: 1 }), sheet({ name: "small", length: ratio(24) })]),
    { parts: ["Top"] },
  ],
  [
    "a place that reaches beyond the sheet",
    "sheets.outside",
    asked([top({ lies: at(57) })]),
    { sheet: 3, part: "Top", drawer: "A1", index: 0 },
  ],
  [
    "places that overlap",
    "sheets.notCuttable",
    asked([top({ lies: at(0) }), top({ name: "Lid", lies: at(39) })]),
    { sheet: 3, parts: ["Top", "Lid"] },
  ],
];

describe("solve(problem, effort) refuses", () => {
  test.each(CASES)("%s, as %s", (_, code, problem, data) => {
    expect(() => solve(problem, "quick")).toThrow(
      expect.objectContaining({ code, data: expect.objectContaining(data) }) as Fault,
    );
  });

  test("stock that has the area and not the room, after trying harder", () => {
    // 50 + 50 > 96 and 30 + 30 > 48: no two lie on one sheet, though all have less area than it.
    const two = top({ quantity: 2, length: ratio(50), width: ratio(30) });
    const asks = (available: number): Problem => asked([two], [sheet({ available })]);
    for (const effort of ["quick", "standard", "thorough"] as const) {
      expect(() => solve(asks(1), effort)).toThrow(expect.objectContaining({ code: "sheets.stockExhausted" }) as Fault);
      expect(solve(asks(2), effort).sheets).toHaveLength(2);
    }
  });

  test("nothing without a case here: every fault of the folder has one", () => {
    const folder = new URL("../../../src/core/sheets/", import.meta.url);
    const source = readdirSync(folder, { recursive: true, encoding: "utf8" })
      // Faults of matching have their cases in match.test.ts.
      .filter((file) => file.endsWith(".ts") && file !== "match.ts")
      .map((file) => readFileSync(new URL(file, folder), "utf8"))
      .join("\n");
    const thrown = [...source.matchAll(/new Fault\("([\w.]+)"/g)].map(([, code]) => code);
    expect(new Set(CASES.map(([, code]) => code))).toEqual(new Set(thrown));
  });
});

describe("solve(problem, effort) takes", () => {
  test("no parts, or parts of which none is wanted: no sheet is cut", () => {
    expect(solve(asked([]), "quick").sheets).toEqual([]);
    expect(solve(asked([top({ quantity: 0 })], []), "quick").sheets).toEqual([]);
  });

  test("a row without a price beside others where its number is limited: an offcut, free", () => {
    const stock = [sheet({ price: ratio(60) }), sheet({ name: "offcut", length: ratio(40), available: 1 })];
    expect(solve(asked([top()], stock), "quick").sheets.map((cut) => cut.stock)).toEqual([1]);
  });

  test("just as many sheets as are available", () => {
    // Two columns and two rows of 40 × 20: 40 + 1/8 + 40 ≤ 96 and 20 + 1/8 + 20 ≤ 48.
    const four = asked([top({ quantity: 4 })], [sheet({ available: 1 })]);
    expect(solve(four, "quick").sheets).toHaveLength(1);
  });
});
