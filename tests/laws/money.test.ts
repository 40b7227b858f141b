import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PRICE, QUOTE } from "../../src/functions";
import { RATE_NAMES } from "../../src/functions/tables/rates";
import { amountOf, lines, ONE_DRAWER, ownAmounts, rates, sum, totalOf } from "../functions/money";
import { openings, standards, type Table } from "./jobs";

const STOCK = [
  ["Thickness", "Length", "Width", "Price"],
  ["7/32", 96, 48, 31.5],
  ["15/32", 96, 48, 57.25],
  ["5/8", 96, 48, 66],
  ["3/4", 96, 48, 83.75],
];
const cents = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((n) => n / 100);
/** A number 0 is no price, for an empty cell may give it; the word is. */
const price = (most: number) => cents(most).map((amount) => amount || "none");
const percent = (most: number) => fc.integer({ min: 4, max: most * 4 }).map((n) => n / 4);

const values = fc.record({
  "labor rate": price(90),
  "box minutes": fc.integer({ min: 0, max: 90 }),
  "front minutes": fc.integer({ min: 0, max: 40 }),
  "fitting minutes": fc.integer({ min: 0, max: 40 }),
  "slide price": price(40),
  "pull price": price(15),
  "screw price": fc.integer({ min: 1, max: 400 }).map((n) => n / 1000),
  "box finish price": cents(3),
  "front finish price": cents(5),
  overhead: percent(40),
  tax: percent(25),
  "extra delivery": cents(200),
  "charge sheets": fc.constantFrom("whole", "used"),
  "tax on": fc.constantFrom("all", "materials", "none"),
  "currency decimals": fc.constantFrom("none", 2, 3),
});
type Values = Record<string, string | number>;
const gain = fc.oneof(
  percent(200).map((markup): Values => ({ markup })),
  percent(90).map((margin): Values => ({ margin })),
  fc.constant<Values>({}),
);

/** A quote of a drawn job, or nothing where that cannot be planned. */
const quoted = (o: Table, s: Table, v: Values): unknown[][] | undefined => {
  try {
    return QUOTE(o, s, STOCK, rates(v));
  } catch (thrown) {
    // A drawn job may be impossible; what is wrong with money is never its fault.
    const { message } = thrown as { message: string };
    expect(message).toMatch(/^Opening |stock|fits|"labor rate" and no minutes/);
    return undefined;
  }
};

const law = (check: (o: Table, s: Table, v: Values, quote: unknown[][]) => void, runs = 25): number => {
  let checked = 0;
  fc.assert(
    fc.property(openings, standards, values, gain, (o, s, v, g) => {
      const all: Values = { ...v, ...g };
      const quote = quoted(o, s, all);
      if (!quote) return;
      checked++;
      check(o, s, all, quote);
    }),
    { numRuns: runs },
  );
  return checked;
};

describe("laws of money", () => {
  test("a quote adds up to its total and its subtotals, and PRICE is that total", () => {
    const checked = law((o, s, v, quote) => {
      expect(sum(ownAmounts(quote))).toBe(totalOf(quote));
      expect(PRICE(o, s, STOCK, rates(v))).toBe(totalOf(quote));
      for (const [section, item, , , , amount] of quote) {
        if (item === "Subtotal") expect(sum(lines(quote, String(section)).map((line) => line[4]))).toBe(amount);
      }
    });
    expect(checked).toBeGreaterThan(5);
  });

  test("an amount is its quantity at its rate, a percent of what stands there, to the currency's decimals", () => {
    law((_o, _s, v, quote) => {
      const decimals = v["currency decimals"] ?? 2;
      const unit = 10 ** -(decimals === "none" ? 0 : decimals);
      for (const [, , quantity, measure, rate, amount] of quote.slice(1)) {
        if (rate === "" || amount === "") continue;
        const exact = ((quantity as number) * (rate as number)) / (measure === "%" ? 100 : 1);
        expect(Math.abs(exact - (amount as number))).toBeLessThanOrEqual(unit / 2 + 1e-8);
        expect(Math.abs(Math.round((amount as number) / unit) * unit - (amount as number))).toBeLessThan(1e-8);
      }
    });
  });

  test("a dearer rate never lowers the total", () => {
    law((o, s, v, quote) => {
      const before = totalOf(quote) as number;
      for (const [name, value] of Object.entries(v)) {
        if (typeof value !== "number" || name === "currency decimals") continue;
        const more = name === "margin" ? value + (100 - value) / 2 : value * 1.25 + 1;
        expect(PRICE(o, s, STOCK, rates({ ...v, [name]: more })), name).toBeGreaterThanOrEqual(before);
      }
    });
  });

  test("a margin and its equivalent markup agree", () => {
    const pairs = fc.constantFrom([25, 20], [60, 37.5], [100, 50], [150, 60], [300, 75], [400, 80], [56.25, 36]);
    fc.assert(
      fc.property(openings, values, pairs, (o, v, [markup, margin]) => {
        const quote = quoted(o, [], { ...v, markup: markup! });
        if (quote) expect(PRICE(o, [], STOCK, rates({ ...v, margin: margin! }))).toBe(totalOf(quote));
      }),
      { numRuns: 25 },
    );
  });

  test("nonsense in stock or rates is an error that says what is wrong, or a quote of finite amounts", () => {
    const cell = fc.oneof(
      fc.constantFrom("", 0, 7, "7 %", 0.07, "none", -3, "12,50", "1,250", "used", true, 1e15, NaN, "board foot", null),
      fc.string({ maxLength: 6 }),
      fc.double(),
      fc.record({ type: fc.constant("Double"), basicValue: fc.double(), numberFormat: fc.constantFrom("0%", "0.00") }),
    );
    const names = [...RATE_NAMES, "extra", "extra delivery"];
    const kept = { "slide price": 18, "pull price": 6, "screw price": 0.06 };
    let priced = 0;
    fc.assert(
      fc.property(
        fc.dictionary(fc.constantFrom(...names), cell, { maxKeys: 4, noNullPrototype: true }),
        fc.array(fc.oneof({ weight: 6, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: cell }), {
          minLength: 6,
          maxLength: 6,
        }),
        (more, odd) => {
          const row = [96, 48, 40, "", "", ""].map((usual, i) => odd[i] ?? usual);
          const stock = [["Length", "Width", "Price", "Sold by", "Waste", "Available"], row];
          try {
            const quote = QUOTE(ONE_DRAWER, [], stock, rates({ ...kept, ...more }));
            expect(quote.slice(1).every((line) => Number.isFinite(line[5] === "" ? 0 : line[5]))).toBe(true);
            expect(totalOf(quote)).toBe(PRICE(ONE_DRAWER, [], stock, rates({ ...kept, ...more })));
            priced++;
          } catch (thrown) {
            const { code, message } = thrown as { code: string; message: string };
            expect(["#VALUE!", "#N/A"]).toContain(code);
            expect(message).not.toMatch(/could not be worked out|undefined|NaN|\[object/);
          }
        },
      ),
      { numRuns: 600 },
    );
    expect(priced).toBeGreaterThan(20);
  });

  test("no openings cost nothing", () => {
    fc.assert(
      fc.property(openings, standards, values, gain, (o, s, v, g) => {
        expect(PRICE([o[0]!], s, STOCK, rates({ ...v, ...g }))).toBe(0);
      }),
    );
  });

  test("quantity 2 costs twice the labor, and at most twice the sheets", () => {
    law((o, s, v, quote) => {
      const column = o[0]!.indexOf("Quantity");
      const twice = o.map((row, i) => (i === 0 ? row : row.map((c, k) => (k === column ? 2 * (c as number) : c))));
      const doubled = QUOTE(twice, s, STOCK, rates(v));
      const of = (table: unknown[][], name: string, place: number) =>
        lines(table, name).map((line) => line[place] as number);
      of(doubled, "Labor", 1).forEach((hours, i) => expect(hours).toBeCloseTo(2 * of(quote, "Labor", 1)[i]!, 9));
      of(doubled, "Sheets", 1).forEach((sheets, i) =>
        expect(sheets).toBeLessThanOrEqual(2 * of(quote, "Sheets", 1)[i]! + 1e-9),
      );
      expect(of(doubled, "Hardware", 1).length).toBe(of(quote, "Hardware", 1).length);
      expect(amountOf(doubled, "Sheets")).toBeLessThanOrEqual(2 * (amountOf(quote, "Sheets") as number) + 4);
    }, 15);
  });
});
