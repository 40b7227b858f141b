import { expect, test } from "vitest";
import { boxApart, svgOf } from "../../src/drawing";
import { plannedJob } from "./jobs";

test("parts with upright grain are drawn lying, and the bottom's groove runs across them", () => {
  const [planned] = plannedJob({
    openings: [
      ["Opening", "Width", "Height", "Depth", "Drawers"],
      ["A", 18, 6.25, 20.5, 1],
    ],
    standards: [["box grain", "vertical"]],
  });
  const svg = svgOf(boxApart(planned!.drawers[0]!));
  // 1/24 of 3/8 and of 5/8 in; sides are 20 long, ends 16.
  const lines = [...svg.matchAll(/class="hidden" d="M(\S+) (\S+)L(\S+) (\S+)"/g)].map((line) =>
    line.slice(1).map(Number),
  );
  const inches = (mm: number) => Math.round((mm / 25.4) * 24 * 100) / 100;
  expect(lines.map(([x, from, end, to]) => [inches(x!), inches(end!), inches(from! - to!)])).toEqual(
    [20, 16, 16].flatMap((along) => [
      [0.38, 0.38, along],
      [0.62, 0.62, along],
    ]),
  );
});
