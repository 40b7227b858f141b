import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SETUPS, WORKING } from "../../src/functions";
import { num, records, type Table } from "./jobs";

const sixteenths = (min: number, max: number) => fc.integer({ min: min * 16, max: max * 16 }).map((n) => n / 16);
/** One drawer whose box is as high as asked. */
const box = (height: number): Table => [
  ["Opening", "Width", "Height", "Depth", "Drawers", "Box heights"],
  ["A", 18, 30, 20.5, 1, `${height} in`],
];
const laidOut = fc.constantFrom("dovetail", "half-blind dovetail", "box joint");

describe("laws of joints that are laid out", () => {
  test("marks lie alike from both edges, pins and tails fill the height, and all are as wide as their kind", () => {
    fc.assert(
      fc.property(sixteenths(2, 20), sixteenths(1, 4), laidOut, (height, pitch, joint) => {
        const standards: Table = [
          ["corner joint", joint],
          ["joint depth", "3/8"],
          ["joint pitch", pitch],
        ];
        const marks = records(SETUPS(box(height), standards))
          .filter((row) => /^Mark/.test(String(row["Setting"])))
          .map((row) => num(row["Value"]));
        marks.forEach((mark, i) => expect(mark + marks[marks.length - 1 - i]!).toBeCloseTo(height, 12));
        const widths = [...marks, height].map((mark, i) => mark - (marks[i - 1] ?? 0));
        const size = (name: string) =>
          num(records(WORKING(box(height), "A1", standards)).find((row) => row["Size"] === name)!["Value"]);
        expect(widths.length % 2).toBe(1);
        if (joint === "box joint") {
          for (const width of widths) expect(width).toBeCloseTo(size("Finger width"), 12);
          // The nearest odd number: two fingers more or less would miss the pitch by no less.
          const miss = (fingers: number) => Math.abs((2 * height) / pitch - fingers);
          expect(miss(widths.length)).toBeLessThanOrEqual(miss(widths.length + 2) + 1e-9);
          expect(miss(widths.length)).toBeLessThanOrEqual(miss(widths.length - 2) + 1e-9);
          return;
        }
        const pin = size("Pin width");
        widths.forEach((width, i) => {
          const isEdge = i === 0 || i === widths.length - 1;
          expect(width).toBeCloseTo(isEdge ? pin / 2 : i % 2 === 0 ? pin : size("Joint pitch") - pin, 12);
        });
      }),
      { numRuns: 60 },
    );
  });
});
