import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Wildcard } from "../../../src/workbook/engine/wildcards";

describe("wildcards", () => {
  it.each([
    ["oak", "OAK", true],
    ["oak*", "oak panel", true],
    ["*oak", "red oak", true],
    ["*oak*", "red oaks", true],
    ["o?k", "oak", true],
    ["o?k", "ok", false],
    ["a*b*a", "aba", true],
    ["a*a", "a", false],
    ["*", "", true],
    ["?", "", false],
    ["", "", true],
    ["", "a", false],
    ["~*", "*", true],
    ["~*", "a", false],
    ["~?", "a", false],
    ["~~", "~", true],
    ["a~b", "a~b", true],
    ["1.2", "1x2", false],
    ["(a|b)", "a", false],
    ["ÄHRE*", "ähren", true],
    ["Σ", "ς", true],
    ["a?b", "a😀b", true],
    ["a*\nb", "a\n\nb", true],
  ])("%s fits %s: %s", (pattern, text, fits) => {
    expect(new Wildcard(pattern).matches(text)).toBe(fits);
  });

  it.each([
    ["b*d", "abcd", 0, 1],
    ["b*d", "abc", 0, -1],
    ["*d", "abcd", 0, 0],
    ["?d", "abcd", 0, 2],
    ["a", "aba", 1, 2],
    ["~?", "who?", 0, 3],
    ["", "abc", 2, 2],
    ["D", "abcd", 0, 3],
  ])("%s is found in %s from %i at %i", (pattern, text, from, at) => {
    expect(new Wildcard(pattern).search(text, from)).toBe(at);
  });

  /** The language's own regular expressions, which may take long and so are no way to do it. */
  function expression(pattern: string): string {
    return pattern.replace(
      /~([*?~])|([*?])|([\\^$.|+()[\]{}])/g,
      (_, escaped: string, wild: string, special: string) =>
        escaped ? `\\${escaped}`.replace("\\~", "~") : wild ? (wild === "*" ? ".*" : ".") : `\\${special}`,
    );
  }

  const letters = fc.string({ unit: fc.constantFrom("a", "b", "A", "~", "*", "?", ".", "😀"), maxLength: 9 });

  it("says what the regular expression says", () => {
    fc.assert(
      fc.property(letters, letters, fc.nat(4), (pattern, text, from) => {
        const whole = new RegExp(`^${expression(pattern)}$`, "isu");
        expect(new Wildcard(pattern).matches(text)).toBe(whole.test(text));
        const start = [...text].slice(0, from).join("").length;
        const found = text.slice(start).search(new RegExp(expression(pattern), "isu"));
        expect(new Wildcard(pattern).search(text, start)).toBe(found < 0 ? -1 : found + start);
      }),
      { numRuns: 3000, seed: 12 },
    );
  });
});
