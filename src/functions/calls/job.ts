import type { Finding, Job } from "../../core/drawer";
import { Fault } from "../../core/length";
import type { Argument, Call } from "../arguments";
import {
  notedIn,
  readOpenings,
  readStandardValues,
  readJob,
  readUnit,
  type OpeningHeading,
  type StandardValues,
  type Table,
} from "../tables";
import type { Typed } from "../cells";
import { ofTables } from "./memo";

/** A job, and what its tables hold that no plan shows. */
export interface JobTables {
  job: Job;
  noted: () => Finding[];
}

/** The table of openings; what stands in its cells is read with the standards. */
export const openings: Argument<Table<OpeningHeading>> = {
  name: "openings",
  read: (raw) => tables([raw], "", () => readOpenings(raw)),
};

/** The standards, which tell the unit, and make a job of the openings, the first argument. */
export const standards: Argument<JobTables> = {
  name: "standards",
  read(raw, call) {
    const table = openingsOf(call);
    const values = standardsIn(raw);
    tellUnit(call, values.get("unit"));
    return jobs([call.raw[0], raw], "", () => {
      const job = readJob(table, values);
      return { job, noted: () => notedIn(table, job) };
    });
  },
};

// All tables of one job are asked for one after the other, and a large one takes much memory.
const tables = ofTables<Table<OpeningHeading>>(2);
const jobs = ofTables<JobTables>(2);
const values = ofTables<StandardValues>();

/** The standards as they are typed. */
export const standardsIn = (raw: unknown): StandardValues => values([raw], "", () => readStandardValues(raw));

/** The table of openings that a call begins with. @throws its fault, where it has one */
export function openingsOf({ earlier: [table] }: Call): Table<OpeningHeading> {
  if (table instanceof Fault) throw table;
  return table as Table<OpeningHeading>;
}

/** From here on the call is in this unit. */
export const tellUnit = (call: Call, typed: Typed | undefined): void => void (call.unit = readUnit(typed));
