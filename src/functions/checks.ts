import { failed, findingsOf, planJob, type Finding, type Job, type Plan, type PlannedOpening } from "../core/drawer";
import { Fault, orElse } from "../core/length";
import { checkCosts, type AnyStock, type Rates } from "../core/money";
import type { Argument } from "./arguments";
import {
  cellFunction,
  openings,
  orFault,
  ratesIfGiven,
  standards,
  stockIfGiven,
  usesOf,
  type JobTables,
} from "./calls";
import { table } from "./cells";
import { wordingOf } from "./words";

/**
 * Lists what is wrong or doubtful in a job, each finding with its remedy, before anything is cut (loads, sag, movement and balance are estimates; local codes, makers' data and licensed practice decide).
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @param {any[][]} [stock] As in SHEETS: finds parts without stock, and sheets that do not suffice; blank: not checked
 * @param {any[][]} [rates] As in QUOTE: finds prices that are missing; blank: not checked
 * @returns {any[][]} A table: Where, Level (wrong or doubtful), Finding, Remedy; one row All clear where there is nothing
 * @throws nothing of its own: rows and tables that cannot be read are findings
 * @example =DRAWER.CHECKS({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,9,1}) // => {"Where","Level","Finding","Remedy";"B","wrong","Opening B: No slide fits: an inside depth of 9 in leaves 8 1/2 in, and the shortest slide is 10 in.",…}
 * @source common practice; ANSI/KCMA A161.1 for loads; NIST Voluntary Product Standard PS 1 for plywood
 */
export function CHECKS(openings: any[][], standards?: any[][], stock?: any[][], rates?: any[][]): any[][] {
  return call([openings, standards, stock, rates]);
}

const call = cellFunction(
  [orFault(openings), orFault(standards), orFault(stockIfGiven), orFault(ratesIfGiven)],
  ([, read, stock, rates], unit) => {
    const found = everythingFound(read, stock, rates).map((one) => [one.where, one.level, ...wordingOf(one, unit)]);
    return table(HEADINGS, found.length > 0 ? found : [["", "", "All clear", ""]]);
  },
);

const HEADINGS = ["Where", "Level", "Finding", "Remedy"];

type Given<A> = A extends Argument<infer T> ? T | Fault : never;

function everythingFound(
  read: JobTables | Fault,
  stock: Given<typeof stockIfGiven>,
  rates: Given<typeof ratesIfGiven>,
): Finding[] {
  const unread = [stock, rates].flatMap((one) => (one instanceof Fault ? unreadable(one) : []));
  if (read instanceof Fault) return [...unreadable(read), ...unread];
  const plan = planJob(read.job);
  const [given, priced] = [stock instanceof Fault ? undefined : stock, rates instanceof Fault ? undefined : rates];
  return [
    ...orElse(() => findingsOf(read.job, plan, read.noted()), unreadable),
    ...(given?.noted ?? []),
    ...unread,
    ...costsOf(read.job, plan, given?.rows, priced),
  ];
}

/** Of the openings that can be planned: what others want is not known. */
function costsOf(job: Job, plan: Plan, stock?: readonly AnyStock[], rates?: Rates): Finding[] {
  const able = plan.filter((one): one is PlannedOpening => !failed(one));
  if (able.length === 0) return [];
  return orElse(
    () => checkCosts(job, able, { stock, rates }, usesOf),
    // A cell that cannot be read is found where it stands.
    () => [],
  );
}

/** A table that cannot be read at all is the one thing found. */
function unreadable(fault: Fault): Finding[] {
  const { data } = fault;
  const where = ("table" in data ? data.table : (data.argument ?? "openings")).split(",")[0]!;
  return [{ where, level: "wrong", code: "plan.fault", data: { fault } }];
}
