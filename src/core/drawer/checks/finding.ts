import { compare, divide, ratio, type Rational } from "../../length";

/** What a careful person would raise: `stop` before anything is cut, `look` before it is too late. */
export type Level = "stop" | "look";

/** A finding as a code with data; its wording and its remedy belong to whoever shows it. */
export interface Finding {
  /** Drawers, openings or the table that it concerns. */
  where: string;
  level: Level;
  code: string;
  data: Readonly<Record<string, unknown>>;
}

export type Found = Omit<Finding, "where">;

export const stop = (code: string, data: Finding["data"] = {}): Found => ({ level: "stop", code, data });
export const look = (code: string, data: Finding["data"] = {}): Found => ({ level: "look", code, data });

export const isMoreThan = (a: Rational, b: Rational): boolean => compare(a, b) > 0;
export const half = (length: Rational): Rational => divide(length, ratio(2));
