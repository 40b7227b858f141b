import { failed, planJob, within, type Job, type Plan, type PlannedOpening } from "../../core/drawer";
import type { CellResult } from "../cells";
import { cellError } from "./cell-error";

/** The whole plan, or its first fault: cells that cannot be read come before what cannot be built. */
export const plannedOrFault = (job: Job): PlannedOpening[] => planned(planJob(job));

export function planned(plan: Plan): PlannedOpening[] {
  refuseUnreadable(plan);
  const first = plan.find(failed);
  if (first) throw first.fault;
  return plan as PlannedOpening[];
}

/** @throws Fault of the first cell that cannot be read */
export function refuseUnreadable(plan: Plan): void {
  const first = plan.filter(failed).find(({ fault }) => fault.data.argument !== undefined);
  if (first) throw first.fault;
}

/**
 * The rows of every opening; one that fails gives one row, its label and then error cells, and the others are right.
 * @param columns how many the table has
 * @param labels how many of them, at the left, hold the label
 */
export const rowsOfOpenings = (
  job: Job,
  columns: number,
  labels: number,
  rows: (planned: PlannedOpening) => CellResult[][],
): CellResult[][] =>
  planJob(job).flatMap((planned) => {
    try {
      if (failed(planned)) throw planned.fault;
      return within(planned.opening, () => rows(planned));
    } catch (fault) {
      const error = cellError(fault, job.unit);
      return [Array.from({ length: columns }, (_, i) => (i < labels ? planned.opening.label : error))];
    }
  });
