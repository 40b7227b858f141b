import { describe, expect, test } from "vitest";
import { BOXWIDTH, FRONTHEIGHTS, FRONTWIDTH, GRADUATED, SLIDELENGTH } from "../../../src/functions";
import { expectValueError, shown } from "../../cell";

const { Error: CellError, ErrorCode } = CustomFunctions;

describe("what hosts pass for a blank", () => {
  test.each([[undefined], [null], [""], [[[""]]], [[[null]]], [{ type: "Empty", basicValue: "" }]])(
    "%j leaves an optional argument at its default",
    (blank) => {
      expect(BOXWIDTH(24, blank, blank as never)).toBe(23);
      expect(FRONTWIDTH(75, 3, blank, "1/16", "1/16")).toBe(24.875);
      expect(SLIDELENGTH(23.25, blank, blank, blank as never, blank as never)).toBe(22);
    },
  );

  test("a number 0 is refused where a blank is not zero, and a text of spaces is no blank", () => {
    expect(shown(() => BOXWIDTH(24, 0))).toBe(
      "#VALUE! slide is 0, which an empty cell also gives: write none or 0 in for zero, or leave it out for side-mount.",
    );
    expect([BOXWIDTH(24, "none"), BOXWIDTH(24, "0")]).toEqual([24, 24]);
    expect(shown(() => BOXWIDTH(24, " "))).toMatch(/^#VALUE! slide is " ", which is no length/);
  });
});

describe("what hosts wrap values in", () => {
  test("{type, basicValue} and [[value]] are read as the value", () => {
    expect(BOXWIDTH({ type: "Double", basicValue: 24, numberFormat: "# ??/??" })).toBe(23);
    expect(BOXWIDTH({ type: "FormattedNumber", basicType: "Double", basicValue: 24, numberFormat: '0.00 "day"' })).toBe(
      23,
    );
    expect(BOXWIDTH({ type: "String", basicValue: "2 ft" }, [["side-mount"]], [["in"]] as never)).toBe(23);
    expect(BOXWIDTH([[{ type: "Double", basicValue: 24 }]])).toBe(23);
    expect(
      FRONTHEIGHTS(28, [
        [
          { type: "Double", basicValue: 5.5 },
          { type: "String", basicValue: "1 part" },
        ],
      ]),
    ).toEqual([[5.5], [22.375]]);
  });

  test("a date is refused: it was a fraction before the spreadsheet read it", () => {
    const advice =
      "opening_width is a date: the spreadsheet turned a fraction such as 7/16 into one. Format the cell as text, or type =7/16 or '7/16.";
    for (const numberFormat of ["d-mmm", "m/d/yyyy", "[$-409]d-mmm-yy;@", "h:mm", "[h]:mm"]) {
      expectValueError(() => BOXWIDTH({ type: "FormattedNumber", basicValue: 46219, numberFormat }), advice);
    }
    expectValueError(() => BOXWIDTH(new Date(2026, 6, 16)), advice);
  });

  test("a bare date's number is refused as too large, with the advice", () => {
    expectValueError(
      () => BOXWIDTH(46219),
      "opening_width is 46219, more than 30000 in, the largest length allowed. Such a number may be a date that the spreadsheet made of a fraction: format the cell as text.",
    );
  });

  test("a range where one cell is meant, and a data card, are refused", () => {
    expectValueError(
      () =>
        BOXWIDTH([
          [1, 2, 3],
          [4, 5, 6],
        ]),
      "opening_width is a range of 2 × 3 cells. It takes one cell.",
    );
    expectValueError(
      () => BOXWIDTH({ type: "Entity", basicType: "Error", basicValue: "#VALUE!", text: "Birch" }),
      "opening_width holds no plain value (Entity). It takes a number or a text.",
    );
  });

  test.each([
    [true, "TRUE"],
    [false, "FALSE"],
  ])("the boolean %j is no length", (value, quoted) => {
    expectValueError(
      () => BOXWIDTH(value),
      `opening_width is ${quoted}, which is no length. Write a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
  });

  test.each([[NaN], [Infinity], [-Infinity]])("%d is not a finite number", (value) => {
    expectValueError(
      () => BOXWIDTH(value),
      `opening_width is not a finite number. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
  });

  test("a long text is quoted in part", () => {
    expect(shown(() => BOXWIDTH("x".repeat(5000)))).toBe(
      `#VALUE! opening_width is "${"x".repeat(40)}…", which is no length. Write a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
  });
});

describe("an error that comes in", () => {
  const shapes = (text: string): unknown[] => [text, { type: "Error", basicType: "Error", basicValue: text }, [[text]]];

  test.each(["#N/A", "#VALUE!", "#NUM!", "#DIV/0!", "#NULL!"])("%s is passed on, in whatever shape", (text) => {
    for (const shape of shapes(text)) expect(shown(() => BOXWIDTH(shape))).toBe(text);
  });

  test.each(["#REF!", "#NAME?", "#SPILL!", "#CALC!", "#BUSY!", "#GETTING_DATA"])(
    "%s becomes #VALUE! and is named",
    (text) => {
      for (const shape of shapes(text)) {
        expectValueError(() => BOXWIDTH(shape), `A cell that this formula reads holds the error ${text}.`);
      }
    },
  );

  test("the host's own error object is passed on", () => {
    expect(shown(() => BOXWIDTH(new CellError(ErrorCode.divisionByZero)))).toBe("#DIV/0!");
  });

  test("comes before any fault of the other arguments, and out of the middle of a range", () => {
    expect(shown(() => BOXWIDTH("nonsense", "#N/A"))).toBe("#N/A");
    expect(shown(() => SLIDELENGTH("nonsense", null, null, [[12, "#DIV/0!"]]))).toBe("#DIV/0!");
    expect(shown(() => FRONTHEIGHTS(28, [["1 part"], ["#N/A"]]))).toBe("#N/A");
  });
});

describe("faults go from left to right, and geometry comes last", () => {
  test("the leftmost argument that is wrong is named", () => {
    expect(shown(() => BOXWIDTH("x", "y", "z" as never))).toMatch(/^#VALUE! opening_width is "x"/);
    expect(shown(() => BOXWIDTH(24, "y", "z" as never))).toMatch(/^#VALUE! slide is "y"/);
    expect(shown(() => GRADUATED(28, 4, "geometric" as never, "x", "y"))).toMatch(/^#VALUE! amount is "x"/);
  });

  test("a bad unit is named before an impossible box", () => {
    expectValueError(() => BOXWIDTH(0.5, 0.5, "z" as never), `unit is "z". It can be "in", "mm".`);
  });
});
