import { safeSizes, type Unit } from "../../src/core/length";
import { sheetLayout, type CutGroup, type Drawing } from "../../src/drawing";
import { PARTS } from "../../src/functions";
import { begun, laidOut, readAll, SHEET_ARGUMENTS } from "../../src/functions/calls";
import { JOBS } from "./jobs";

/** What LAYOUT and CUTS are called with. */
export interface TypedCutting {
  parts: unknown[][];
  stock: unknown[][];
  kerf?: unknown;
  trim?: unknown;
  effort?: string;
  unit?: Unit;
}

/** The drawings of all sheets of a cutting, in their order. */
export function sheetDrawings(cutting: TypedCutting): Drawing[] {
  const { unit = "in" } = cutting;
  let number = 0;
  return groupsOf(cutting).flatMap((group) =>
    group.solution.sheets.map((_, i) => sheetLayout(group, i + 1, ++number, unit, safeSizes(unit))),
  );
}

/** What is laid out together, as the cell functions lay it out. */
export function groupsOf({ parts, stock, kerf, trim, effort, unit = "in" }: TypedCutting): readonly CutGroup[] {
  const call = begun(SHEET_ARGUMENTS, [parts, stock, kerf, trim, effort, unit]);
  return laidOut(readAll(SHEET_ARGUMENTS, call)).groups;
}

const STOCK = [
  ["Material", "Thickness", "Length", "Width"],
  ["Plywood", "1/2", 97, 49],
  ["Plywood", "1/4", 97, 49],
  ["Plywood", "3/4", 97, 49],
];

const parts = (name: string): unknown[][] => {
  const { openings, standards } = JOBS[name]!;
  return PARTS(openings, standards);
};

/** Invented cuttings. */
export const CUTTINGS: Record<string, TypedCutting> = {
  "bicycle parts bench": { parts: parts("bicycle parts bench"), stock: STOCK, effort: "quick" },
  "strips for wood runners": { parts: parts("inset apothecary"), stock: STOCK, trim: "1/2", effort: "quick" },
  "metric plan chest": {
    parts: parts("metric plan chest"),
    stock: [
      ["Material", "Length", "Width", "Grain"],
      ["Plywood", 2500, 1250, "none"],
    ],
    effort: "quick",
    unit: "mm",
  },
};
