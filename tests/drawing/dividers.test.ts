import { expect, test } from "vitest";
import { boxApart, svgOf } from "../../src/drawing";
import { plannedJob } from "./jobs";

/** Hidden lines across a part of a box taken apart, at 1/8 its size, in inches from its left end. */
function across(...standards: [string, unknown][]): number[] {
  const [planned] = plannedJob({
    openings: [
      ["Opening", "Width", "Height", "Depth", "Drawers"],
      ["A", 24, 8, 20.5, 1],
    ],
    standards: [["dividers", 2], ...standards],
  });
  const svg = svgOf(boxApart(planned!.drawers[0]!));
  const scale = Number(/Scale 1:(\d+)/.exec(svg)![1]);
  return [...svg.matchAll(/class="hidden" d="M(\S+) (\S+)L(\S+) (\S+)"/g)]
    .map((line) => line.slice(1).map(Number))
    .filter(([x, , end]) => x === end)
    .map(([x]) => Math.round((x! / 25.4) * scale * 10) / 10);
}

test("a box taken apart shows the dadoes of its dividers in what they stand in", () => {
  // (22 − 2 × 1/4) / 3 = 7 1/6: at 7 1/6 and 14 7/12 in the ends, which are 22 long, and as wide as dividers are thick.
  const ends = [7.2, 7.4, 14.6, 14.8];
  expect(across()).toEqual([...ends, ...ends]);
  // (19 − 1/2) / 3 = 6 1/6: from the ends of the sides 6 2/3 and 13 1/12.
  expect(across(["divider run", "side to side"])).toEqual([6.7, 6.9, 13.1, 13.3]);
  expect(across(["divider fit", "loose"])).toEqual([]);
});
