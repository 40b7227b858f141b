import { failed, planJob, type PlannedOpening } from "../../src/core/drawer";
import { jobs as worked } from "../worked/independent/jobs";
import { readJob, readOpenings, readStandardValues } from "../../src/functions/tables";

/** Tables as a person types them. */
export interface TypedJob {
  openings: unknown[][];
  standards: unknown[][];
}

/** Plans a job from its tables, as the functions do. */
export function plannedJob({ openings, standards }: TypedJob): PlannedOpening[] {
  const plan = planJob(readJob(readOpenings(openings), readStandardValues(standards)));
  return plan.map((planned) => {
    if (failed(planned)) throw planned.fault;
    return planned;
  });
}

const HEADINGS = ["Opening", "Width", "Height", "Depth", "Drawers"];

/** Invented jobs of the kinds that a shop has. */
export const JOBS: Record<string, TypedJob> = {
  "bicycle parts bench": {
    openings: [
      HEADINGS,
      ["A", 18, 26.25, 23.25, 3],
      ["B", 24, 26.25, 23.25, "1 part; 1 part; 2 parts"],
      ["C", 33, 26.25, 23.25, 5],
    ],
    standards: [],
  },
  "face frame dresser": {
    openings: [HEADINGS, ["Left", 16, 30, 18, "5; 1 part; 1 part"], ["Right", 16, 30, 18, "5; 1 part; 1 part"]],
    standards: [
      ["construction", "face frame"],
      ["case width", "17 1/2"],
    ].slice(0, 1),
  },
  "inset apothecary": {
    openings: [HEADINGS, ["P", 9, 40, 14, 10]],
    standards: [
      ["front style", "inset"],
      ["slide", "wood runner"],
      ["pull spacing", "none"],
    ],
  },
  "metric plan chest": {
    openings: [HEADINGS, ["Z", 900, 600, 620, 6]],
    standards: [
      ["unit", "mm"],
      ["slide", "wood runner"],
      ["runner", "side groove"],
      ["side thickness", 18],
    ],
  },
  "desk with an undermount drawer": {
    openings: [HEADINGS, ["D", 20, 5.5, 19, 1]],
    standards: [
      ["slide", "undermount"],
      ["undermount deduction", "1 5/8"],
      ["bottom fit", "under back"],
      ["groove offset", "1/2"],
    ],
  },
  "shop bench with shop-made pulls": {
    openings: [HEADINGS, ["S", 30, 14, 24, "4; 1 part"]],
    standards: [
      ["pull kind", "shop-made"],
      ["bottom fit", "applied"],
      ["corner joint", "rabbet"],
      ["joint depth", "1/4"],
      ["space below", "3/4"],
    ],
  },
  "integral cutlery drawers": {
    openings: [HEADINGS, ["K", 18, 12, 20.5, 2]],
    standards: [
      ["front style", "integral"],
      ["front grain", "horizontal"],
      ["joint pitch", 1],
    ],
  },
  "lipped seed drawers": {
    openings: [HEADINGS, ["N", 16, 7, 18, 1]],
    standards: [
      ["front style", "lipped"],
      ["front grain", "horizontal"],
      ["front joint", "rabbet"],
      ["corner joint", "dado"],
      ["joint depth", "1/4"],
      ["slide", "wood runner"],
      ["box depth", 17],
    ],
  },
  "glaze cabinet": asWorked("a potter's glaze cabinet"),
  "seed library": asWorked("a seed library", "North"),
};

/**
 * One of the jobs that are recalculated independently.
 * @param cabinet the only one of them, for an elevation shows one
 */
function asWorked(name: string, cabinet?: string): TypedJob {
  const { openings, standards } = worked.find((job) => job.name.startsWith(name))!;
  return {
    openings: openings.filter((row, i) => i === 0 || cabinet === undefined || row.includes(cabinet)),
    standards,
  };
}
