import { describe, expect, test } from "vitest";
import { BOXWIDTH } from "../../src/functions";
import { expectValueError } from "../cell";

const mm = "mm" as never;

describe("BOXWIDTH(opening_width, slide, unit)", () => {
  test("is the opening less twice the side clearance of side-mount slides (common practice: 1/2 in or 12.7 mm a side)", () => {
    expect(BOXWIDTH(24)).toBe(23);
    expect(BOXWIDTH("18 1/16")).toBe(17.0625);
    expect(BOXWIDTH(412, null, mm)).toBe(386.6);
    expect(BOXWIDTH("595 mm", "", mm)).toBe(569.6);
  });

  test("knows the clearance of slides by name, whatever the case, the hyphen and the spelling", () => {
    expect(
      ["side-mount", "SIDE MOUNT", "center-mount", "Centre mount", "wood runner"].map((slide) => BOXWIDTH(24, slide)),
    ).toEqual([23, 23, 23.75, 23.75, 23.875]);
    expect(["side-mount", "center-mount", "wood runner"].map((slide) => BOXWIDTH(500, slide, mm))).toEqual([
      474.6, 494, 497,
    ]);
  });

  test("takes a clearance per side as a length; a zero is typed as text", () => {
    expect(BOXWIDTH(24, "7/16")).toBe(23.125);
    expect(BOXWIDTH(24, "0")).toBe(24);
    expect(BOXWIDTH(24, "12.7 mm")).toBe(23);
  });

  test("refuses undermount slides, whose deduction stands in their data sheet", () => {
    expectValueError(
      () => BOXWIDTH(24, "Undermount"),
      `slide is "undermount": its deduction stands in that slide's own data sheet. Give a length per side instead.`,
    );
  });

  test("refuses an opening narrower than its slides", () => {
    expectValueError(
      () => BOXWIDTH(1),
      "opening_width is 1 in. With 1/2 in for the slide on each side it must be more than 1 in.",
    );
    expectValueError(
      () => BOXWIDTH(20, null, mm),
      "opening_width is 20 mm. With 12.7 mm for the slide on each side it must be more than 25.4 mm.",
    );
  });

  test("refuses what is no opening and no slide", () => {
    expectValueError(() => BOXWIDTH(-24), "opening_width is -24 in. It must be more than 0.");
    expectValueError(() => BOXWIDTH("0"), "opening_width is 0 in. It must be more than 0.");
    expectValueError(() => BOXWIDTH(24, "-1/2"), "slide is -1/2 in. It must be 0 or more.");
    expectValueError(
      () => BOXWIDTH(24, "ball-bearing"),
      `slide is "ball-bearing". It can be "side-mount", "center-mount", "wood runner", or a length per side.`,
    );
  });
});
