import { afterEach, describe, expect, test } from "vitest";
import { BOXWIDTH, FRONTHEIGHTS, GROOVEPASSES, LENGTH, SHEETS } from "../../../src/functions";

afterEach(() => (globalThis.drawerHost = undefined));

const fraction = (basicValue: number) => ({ type: "Double", basicValue, numberFormat: "# ??/??" });

describe("where the host shows number formats that come with a result", () => {
  test("a length in inches is a number with a fraction format", () => {
    globalThis.drawerHost = { showsNumberFormats: true };
    expect(BOXWIDTH("8 13/32")).toEqual(fraction(7.40625));
    expect(FRONTHEIGHTS("27 5/8", "2" as never)).toEqual([[fraction(13.75)], [fraction(13.75)]]);
    expect(GROOVEPASSES(0.25, 0.125, 0.375, 0.25)[1]).toEqual([1, fraction(0.375), fraction(0.25)]);
  });

  test("an older host has another name for such a number", () => {
    globalThis.drawerHost = { showsNumberFormats: true, formattedType: "FormattedNumber" };
    expect(BOXWIDTH("8 13/32")).toEqual({ ...fraction(7.40625), type: "FormattedNumber" });
  });

  test("a length that no tape has is shown as a decimal, its value exact; millimeters stay plain numbers", () => {
    globalThis.drawerHost = { showsNumberFormats: true };
    expect(LENGTH("595 mm")).toEqual({ ...fraction(23.4251968503937), numberFormat: "0.000" });
    expect(LENGTH("7 1/6")).toEqual({ ...fraction(7 + 1 / 6), numberFormat: "0.000" });
    expect(BOXWIDTH(412, null, "mm" as never)).toBe(386.6);
  });
});

describe("the least possible of SHEETS says what it is, and stays the number that formulas read", () => {
  const parts = [
    ["Length", "Width", "Qty"],
    [48, 24, 4],
  ];
  const least = (...stock: unknown[][]) => SHEETS(parts, [["Length", "Width", "Price"], ...stock], "none")[1]![4];

  test("sheets where there is one size, else cost, or area without prices", () => {
    const [one, costs, areas] = [
      [[96, 48, ""]],
      [
        [96, 48, 60.5],
        [48, 48, 40],
      ],
      [
        [96, 48, ""],
        [48, 24, ""],
      ],
    ];
    const all = [one, costs, areas].map((stock) => least(...stock!));
    expect(all).toEqual([1, 60.5, 4608]);
    globalThis.drawerHost = { showsNumberFormats: true };
    const formats = [`"proven least: "0`, `"proven least cost: "0.00`, `"proven least area: "0`];
    expect([one, costs, areas].map((stock) => least(...stock!))).toEqual(
      all.map((basicValue, i) => ({ type: "Double", basicValue, numberFormat: formats[i] })),
    );
  });
});

test("where the host shows no such formats, or says nothing, a length is a plain number", () => {
  expect(BOXWIDTH("8 13/32")).toBe(7.40625);
  globalThis.drawerHost = { showsNumberFormats: false };
  expect(BOXWIDTH("8 13/32")).toBe(7.40625);
});
