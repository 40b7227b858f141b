import { compare, type Rational } from "../../length";
import type { Findings } from "./findings";

/** What a careful person would raise: what is `wrong` before anything is cut, what is `doubtful` before it is too late. */
type Level = "wrong" | "doubtful";

/** A finding as a code with data; its wording and its remedy belong to whoever shows it. */
export interface FoundOf<C extends keyof Findings> {
  level: Level;
  code: C;
  data: Findings[C];
}

/** What is doubtful in a plan, or why there is none. */
export type Found = FoundOf<Exclude<keyof Findings, "plan.fault">> | FoundOf<"plan.fault">;

/** `where` are the drawers, openings or the table that it concerns. */
export type Finding = Found & { where: string };

export const wrong = <C extends keyof Findings>(code: C, data: Findings[C]): FoundOf<C> => ({
  level: "wrong",
  code,
  data,
});
export const doubtful = <C extends keyof Findings>(code: C, data: Findings[C]): FoundOf<C> => ({
  level: "doubtful",
  code,
  data,
});

export const isMoreThan = (a: Rational, b: Rational): boolean => compare(a, b) > 0;
