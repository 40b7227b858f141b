import { expect, test } from "vitest";
import { equal, multiply, ratio, unitsIn, type Mark } from "../../../src/core/length";

test("1 in = 25.4 mm and 1 ft = 304.8 mm, exactly (NIST Handbook 44, Appendix C; SP 811)", () => {
  expect(equal(unitsIn("in", "mm"), ratio(254, 10))).toBe(true);
  expect(equal(unitsIn("ft", "mm"), ratio(3048, 10))).toBe(true);
});

test.each<Mark>(["in", "ft", "mm", "cm", "m"])(
  "%s to inches and inches to millimeters is %s to millimeters",
  (mark) => {
    expect(equal(multiply(unitsIn(mark, "in"), unitsIn("in", "mm")), unitsIn(mark, "mm"))).toBe(true);
  },
);
