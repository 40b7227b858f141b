import { findingsOf, planJob, type Finding } from "../../core/drawer";
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
interface Outcome {
  name: string;
  findings: readonly Told[];
  fault?: Fault;
  made?: { drawers: number; sheets: Rational; total?: Rational; volume: Rational };
}

/** The table of standards with an alternate in each column, which tell the unit, and agree on it. */
export const alternates: Argument<Alternate[]> = {
  name: "standards",
  read(raw, call) {
    const read = readAlternates(raw);
    const [unit, ...others] = read.map(({ values }) => readUnit(values.get("unit")));
    call.unit = unit!;
    if (others.some((other) => other !== unit)) throw new Fault("alternates.unit");
    return read;
  },
};

export const ratesIfGiven: Argument<Rates | undefined> = { name: "rates", read: ratesIfAny };

/** One row an alternate, in their order. */
export function alternateRows(alternates: readonly Alternate[], common: Common): CellResult[][] {
  const outcomes = alternates.map((alternate) => outcomeOf(alternate, common, BESIDES * alternates.length));
  return outcomes.map((outcome) => rowOf(outcome, outcomes, common.unit));
}

/** An alternate of thousands of parts is planned, checked and laid out in as long as it is searched. */
const BESIDES = 2;

function outcomeOf({ name, values }: Alternate, { openings, unit, stock, rates }: Common, times: number): Outcome {
  let findings: Told[] = [];
  const made = (): Outcome["made"] => {
    const job = readJob(openings, values);
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
  };
  const outcome = orElse(
    () => ({ made: made() }),
    (fault) => ({ fault }),
  );
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
