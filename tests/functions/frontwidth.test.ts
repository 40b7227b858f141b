import { describe, expect, test } from "vitest";
import { FRONTWIDTH } from "../../src/functions";
import { expectValueError } from "../cell";

describe("FRONTWIDTH(face_width, columns, gap, left_reveal, right_reveal, unit)", () => {
  test("times columns plus gaps and reveals is the face", () => {
    expect(FRONTWIDTH(75, 3, "1/8", "1/16", "1/16")).toBe(24.875);
    expect(FRONTWIDTH(1200, 2, null, 1.5, 1.5, "mm" as never)).toBe(597);
    expect(FRONTWIDTH(30, 1)).toBe(30);
  });

  test("refuses reveals and gaps that leave nothing", () => {
    expectValueError(
      () => FRONTWIDTH(2, 2, "0", 1, 1),
      "A face of 2 in has no room for 2 fronts: gaps of 0 in and a reveal of 1 in and a reveal of 1 in take it all.",
    );
    expectValueError(() => FRONTWIDTH(30, 101), "columns is 101. It must be a whole number from 1 to 100.");
  });
});
