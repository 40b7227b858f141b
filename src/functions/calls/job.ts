import { readJob, readUnit, type Job, type OpeningHeading, type Table } from "../../core/drawer";
import type { Unit } from "../../core/length";
import { passErrorsOn } from "../cells";
import { readOpenings, readStandardValues } from "../tables";
import { cellError } from "./cell-error";

/** A job, and what its tables hold that no plan shows. */
export interface JobTables {
  job: Job;
  openings: Table<OpeningHeading>;
}

/**
 * Runs a cell function of the tables `openings` and `standards`.
 * @param raw all arguments as they came, the openings first
 * @param standards the place of the standards among them
 * @param between reads what stands between the two tables, for faults go from left to right
 */
export function withJob<R>(
  raw: readonly unknown[],
  standards: number,
  body: (tables: JobTables) => R,
  between?: () => void,
): R {
  return tableCall(raw, (tellUnit) => body(readJobTables(raw, standards, tellUnit, between)));
}

/** Runs `body` once no error has come in; its faults become cell errors, in the unit that it has told. */
export function tableCall<R>(raw: readonly unknown[], body: (tellUnit: (unit: Unit) => void) => R): R {
  let unit: Unit = "in";
  try {
    passErrorsOn(raw);
    return body((told) => (unit = told));
  } catch (thrown) {
    throw cellError(thrown, unit);
  }
}

/** @throws Fault where a table cannot be read */
export function readJobTables(
  raw: readonly unknown[],
  standards: number,
  tellUnit: (unit: Unit) => void = () => {},
  between: () => void = () => {},
): JobTables {
  const openings = readOpenings(raw[0]);
  between();
  const values = readStandardValues(raw[standards]);
  tellUnit(readUnit(values.get("unit")));
  return { job: readJob(openings, values), openings };
}
