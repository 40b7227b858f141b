import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { failed, planJob, type PlannedOpening } from "../../src/core/drawer";
import { add, isPositive, keyOf, safeSizes, subtract } from "../../src/core/length";
import { cutLine, lengthOf, piecesOf, sawCuts } from "../../src/core/sheets";
import {
  backCorners,
  boxApart,
  crossSection,
  elevation,
  joints,
  section,
  spacerStack,
  storyStick,
  svgOf,
} from "../../src/drawing";
import { readJob, readOpenings, readStandardValues } from "../../src/functions/tables";
import { anyCutting, anyJob } from "../drawing/any-job";
import { clashes } from "../drawing/clashes";
import type { TypedJob } from "../drawing/jobs";
import { groupsOf, sheetDrawings } from "../drawing/sheets";
import { readSvg } from "../drawing/read-svg";

const openingsOf = ({ openings, standards }: TypedJob): PlannedOpening[] =>
  planJob(readJob(readOpenings(openings), readStandardValues(standards))).filter(
    (planned): planned is PlannedOpening => !failed(planned),
  );

/** How many of the generated jobs could be drawn: a law about none would hold of anything. */
let drawn = 0;

describe("laws of drawings", () => {
  test("no label of an elevation overlaps another or leaves the paper, and every front has its label and height", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        for (const planned of openingsOf(job)) {
          drawn++;
          const drawing = elevation([planned]);
          expect(clashes(drawing)).toEqual([]);
          for (const { label } of planned.drawers) {
            expect(drawing.labels.filter(({ of }) => of === `${label} Front height`)).toHaveLength(1);
          }
        }
      }),
      { numRuns: 500 },
    );
    expect(drawn).toBeGreaterThan(300);
  });

  test("nor does one of the sections of a drawer", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        for (const planned of openingsOf(job)) {
          const [drawer] = [...planned.drawers].reverse();
          expect(clashes(section(drawer!, planned))).toEqual([]);
          expect(clashes(crossSection(drawer!, planned))).toEqual([]);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("nor does one of a story stick, of a stack of spacers, or of a drawer taken apart", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        for (const planned of openingsOf(job)) {
          for (const drawing of storyStick(planned)) expect(clashes(drawing)).toEqual([]);
          expect(clashes(spacerStack(planned))).toEqual([]);
          expect(clashes(boxApart(planned.drawers[0]!))).toEqual([]);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("nor does one of a corner at full size, or of a back", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const planned = openingsOf(job);
        for (const drawing of [...joints(planned), ...backCorners(planned)]) expect(clashes(drawing)).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test("nor does one of a bank of openings", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const planned = openingsOf(job);
        if (planned.length > 0) expect(clashes(elevation(planned))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test("nor of a sheet", () => {
    fc.assert(
      fc.property(anyCutting, (cutting) => {
        for (const drawing of sheetDrawings(cutting)) expect(clashes(drawing)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test("every cut has an edge of its own, and on its kept side lies a piece as wide as its setting", () => {
    fc.assert(
      fc.property(anyCutting, (cutting) => {
        for (const { solution } of groupsOf(cutting)) {
          const pieces = solution.sheets.map(({ piece }) => piecesOf(piece));
          const { exact } = solution;
          const at = (place: number): string => keyOf(lengthOf(place, exact));
          const edges = new Set<string>();
          for (const cut of sawCuts(solution, safeSizes("in"))) {
            const { sheet, step, kind, frees, setting } = cut;
            const line = cutLine(cut, exact);
            edges.add(`${sheet} ${kind} ${[line.at, line.from, line.to].map(keyOf).join(" ")}`);
            // Trims keep all but the edge.
            if (isPositive(solution.problem.trim) && step <= 4) continue;
            const far = frees.keeps === "before" ? line.at : add(line.at, setting);
            const near = subtract(far, setting);
            const found = pieces[sheet - 1]!.some(({ x, y, length, width }) =>
              kind === "rip"
                ? at(y) === keyOf(near) && at(y + width) === keyOf(far)
                : at(x) === keyOf(near) && at(x + length) === keyOf(far),
            );
            expect(found, `${sheet}.${step}`).toBe(true);
          }
          expect(edges.size).toBe(sawCuts(solution, safeSizes("in")).length);
        }
      }),
      { numRuns: 100 },
    );
  });

  test("the file is well-formed, holds no element but those of drawings, and every label as it was drawn", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        for (const planned of openingsOf(job)) {
          const drawing = elevation([planned]);
          const { names, texts } = readSvg(svgOf(drawing));
          expect(texts).toEqual(
            drawing.labels.map(({ before, text, after }) => [before, text, after].filter(Boolean).join(" ")),
          );
          expect([...names].sort()).toEqual(
            ["defs", "desc", "path", "pattern", "rect", "style", "svg", "text", "title", "tspan"].filter((name) =>
              names.has(name),
            ),
          );
        }
      }),
      { numRuns: 200 },
    );
  });
});
