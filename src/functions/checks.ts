import { findingsOf, planJob, type Finding } from "../core/drawer";
import { Fault, orElse } from "../core/length";
import { cellFunction, openings, orFault, standards, type JobTables } from "./calls";
import { table } from "./cells";
import { wordingOf } from "./words";

/**
 * Lists what is wrong or doubtful in a job, each finding with its remedy, before anything is cut.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @returns {any[][]} A table: Where, Level (wrong or doubtful), Finding, Remedy; one row All clear where there is nothing
 * @throws nothing of its own: rows and tables that cannot be read are findings
 * @example =DRAWER.CHECKS({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,9,1}) // => {"Where","Level","Finding","Remedy";"B","wrong","Opening B: No slide fits: an inside depth of 9 in leaves 8 1/2 in, and the shortest slide is 10 in.",…}
 * @source common practice; ANSI/KCMA A161.1 for loads; NIST Voluntary Product Standard PS 1 for plywood
 */
export function CHECKS(openings: any[][], standards?: any[][]): any[][] {
  return call([openings, standards]);
}

const call = cellFunction([orFault(openings), orFault(standards)], ([, read], unit) => {
  const rows = everythingFound(read).map((finding) => [finding.where, finding.level, ...wordingOf(finding, unit)]);
  return table(HEADINGS, rows.length > 0 ? rows : [["", "", "All clear", ""]]);
});

const HEADINGS = ["Where", "Level", "Finding", "Remedy"];

const everythingFound = (read: JobTables | Fault): Finding[] =>
  read instanceof Fault
    ? unreadable(read)
    : orElse(() => findingsOf(read.job, planJob(read.job), read.noted()), unreadable);

/** A table that cannot be read at all is the one thing found. */
function unreadable(fault: Fault): Finding[] {
  const where = String(fault.data.table ?? fault.data.argument ?? "openings").split(",")[0]!;
  return [{ where, level: "wrong", code: "plan.fault", data: { fault } }];
}
