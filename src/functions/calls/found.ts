import { ableOf, findingsOf, planJob, type Finding, type Job, type Plan } from "../../core/drawer";
import { Fault, orElse } from "../../core/length";
import { checkCosts, type AnyStock, type Rates } from "../../core/money";
import { ratesIfGiven } from "./alternates";
import { orFault, type Read } from "./cell-function";
import { openings, standards } from "./job";
import { stockIfGiven } from "./sheet-job";
import { usesOf } from "./solved";

/** The tables of a job: what cannot be read of them is found as well. */
export const CHECKS_ARGUMENTS = [
  orFault(openings),
  orFault(standards),
  orFault(stockIfGiven),
  orFault(ratesIfGiven),
] as const;

/** All that is wrong or doubtful in a job, its stock and its rates. */
export function everythingFound([, read, stock, rates]: Read<typeof CHECKS_ARGUMENTS>): Finding[] {
  const unread = [
    ...(stock instanceof Fault ? unreadable(stock, "stock") : []),
    ...(rates instanceof Fault ? unreadable(rates, "rates") : []),
  ];
  if (read instanceof Fault) return [...unreadable(read), ...unread];
  const plan = planJob(read.job);
  const [given, priced] = [stock instanceof Fault ? undefined : stock, rates instanceof Fault ? undefined : rates];
  return [
    ...orElse(
      () => findingsOf(read.job, plan, read.noted()),
      (fault) => unreadable(fault),
    ),
    ...(given?.noted ?? []),
    ...unread,
    ...costsOf(read.job, plan, given?.rows, priced),
  ];
}

/** Of the openings that can be planned: what others want is not known. */
function costsOf(job: Job, plan: Plan, stock?: readonly AnyStock[], rates?: Rates): Finding[] {
  const able = ableOf(plan);
  if (able.length === 0) return [];
  return orElse(
    () => checkCosts(job, able, { stock, rates }, usesOf),
    // A cell that cannot be read is found where it stands.
    () => [],
  );
}

/** A table that cannot be read at all is the one thing found. */
function unreadable(fault: Fault, table = "openings"): Finding[] {
  const { data } = fault;
  const where = ("table" in data ? data.table : (data.argument ?? table)).split(",")[0]!;
  return [{ where, level: "wrong", code: "plan.fault", data: { fault } }];
}
