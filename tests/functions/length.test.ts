import { describe, expect, test } from "vitest";
import { LENGTH } from "../../src/functions";
import { expectValueError, shown } from "../cell";

const LENGTHS = `a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm`;

describe("LENGTH(value, unit)", () => {
  test("gives the number that a text stands for, in the unit", () => {
    expect(LENGTH("23 7/16")).toBe(23.4375);
    expect(LENGTH("1' 11 7/16\"")).toBe(23.4375);
    expect(LENGTH("59,5 cm", "mm" as never)).toBe(595);
    expect(LENGTH("1 in", "mm" as never)).toBe(25.4);
  });

  test("gives a number back, cleared of what doubles leave behind", () => {
    expect(LENGTH(10.2 - 2.2)).toBe(8);
    expect(LENGTH(-0.75)).toBe(-0.75);
    expect(Object.is(LENGTH("-0"), 0)).toBe(true);
  });

  test("names the argument, quotes what came and says what is allowed", () => {
    expectValueError(() => LENGTH("about a foot"), `value is "about a foot", which is no length. Write ${LENGTHS}.`);
    expectValueError(() => LENGTH("7/0"), `value is "7/0", which divides by zero.`);
    expectValueError(
      () => LENGTH("1,250"),
      `value is "1,250": its comma may mark decimals or thousands. Write a point, or no comma.`,
    );
    for (const blank of [undefined, null, ""]) {
      expectValueError(() => LENGTH(blank), `value is blank. It needs a length: ${LENGTHS}.`);
    }
  });

  test("a date that the spreadsheet made of a fraction is refused, with or without its format; a text is no date", () => {
    expectValueError(
      () => LENGTH(46219),
      'value is 46219. Such a number may be a date that the spreadsheet made of a fraction: format the cell as text. A length that long is written with its unit, as "46219 in".',
    );
    expect(shown(() => LENGTH({ type: "Double", basicValue: 46219, numberFormat: "d-mmm" }))).toMatch(/a date/);
    expect([LENGTH("46219"), LENGTH("46219 in"), LENGTH(46219.5)]).toEqual([46219, 46219, 46219.5]);
  });

  test("a 0, which an empty cell also gives, is refused; zero is written", () => {
    expectValueError(() => LENGTH(0), "value is 0, which an empty cell also gives: write none or 0 in for zero.");
    expect(["none", "0", "0 mm"].map((zero) => LENGTH(zero))).toEqual([0, 0, 0]);
  });

  test("what cannot be seen in a refused text is shown by its code", () => {
    expectValueError(
      () => LENGTH("7\u200b/16 i\u0000n\u00a0x"),
      `value is "7\\u{200b}/16 i\\u{0}n\\u{a0}x", which is no length. Write ${LENGTHS}.`,
    );
  });

  test("takes totals longer than any one part, but no number without end", () => {
    expect(LENGTH(250_000)).toBe(250_000);
    expect(shown(() => LENGTH(1e308))).toBe(
      "#VALUE! value is 1e+308, more than 1000000000 in, the largest length allowed.",
    );
  });
});
