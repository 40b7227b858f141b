import { describe, expect, test } from "vitest";
import { PRICE, QUOTE } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { PARTS_BENCH } from "../worked/plans";
import { FREE, ONE_DRAWER, rates, sheetsAt, totalOf } from "./money";

const { openings, standards } = PARTS_BENCH;
const STOCK = [
  ["Thickness", "Length", "Width", "Price"],
  ["1/4", 96, 48, 32],
  ["1/2", 96, 48, 58],
  ["3/4", 96, 48, 84],
];
const RATES = rates({
  "labor rate": 65,
  "box minutes": 45,
  "slide price": 18.4,
  "pull price": 6.25,
  "screw price": 0.06,
  margin: 30,
  tax: 7,
});
const price = (drawers?: unknown, table = openings) => PRICE(table, standards, STOCK, RATES, drawers);

/** The bench with another division of every opening. */
const divided = (drawers: unknown) =>
  openings.map((row, i) => (i === 0 ? row : row.map((v, c) => (c === 4 ? drawers : v))));

describe("PRICE(openings, standards, stock, rates, [drawers])", () => {
  test("is the total of the quote", () => {
    expect(price()).toBe(totalOf(QUOTE(openings, standards, STOCK, RATES)));
    expect(price()).toBeGreaterThan(1000);
  });

  test.each([[1], [2], ["3"], ["5 1/2; 1 part"], ["1 part; 2 parts"]])(
    "drawers %s replace those of every opening",
    (drawers) => {
      expect(price(drawers)).toBe(price(undefined, divided(drawers)));
    },
  );

  test("blank drawers leave the openings their own", () => {
    expect([price(""), price(null), price([[""]])]).toEqual([price(), price(), price()]);
  });

  test("drawers of the openings are not read where others are given", () => {
    expect(price(2, divided("many"))).toBe(price(2));
    expect(price(2, divided(""))).toBe(price(2));
  });

  test("openings need no column of drawers where others are given", () => {
    expect(
      price(
        2,
        openings.map((row) => row.filter((_, c) => c !== 4)),
      ),
    ).toBe(price(2));
    expectValueError(
      () =>
        price(
          "",
          openings.map((row) => row.filter((_, c) => c !== 4)),
        ),
      "openings lacks the heading Drawers.",
    );
  });

  test("a grid over counts and widths is dearer with every drawer", () => {
    const one = (count: number) => PRICE([ONE_DRAWER[0]!, [24, 26, 23.25, 1]], [], sheetsAt(40), RATES, count);
    const prices = [1, 2, 3, 4, 5].map(one);
    expect(prices).toEqual([...prices].sort((a, b) => (a as number) - (b as number)));
    expect(new Set(prices).size).toBe(5);
  });

  test("no openings cost nothing", () => {
    expect(PRICE([ONE_DRAWER[0]!], [], sheetsAt(40), rates({ ...FREE, "extra delivery": 60 }), 3)).toBe(0);
  });

  test.each<[string, unknown, string]>([
    ["a range", [[1, 2]], "drawers is a range of 1 × 2 cells. It takes one cell."],
    [
      "no drawers",
      "0",
      'drawers is 0. A lone whole number is a count of fronts, from 1 to 100; one front of a fixed height has its mark, as 3" or 80 mm.',
    ],
    [
      "a word",
      "some",
      'drawers, item 1 is "some". It can be a length, as 5 1/2, or parts of what is left, as 2 parts; a count stands alone.',
    ],
  ])("%s is refused", (_, drawers, message) => expectValueError(() => price(drawers), message));

  test("a fault of rates comes before one of drawers, which stand to their right", () => {
    const wrong = () => PRICE(openings, standards, STOCK, rates({ tax: "much" }), "some");
    expectValueError(wrong, 'rates, tax is "much". It must be a plain number, such as 12.5.');
  });

  test("one opening that cannot be planned fails the whole, and is named", () => {
    expect(shown(() => price(60))).toMatch(/^#VALUE! Opening A: /);
  });
});
