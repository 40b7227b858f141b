import { describe, expect, test } from "vitest";
import { BOTTOMWIDTH } from "../../src/functions";
import { expectValueError } from "../cell";

describe("BOTTOMWIDTH(box_width, side_thickness, groove_depth, play, unit)", () => {
  test("is the inside width and both grooves, less the play", () => {
    expect(BOTTOMWIDTH(17, 0.5, 0.25)).toBe(16.4375);
    expect(BOTTOMWIDTH(17, 0.5, 0.25, "none")).toBe(16.5);
    expect(BOTTOMWIDTH(386.6, 12, 6, null, "mm" as never)).toBe(373.1);
  });

  test("refuses a groove as deep as the side is thick, and none at all", () => {
    expectValueError(
      () => BOTTOMWIDTH(17, 0.5, 0.5),
      "groove_depth is 1/2 in. It must be less than the side is thick, 1/2 in.",
    );
    expectValueError(() => BOTTOMWIDTH(17, 0.5, "0"), "groove_depth is 0 in. It must be more than 0.");
  });

  test("refuses so much play that the bottom would drop out of its grooves", () => {
    expectValueError(
      () => BOTTOMWIDTH(17, 0.5, "1/32"),
      "play is 1/16 in. The grooves hold the bottom by a total of 1/16 in: with so much play it would drop out.",
    );
  });

  test("refuses sides that take the whole width", () => {
    expectValueError(
      () => BOTTOMWIDTH(1, 0.5, 0.25),
      "box_width is 1 in. With two sides of 1/2 in it must be more than 1 in.",
    );
  });
});
