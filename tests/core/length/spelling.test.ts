import fc from "fast-check";
import { distance } from "fastest-levenshtein";
import { describe, expect, test } from "vitest";
import { editsBetween } from "../../../src/core/length";

describe("editsBetween(a, b)", () => {
  // Levenshtein (1966), from memory: put in, leave out or change, one letter at a time.
  test.each([
    ["", "width", 5],
    ["thicknes", "thickness", 1],
    ["kitten", "sitting", 3],
    ["hieght", "height", 2],
  ])("%s and %s: %i", (a, b, edits) => expect(editsBetween(a, b)).toBe(edits));

  const text = fc.string({ unit: fc.constantFrom(..."abcde "), maxLength: 24 });
  test("is the distance that the library fastest-levenshtein gives", () => {
    fc.assert(fc.property(text, text, (a, b) => editsBetween(a, b) === distance(a, b)));
  });
});
