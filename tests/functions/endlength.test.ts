import { describe, expect, test } from "vitest";
import { ENDLENGTH } from "../../src/functions";
import { expectValueError } from "../cell";

const end = (joint: string, depth?: unknown) => ENDLENGTH(17, 0.5, joint as never, depth);

describe("ENDLENGTH(box_width, side_thickness, joint, joint_depth, unit)", () => {
  test("butted ends stand between the sides: W − 2t", () => {
    expect([ENDLENGTH(17, 0.5), end("butt"), end("Butt", 0.25)]).toEqual([16, 16, 16]);
    expect(ENDLENGTH("386.6", 12, null as never, null, "mm" as never)).toBe(362.6);
  });

  test("ends in a rabbet or dado reach into both sides: W − 2t + 2 × joint depth", () => {
    expect([end("rabbet", "1/4"), end("dado", 0.25), end("rebate", 0.25), end("housing", 0.25)]).toEqual([
      16.5, 16.5, 16.5, 16.5,
    ]);
  });

  test("dovetailed and box-jointed ends run to the outer faces: W", () => {
    expect(["dovetail", "half-blind dovetail", "box joint", "finger joint"].map((joint) => end(joint))).toEqual([
      17, 17, 17, 17,
    ]);
  });

  test("a rabbet or dado needs a depth, of more than nothing and less than the side", () => {
    expectValueError(() => end("dado"), "joint_depth is blank. A dado needs the depth that it is cut into the side.");
    expectValueError(() => end("rabbet", "0"), "joint_depth is 0 in. It must be more than 0.");
    expectValueError(
      () => end("rabbet", 0.5),
      "joint_depth is 1/2 in. A rabbet must be cut less deep than the side is thick, 1/2 in.",
    );
  });

  test("refuses sides that take the whole width, and joints that it does not know", () => {
    expectValueError(() => ENDLENGTH(1, 0.5), "box_width is 1 in. With two sides of 1/2 in it must be more than 1 in.");
    expectValueError(
      () => end("glue"),
      `joint is "glue". It can be "butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint".`,
    );
  });
});
