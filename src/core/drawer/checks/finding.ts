import { compare, type Rational } from "../../length";

/** What a careful person would raise: what is `wrong` before anything is cut, what is `doubtful` before it is too late. */
type Level = "wrong" | "doubtful";

/** A finding as a code with data; its wording and its remedy belong to whoever shows it. */
export interface Finding {
  /** Drawers, openings or the table that it concerns. */
  where: string;
  level: Level;
  code: string;
  data: Readonly<Record<string, unknown>>;
}

export type Found = Omit<Finding, "where">;

export const wrong = (code: string, data: Finding["data"] = {}): Found => ({ level: "wrong", code, data });
export const doubtful = (code: string, data: Finding["data"] = {}): Found => ({ level: "doubtful", code, data });

export const isMoreThan = (a: Rational, b: Rational): boolean => compare(a, b) > 0;
