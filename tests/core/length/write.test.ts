import { expect, test } from "vitest";
import { ratio, writeLength } from "../../../src/core/length";

test.each([
  [ratio(375, 16), "23 7/16 in", "23.4375 mm"],
  [ratio(-3, 4), "-3/4 in", "-0.75 mm"],
  [ratio(0), "0 in", "0 mm"],
  [ratio(505, 3), "168 1/3 in", "168 1/3 mm"],
  [ratio(1, 20000), "1/20000 in", "1/20000 mm"],
  [ratio(1933, 5), "386 3/5 in", "386.6 mm"],
])(
  "writeLength writes inches as a mixed number and millimeters as decimals where these are exact",
  (length, inches, mm) => {
    expect([writeLength(length, "in"), writeLength(length, "mm")]).toEqual([inches, mm]);
  },
);
