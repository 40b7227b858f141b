import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { abs, less, parseLength, ratio, showLength, subtract } from "../../../src/core/length";

/** common practice: tapes are divided down to 64ths of an inch */
describe("a length in words has no denominator that no tape has", () => {
  test.each([
    ["18 1/3", "≈ 18 21/64 in"],
    ["128 mm", "≈ 5 3/64 in"],
    ["-7 1/6", "≈ -7 11/64 in"],
    ["23 7/16", "23 7/16 in"],
  ])("%s is %s", (typed, shown) => expect(showLength(parseLength(typed, "in"), "in")).toBe(shown));

  test("a third of a millimeter is shown to the hundredth", () => {
    expect(showLength(ratio(505, 3), "mm")).toBe("≈ 168.33 mm");
    expect(showLength(ratio(3866, 10), "mm")).toBe("386.6 mm");
  });

  test("what is shown reads back to within half a 64th, and exactly where it bears no sign", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 300 }), (u, v) => {
        const length = ratio(u, v);
        const shown = showLength(length, "in");
        const off = abs(subtract(parseLength(shown.replace("≈ ", ""), "in"), length));
        expect(less(ratio(1, 128), off)).toBe(false);
        expect(less(ratio(0), off)).toBe(shown.startsWith("≈"));
      }),
    );
  });
});
