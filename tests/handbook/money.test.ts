import { describe, expect, test } from "vitest";
import { PRICE, QUOTE, SHEETS } from "../../src/functions";
import { amountOf, FREE, ONE_DRAWER, rates, sheetsAt } from "../functions/money";
import { origin, reference } from "./reference";

/** One drawer takes one sheet, so that the sheet's price is the cost. */
const quote = (cost: number, more: Record<string, unknown>) =>
  QUOTE(ONE_DRAWER, [], sheetsAt(cost), rates({ ...FREE, ...more }));

describe(`margin and markup (${origin("margin.markup")})`, () => {
  const examples = Object.entries(reference("margin.markup").examples as Record<string, number>);

  test("the table has an example of each", () => {
    expect(examples.map(([words]) => /markup|margin/.exec(words)![0]).sort()).toEqual(["margin", "markup"]);
  });

  test.each(examples)("%s: the price is %s", (words, price) => {
    const [, cost, by, percent] = /^cost (\d+), (markup|margin) (\d+) %$/.exec(words)!;
    const made = quote(Number(cost), { [by!]: Number(percent) });
    expect(amountOf(made, "Price")).toBe(price);
    expect(amountOf(made, by === "markup" ? "Markup" : "Margin")).toBe(Number((price - Number(cost)).toFixed(2)));
  });

  test("the formula's two forms give one price: markup 50 % is margin 33 1/3 %", () => {
    expect(reference("margin.markup").formula).toContain("cost (1 + markup) = cost / (1 − margin)");
    expect(amountOf(quote(100, { margin: 100 / 3 }), "Price")).toBe(amountOf(quote(100, { markup: 50 }), "Price"));
  });
});

describe(`tax (${origin("tax.rounding")})`, () => {
  const examples = reference("tax.rounding").examples as unknown as [number, number, number][];

  test.each(examples)("on %s at %s %: %s", (price, percent, tax) => {
    expect(amountOf(quote(price, { tax: percent }), "Tax")).toBe(tax);
  });

  test("a third decimal of 4 goes down, whatever follows it, and of 5 up", () => {
    expect(reference("tax.rounding").rule).toMatch(/third decimal, up where it is above 4/);
    expect(
      [0.0448, 0.045, 0.0449999, 0.055].map((rate) => amountOf(quote(1, { tax: `${rate * 100} %` }), "Tax")),
    ).toEqual([0.04, 0.05, 0.04, 0.06]);
  });
});

describe(`board feet (${origin("units")})`, () => {
  test("a board foot is 144 cubic inches, in either unit", () => {
    const [, cubic] = /^(\d+) in³$/.exec((reference("units").values as Record<string, string>)["board foot"]!)!;
    const parts = [["Length", "Width", "Thickness", "Qty"]];
    const boards = [
      ["Length", "Width", "Sold by"],
      ["", "", "board foot"],
    ];
    const feet = (row: unknown[], unit?: string) =>
      SHEETS([...parts, row], boards, "none", 0, "quick" as never, unit as never)[1]![3];
    expect(feet([Number(cubic), 1, 1, 1])).toBe(1);
    expect(feet([12, 12, 1, 3])).toBe(3);
    expect(feet([304.8, 304.8, 25.4, 1], "mm")).toBe(1);
  });
});

test("PRICE gives the price that QUOTE writes with its tax", () => {
  expect(PRICE(ONE_DRAWER, [], sheetsAt(40), rates({ ...FREE, margin: 40, tax: 7 }))).toBe(71.34);
});
