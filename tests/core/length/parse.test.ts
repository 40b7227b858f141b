import { describe, expect, test } from "vitest";
import { equal, Fault, parseLength, ratio, writeLength, type Unit } from "../../../src/core/length";

const read = (text: string, unit: Unit = "in") => writeLength(parseLength(text, unit), unit);

describe("parseLength(text, unit)", () => {
  test.each([
    ["23 7/16", "23 7/16 in"],
    [`23-7/16"`, "23 7/16 in"],
    ["7/16", "7/16 in"],
    [".4375", "7/16 in"],
    ["0.4375in", "7/16 in"],
    [`1' 11 7/16"`, "23 7/16 in"],
    [`1'11-7/16"`, "23 7/16 in"],
    ["2 ft 3 in", "27 in"],
    ["2ft3in", "27 in"],
    ["1.5 ft", "18 in"],
    ["1 1/2'", "18 in"],
    ["3 feet", "36 in"],
    ["2 inches", "2 in"],
    ["5½", "5 1/2 in"],
    ["5 ½ in.", "5 1/2 in"],
    ["5-½", "5 1/2 in"],
    ["⅞", "7/8 in"],
    ["7⁄16", "7/16 in"],
    ["1′ 6″", "18 in"],
    ["1’ 6”", "18 in"],
    ["  23   7 / 16  ", "23 7/16 in"],
    ["23\u00a07/16", "23 7/16 in"],
    ["-3/4", "-3/4 in"],
    ["−3/4", "-3/4 in"],
    [`-1' 6"`, "-18 in"],
    ["23/16", "1 7/16 in"],
    ["-0", "0 in"],
    ["23\u20137/16", "23 7/16 in"],
    ["23\u20117/16\u2033", "23 7/16 in"],
    ["\u20133/4", "-3/4 in"],
    ["23 7/16''", "23 7/16 in"],
    ["1' 6''", "18 in"],
    ["1\u2032 6\u2032\u2032", "18 in"],
    ["1\u2019 6\u2019\u2019", "18 in"],
    ["\u200b23\u200b 7/16\ufeff", "23 7/16 in"],
    ["\u202a595\u00a0mm\u202c", "23 54/127 in"],
    ["２３ ７/１６", "23 7/16 in"],
    ["254 mm", "10 in"],
    ["5,08 cm", "2 in"],
    ["0.0254M", "1 in"],
  ])("reads %j as %s", (text, expected) => expect(read(text)).toBe(expected));

  test.each([
    ["595 mm", "595 mm"],
    ["595", "595 mm"],
    ["59,5 cm", "595 mm"],
    ["0.6 m", "600 mm"],
    ["1 in", "25.4 mm"],
    [`1' 11 7/16"`, "595.3125 mm"],
    ["168 1/3", "168 1/3 mm"],
  ])("reads %j in millimeters as %s", (text, expected) => expect(read(text, "mm")).toBe(expected));

  test("reads every digit of a text, never through a double", () => {
    expect(equal(parseLength("0.12345678901234567890123", "in"), ratio(12345678901234567890123n, 10n ** 23n))).toBe(
      true,
    );
  });

  test.each([
    ["", "length.unreadable"],
    [" ", "length.unreadable"],
    ["about a foot", "length.unreadable"],
    ["5.", "length.unreadable"],
    ["1e3", "length.unreadable"],
    ["+5", "length.unreadable"],
    ["--5", "length.unreadable"],
    ["5 - 1/2", "length.unreadable"],
    ["1'-6\"", "length.unreadable"],
    ["2' 3", "length.unreadable"],
    ["1 1/2' 3\"", "length.unreadable"],
    ["3 17/16", "length.unreadable"],
    ["23.5 7/16", "length.unreadable"],
    ["7/16/2", "length.unreadable"],
    ["6''''", "length.unreadable"],
    ["1'' 6'", "length.unreadable"],
    ["23\u00007/16", "length.unreadable"],
    ["5½½", "length.unreadable"],
    ["1.2.3", "length.unreadable"],
    ["1.250,5", "length.unreadable"],
    ["5 yd", "length.unreadable"],
    ["=5", "length.unreadable"],
    ["٣", "length.unreadable"],
    ["1".repeat(61), "length.unreadable"],
    ["1,250", "length.doubtfulComma"],
    ["0,125 in", "length.doubtfulComma"],
    ["7/0", "length.zeroDenominator"],
    ["3 0/0", "length.zeroDenominator"],
  ])("refuses %j as %s, and quotes it", (text, code) => {
    expect(() => parseLength(text, "in")).toThrow(expect.objectContaining({ code, data: { text } }) as Fault);
  });

  test("a comma before one, two or four digits marks decimals", () => {
    expect([read("1,2"), read("1,25"), read("1,0625")]).toEqual(["1 1/5 in", "1 1/4 in", "1 1/16 in"]);
  });
});
