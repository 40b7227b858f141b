import { Fault } from "../../core/length";
import { begun, CHECKS_ARGUMENTS, everythingFound, readAll } from "../../functions/calls/index";
import { IncomingError } from "../../functions/cells/index";
import { wordingOf } from "../../functions/words/index";
import { MESSAGES } from "../messages";
import { aboutOf } from "./about";
import { placeOf, type Place } from "./place";

/** A finding of a job, as it is told. */
export interface Told {
  where: string;
  level: "wrong" | "doubtful";
  finding: string;
  remedy: string;
  /** The cell at fault; undefined where there is none. */
  place: Place | undefined;
}

/** The functions that begin with openings and standards, and the arguments of theirs that `CHECKS` takes after them. */
const OF_JOBS: Readonly<Record<string, readonly [stock?: number, rates?: number]>> = {
  CHECKS: [2, 3],
  QUOTE: [2, 3],
  PRICE: [2, 3],
  ...Object.fromEntries(["PLAN", "PARTS", "PIECES", "HARDWARE", "SETUPS", "MOUNTING", "FIT"].map((name) => [name, []])),
};

export const isOfJob = (name: string): boolean => name in OF_JOBS;

/** Which arguments of a call are the tables of a job, in the order in which `CHECKS` takes them. */
export const tablesOf = <T>(name: string, args: readonly T[]): (T | undefined)[] => [
  args[0],
  args[1],
  ...OF_JOBS[name]!.map((place) => args[place!]),
];

/** All that `CHECKS` finds in a job, with its cells. @param raw its tables as the spreadsheet hands them over */
export function foundIn(raw: readonly unknown[]): Told[] | { why: string } {
  const call = begun(CHECKS_ARGUMENTS, raw);
  try {
    const values = readAll(CHECKS_ARGUMENTS, call);
    const [, job] = values;
    const labels = job instanceof Fault ? [] : job.job.openings.map(({ label }) => label);
    const rows = values[0] instanceof Fault ? [] : values[0].rows.map(({ number }) => number);
    return everythingFound(values).map((one) => {
      const [finding, remedy] = wordingOf(one, call.unit);
      const fault = one.code === "plan.fault" ? one.data.fault : undefined;
      const place = placeOf(
        { where: isOfStock(one.code) ? "stock" : one.where, about: aboutOf(one), text: `${remedy} ${finding}`, fault },
        raw,
        {
          labels,
          rows,
        },
      );
      return { where: one.where, level: one.level, finding, remedy, place };
    });
  } catch (thrown) {
    if (thrown instanceof IncomingError) return { why: MESSAGES.errorInTables };
    throw thrown;
  }
}

/** It stands at the parts that lack stock, and is mended in the stock. */
const isOfStock = (code: string): boolean => code.startsWith("stock.") && code !== "stock.nominal";
