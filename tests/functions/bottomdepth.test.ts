import { describe, expect, test } from "vitest";
import { BOTTOMDEPTH } from "../../src/functions";
import { expectValueError } from "../cell";

const depth = (fit: string | null, groove: unknown = 0.25, play?: unknown) =>
  BOTTOMDEPTH(22, 0.75, groove, play, fit as never);

describe("BOTTOMDEPTH(box_depth, end_thickness, groove_depth, play, bottom_fit, unit)", () => {
  test("grooved: D − 2t + 2g − play", () =>
    expect([depth(null), depth("grooved"), depth("Grooved", 0.25, "0")]).toEqual([20.9375, 20.9375, 21]));

  test("under back: D − t + g − play, flush with the back's outer face", () => {
    expect([depth("under back"), depth("Open-Back", 0.25, "none")]).toEqual([21.4375, 21.5]);
    expect(BOTTOMDEPTH(450, 12, 6, null, "under back" as never, "mm" as never)).toBe(442.5);
  });

  test("applied: D, and no groove is asked for", () => {
    expect([depth("applied"), depth("applied", null), depth("applied", 0)]).toEqual([22, 22, 22]);
  });

  test("refuses a groove as deep as the end is thick, and a missing one", () => {
    expectValueError(
      () => depth("grooved", 0.75),
      "groove_depth is 3/4 in. It must be less than the end is thick, 3/4 in.",
    );
    expectValueError(
      () => depth("under back", ""),
      `groove_depth is blank or 0. A bottom that is "under back" needs it.`,
    );
    expectValueError(() => depth("grooved", 0), `groove_depth is blank or 0. A bottom that is "grooved" needs it.`);
  });

  test("refuses so much play that the bottom would drop out", () => {
    expectValueError(
      () => depth("under back", 0.25, 0.25),
      "play is 1/4 in. The grooves hold the bottom by a total of 1/4 in: with so much play it would drop out.",
    );
    expect(depth("grooved", 0.25, 0.25)).toBe(20.75);
  });

  test("refuses a fit that it does not know", () => {
    expectValueError(() => depth("glued"), `bottom_fit is "glued". It can be "grooved", "under back", "applied".`);
  });
});
