import { expect, test } from "vitest";
import { storyStick } from "../../src/drawing";
import { clashes } from "./clashes";
import { plannedJob } from "./jobs";

test("a last section that would be too short for its texts is none: all sections are equally long", () => {
  // From 9/32 under the floor to 41 3/4: 1/32 more than six sections of 7 in.
  const [planned] = plannedJob({
    openings: [
      ["Opening", "Width", "Height", "Depth", "Drawers"],
      ["A", 5, 41.75, 23.25, 1],
    ],
    standards: [
      ["front style", "lipped"],
      ["front step", "none"],
      ["pull spacing", "none"],
    ],
  });
  const sections = storyStick(planned!);
  expect(sections).toHaveLength(7);
  for (const section of sections) expect(clashes(section)).toEqual([]);
});
