import { findingsOf, isUnread, planJob, type Finding, type Job } from "../../core/drawer";
import { Fault, orElse, subtract, toDouble, total, type Rational, type Unit } from "../../core/length";
import { costed, drawerCount, insideVolume, quoteOf, type AnyStock, type Rates } from "../../core/money";
import type { Argument } from "../arguments";
import type { CellResult } from "../cells";
import {
  notedIn,
  ratesIfAny,
  readAlternates,
  type Alternate,
  readJob,
  readUnit,
  type OpeningHeading,
  type Table,
} from "../tables";
import { message, wordingOf } from "../words";
import { cellError } from "./cell-error";
import { planned } from "./planned";
import { usesOf } from "./solved";

/** What all alternates have in common. */
interface Common {
  openings: Table<OpeningHeading>;
  unit: Unit;
  stock: readonly AnyStock[];
  rates?: Rates;
}

/** A finding in words. */
type Told = { level: Finding["level"]; words: string };

/** What comes of one alternate, as far as it can be made and priced. */
interface Outcome extends Attempt<{ drawers: number; sheets: Rational; total?: Rational; volume: Rational }> {
  name: string;
  findings: readonly Told[];
}

/** The table of standards with an alternate in each column, which tell the unit, and agree on it. */
export const alternates: Argument<Alternate[]> = {
  name: "standards",
  read(raw, call) {
    const read = readAlternates(raw);
    const [unit, ...others] = read.map(({ values }) => readUnit(values.get("unit")));
    call.unit = unit!;
    if (others.some((other) => other !== unit)) throw new Fault("alternates.unit", {});
    return read;
  },
};

export const ratesIfGiven: Argument<Rates | undefined> = { name: "rates", read: ratesIfAny };

/**
 * One row an alternate, in their order.
 * @throws Fault `alternates.many` before any is planned
 */
export function alternateRows(alternates: readonly Alternate[], common: Common): CellResult[][] {
  const jobs = alternates.map(({ values }) => attempted(() => readJob(common.openings, values)));
  const drawers = jobs.reduce((sum, { made }) => sum + (made ? drawersAsked(made) : 0), 0);
  if (drawers > MOST_DRAWERS)
    throw new Fault("alternates.many", { drawers, alternates: jobs.length, most: MOST_DRAWERS });
  const times = jobs.length * (1 + drawers / DRAWERS_AS_LONG);
  const outcomes = alternates.map(({ name }, i) => outcomeOf(name, jobs[i]!, common, times));
  return outcomes.map((outcome) => rowOf(outcome, outcomes, common.unit));
}

/** A host that hears nothing for some seconds starts the add-in anew: all drawers of all alternates are planned in one call. */
const MOST_DRAWERS = 1800;

const drawersAsked = ({ openings }: Job): number =>
  openings.reduce((sum, opening) => sum + (isUnread(opening) ? 0 : opening.drawers.length), 0);

/** So many drawers are planned, checked and priced in as long as all alternates of a few may be searched. */
const DRAWERS_AS_LONG = 200;

/** What is made, or why it is not. */
type Attempt<T> = { made?: T; fault?: Fault };

const attempted = <T>(make: () => T): Attempt<T> =>
  orElse<Attempt<T>, Attempt<T>>(
    () => ({ made: make() }),
    (fault) => ({ fault }),
  );

function outcomeOf(name: string, { made: job, fault }: Attempt<Job>, common: Common, times: number): Outcome {
  if (!job) return { name, findings: [], fault: fault! };
  const { openings, unit, stock, rates } = common;
  let findings: Told[] = [];
  const outcome = attempted(() => {
    const plan = planJob(job);
    findings = findingsOf(job, plan, notedIn(openings, job)).map((one) => ({
      level: one.level,
      words: wordingOf(one, unit)[0],
    }));
    const done = costed(job, planned(plan), stock, { usesOf, priced: rates !== undefined, times });
    const sheets = total(done.stock.filter(({ soldBy }) => soldBy === "sheet").map(({ bought }) => bought));
    const drawers = drawerCount(done.plan);
    const price = rates && quoteOf(done, rates).total;
    return { drawers, sheets, total: price, volume: insideVolume(done.plan, unit) };
  });
  return { name, findings, ...outcome };
}

function rowOf({ name, findings, fault, made }: Outcome, all: readonly Outcome[], unit: Unit): CellResult[] {
  const base = all[0]!;
  const count = (level: Finding["level"]): number => findings.filter((finding) => finding.level === level).length;
  if (!made) {
    const error = cellError(fault, unit);
    // What cannot even be read has not been checked.
    const checked = findings.length > 0 ? [count("wrong"), count("doubtful")] : [error, error];
    return [name, ...Array.from({ length: 6 }, () => error), ...checked, message(fault!, unit)];
  }
  const than = (own: Rational | undefined, other: Rational | undefined): CellResult =>
    own && other ? toDouble(subtract(own, other)) : "";
  return [
    name,
    made.drawers,
    toDouble(made.sheets),
    made.total ? toDouble(made.total) : "",
    than(made.total, base.made?.total),
    toDouble(made.volume),
    than(made.volume, base.made?.volume),
    count("wrong"),
    count("doubtful"),
    firstOf(findings, all),
  ];
}

/** What is wrong before what is doubtful; of equals what tells this alternate from others. */
function firstOf(findings: Outcome["findings"], all: readonly Outcome[]): string {
  const isCommon = (words: string): boolean => all.every((one) => one.findings.some((other) => other.words === words));
  const rank = ({ level, words }: Told): number => (level === "wrong" ? 0 : 2) + Number(isCommon(words));
  const ranks = findings.map(rank);
  return findings[ranks.indexOf(Math.min(...ranks))]?.words ?? "";
}
