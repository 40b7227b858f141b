import { describe, expect, test } from "vitest";
import { SIDELENGTH } from "../../src/functions";
import { expectValueError } from "../cell";

const half = "half-blind dovetail" as never;

describe("SIDELENGTH(box_depth, end_thickness, joint, joint_depth, unit)", () => {
  test("is the box's depth, whatever the joint, but for half-blind dovetails", () => {
    const joints = [undefined, "butt", "rabbet", "dado", "dovetail", "box joint"];
    expect(joints.map((joint) => SIDELENGTH(22, 0.5, joint as never))).toEqual([22, 22, 22, 22, 22, 22]);
  });

  test("half-blind sides end in their sockets: D − 2 × (end thickness − socket depth)", () => {
    expect(SIDELENGTH(21, "5/8", half, "3/8")).toBe(20.5);
    expect(SIDELENGTH(21, "5/8", half, "5/8")).toBe(21);
    expect(SIDELENGTH(450, 16, half, 10, "mm" as never)).toBe(438);
  });

  test("half-blind sockets need a depth, at most that of the ends", () => {
    expectValueError(
      () => SIDELENGTH(21, 0.5, half),
      "joint_depth is blank. A half-blind dovetail needs the depth of its sockets in the ends.",
    );
    expectValueError(
      () => SIDELENGTH(21, 0.5, half, 0.75),
      "joint_depth is 3/4 in. The sockets can be at most as deep as the ends are thick, 1/2 in.",
    );
  });

  test("refuses ends that take the whole depth", () => {
    expectValueError(() => SIDELENGTH(1, 0.5), "box_depth is 1 in. With two ends of 1/2 in it must be more than 1 in.");
  });
});
