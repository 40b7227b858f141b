import { STANDARD_GROUPS, STANDARDS_HELP } from "../../guide/index";
import { columnLetters } from "../address";
import type { Choices } from "./choices";
import { jobTable, roomOf } from "./job-table";

export type StandardName = keyof typeof STANDARDS_HELP;

/** Every row of the standards: a group's name, or a standard. */
export const STANDARD_ROWS: readonly ({ group: string } | { name: StandardName })[] = [
  { group: "The job" },
  ...STANDARD_GROUPS.flatMap((group) => [
    { group },
    ...(Object.keys(STANDARDS_HELP) as StandardName[])
      .filter((name) => STANDARDS_HELP[name].group === group)
      .map((name) => ({ name })),
  ]),
];

/** The standards in their order, as the sheet lists them. */
export const STANDARD_NAMES: readonly StandardName[] = STANDARD_ROWS.flatMap((one) =>
  "name" in one ? [one.name] : [],
);

/** The row of the headings. */
export const TOP = 5;

/** Where things stand on the sheet Job; tables and cells as formulas of other sheets name them. */
export interface JobPlaces {
  /** The row of the standards' headings. */
  standardsTop: number;
  rowOf(name: StandardName): number;
  typed: string;
  standards: string;
  standard(name: StandardName): string;
  unit: string;
}

export function jobPlaces(choices: Choices): JobPlaces {
  const bottom = TOP + roomOf(choices);
  const standardsTop = bottom + 3;
  // The row of the unit stands in the first group.
  const rowOf = (name: StandardName): number =>
    standardsTop + 2 + STANDARD_ROWS.findIndex((one) => "name" in one && one.name === name);
  return {
    standardsTop,
    rowOf,
    typed: `Job!$A$${TOP}:$${columnLetters(jobTable(choices).columns.length - 1)}$${bottom}`,
    standards: `Job!$A$${standardsTop}:$B$${standardsTop + STANDARD_ROWS.length + 1}`,
    standard: (name) => `Job!$B$${rowOf(name)}`,
    unit: `Job!$B$${standardsTop + 2}`,
  };
}

/** What is said of either unit, whichever is typed in the end. */
export const byUnit = (inches: string, millimeters: string, unit: string): string =>
  inches === millimeters ? inches : `=IF(${unit}="mm","${millimeters}","${inches}")`;
