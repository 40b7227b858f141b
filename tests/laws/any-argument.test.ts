import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as functions from "../../src/functions";

const scalar = fc.oneof(
  { weight: 4, arbitrary: fc.double() },
  { weight: 3, arbitrary: fc.integer({ min: -50, max: 200 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      "23 7/16",
      "1' 2\"",
      "595 mm",
      "1 part; 2 parts",
      "3",
      "mm",
      "in",
      "rabbet",
      "applied",
      "geometric",
      "down",
    ),
  },
  { weight: 2, arbitrary: fc.string() },
  { weight: 1, arbitrary: fc.string({ unit: "grapheme", maxLength: 2000 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(null, undefined, "", true, false, NaN, Infinity, -Infinity, 1e308, 5e-324, -0),
  },
  { weight: 1, arbitrary: fc.constantFrom("#N/A", "#REF!", "7/0", "1,250", "=1+1", "'", "-", "1/" + "9".repeat(58)) },
  {
    weight: 1,
    arbitrary: fc.record({
      type: fc.constantFrom("Double", "String", "Error", "Entity", "Empty"),
      basicValue: fc.anything(),
    }),
  },
  { weight: 1, arbitrary: fc.anything({ withBigInt: true, withDate: true }) },
);
const range = fc.array(fc.array(scalar, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 });
const HEADINGS = [
  "Opening",
  "Width",
  "Height",
  "Depth",
  "Drawers",
  "Side thickness",
  "Rail above",
  "Box heights",
  "Quantity",
  "Cabinet",
  "Slide",
];
/** A table of openings under good headings, sensible sizes and nonsense mixed. */
const openings = fc
  .array(
    fc.array(
      fc.oneof({ weight: 3, arbitrary: fc.constantFrom(18, 20, "24 1/2", 2, "") }, { weight: 1, arbitrary: scalar }),
      { minLength: 11, maxLength: 11 },
    ),
    { maxLength: 4 },
  )
  .map((rows) => [HEADINGS, ...rows]);
const standards = fc.array(
  fc.tuple(
    fc.constantFrom("unit", "side thickness", "corner joint", "kerf", "slide", "front step", "nonsense"),
    scalar,
  ),
  { minLength: 1, maxLength: 3 },
);
const argument = fc.oneof(
  { weight: 2, arbitrary: openings },
  { weight: 1, arbitrary: standards },
  { weight: 4, arbitrary: scalar },
  { weight: 1, arbitrary: range },
);

const CODES = ["#VALUE!", "#N/A", "#NUM!", "#DIV/0!", "#NULL!"];

function expectCell(value: unknown): void {
  if (value instanceof CustomFunctions.Error) expectError(value);
  else if (typeof value === "number") expect(Number.isFinite(value) && !Object.is(value, -0)).toBe(true);
  else expect(typeof value).toBe("string");
}

function expectError(thrown: unknown): void {
  expect(thrown).toBeInstanceOf(CustomFunctions.Error);
  const { code, message } = thrown as { code: string; message: string };
  expect(CODES).toContain(code);
  expect(message).not.toMatch(/could not be worked out|undefined|NaN|\[object/);
}

describe("no function crashes, hangs or gives NaN on any argument", () => {
  test.each(Object.entries(functions))("%s", (_, call) => {
    fc.assert(
      fc.property(fc.array(argument, { maxLength: 9 }), (args) => {
        try {
          const result = (call as (...a: unknown[]) => unknown)(...args);
          if (!Array.isArray(result)) return expectCell(result);
          const widths = new Set(result.map((row: unknown[]) => row.length));
          expect(widths.size).toBe(1);
          result.flat().forEach(expectCell);
        } catch (thrown) {
          expectError(thrown);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
