import { describe, expect, test } from "vitest";
import { CHECKS, PARTS, PLAN } from "../../src/functions";
import { openings } from "./tables";

const widthOfBox = (...call: Parameters<typeof PLAN>): unknown => PLAN(...call)[1]![5];

describe("a table that was read before is known by what stands in it", () => {
  test("the same array with another number in it is another table", () => {
    const table = openings(["A", 18, 20, 20.5, 2]);
    const standards: unknown[][] = [["side clearance", "1/2"]];
    expect(widthOfBox(table, standards)).toBe(17);
    table[1]![1] = 24;
    expect(widthOfBox(table, standards)).toBe(23);
    standards[0]![1] = "3/8";
    expect(widthOfBox(table, standards)).toBe(23.25);
    expect(PARTS(table, standards).find(([part]) => /bottom/i.test(String(part)))).toBeDefined();
  });

  test("one whose array alone can change no more is another table with another number in a row", () => {
    const table = Object.freeze(openings(["A", 18, 20, 20.5, 2])) as unknown[][];
    expect(widthOfBox(table)).toBe(17);
    table[1]![1] = 24;
    expect(widthOfBox(table)).toBe(23);
  });

  test("one whose rows can change no more is another table with another number within a cell", () => {
    const size = { type: "FormattedNumber", basicValue: 18, numberFormat: "0" };
    const table = Object.freeze(openings(["A", size, 20, 20.5, 2]).map((row) => Object.freeze(row))) as unknown[][];
    expect(widthOfBox(table)).toBe(17);
    size.basicValue = 24;
    expect(widthOfBox(table)).toBe(23);
  });

  test("equal openings in another unit are another job", () => {
    const table = openings(["A", 600, 300, 550, 1]);
    expect(widthOfBox(table, [["unit", "mm"]])).toBe(574.6);
    expect(widthOfBox(table)).toBe(599);
    expect(widthOfBox(table, [["unit", "mm"]])).toBe(574.6);
  });

  test.each([NaN, Infinity, -Infinity])("%s is no blank, in whatever order they come", (odd) => {
    const table = (clearance: unknown) => [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Side clearance"],
      ["A", 18, 20, 20.5, 2, clearance],
    ];
    const told = (clearance: unknown) => CHECKS(table(clearance)).map(([, level]) => level);
    expect(told(null)).not.toContain("wrong");
    expect(told(odd)).toContain("wrong");
    expect(told(null)).not.toContain("wrong");
  });

  test("a number with a format of its own is not the text that shows it", () => {
    const formatted = { type: "FormattedNumber", basicValue: 18, numberFormat: "0" };
    expect(widthOfBox(openings(["A", formatted, 20, 20.5, 2]))).toBe(17);
    expect(widthOfBox(openings(["A", { ...formatted, basicValue: 24 }, 20, 20.5, 2]))).toBe(23);
    expect(widthOfBox(openings(["A", "18 1/2", 20, 20.5, 2]))).toBe(17.5);
  });

  test("one that cannot be read stays so, and hides none that can", () => {
    const [good, bad] = [openings(["A", 18, 20, 20.5, 2]), openings(["A", 18, 20, 20.5, "two"])];
    for (const standards of [undefined, [["unit", "furlong"]]])
      for (let i = 0; i < 2; i++) {
        if (standards) expect(() => PLAN(good, standards)).toThrow(/furlong/);
        else expect(PLAN(good)[1]![5]).toBe(17);
        if (!standards) expect(CHECKS(bad).map(([, level]) => level)).toContain("wrong");
      }
  });

  test("a table of more rows than are remembered pushes out no other's answer", () => {
    const tables = Array.from({ length: 20 }, (_, i) => openings(["A", 18 + i, 20, 20.5, 2]));
    for (const _ of [1, 2]) expect(tables.map((table) => widthOfBox(table))).toEqual(tables.map((_, i) => 17 + i));
  });
});
