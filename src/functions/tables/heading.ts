import { once } from "../../core/drawer";
import { editsBetween, Fault, type Mark } from "../../core/length";
import { type Cell, american, isBlank } from "../cells";

/** A heading as typed: what it says to us, if anything, and the unit that it names for plain numbers. */
export interface Heading<N extends string> {
  name?: N;
  mark?: Mark;
  typed: string;
}

const LONGEST_NEAR = 100;

/** Names of a table, looked up whatever the case, spaces, hyphens, punctuation and spelling. */
export class Names<N extends string> {
  private readonly folded: ReadonlyMap<string, N>;

  constructor(known: readonly N[]) {
    this.folded = new Map(known.map((name) => [fold(name), name]));
  }

  get(typed: string): N | undefined {
    return this.folded.get(fold(typed));
  }

  /** The known name with the fewest edits to it, and how many these are. */
  nearest(typed: string): { name: N; edits: number } {
    // What is longer than that is far from every name, and comparing it takes as long as it is.
    const text = fold(typed.slice(0, LONGEST_NEAR));
    return [...this.folded]
      .map(([key, name]) => ({ name, edits: editsBetween(text, key) }))
      .reduce((best, next) => (next.edits < best.edits ? next : best));
  }
}

/** Those of one list, for as long as it is the same list. */
export const namesAmong = once((known: readonly string[]) => new Names(known)) as <N extends string>(
  known: readonly N[],
) => Names<N>;

/**
 * Reads a heading, with the unit that may stand behind it: `Width`, `Width (mm)`.
 * @throws Fault `table.headingUnit` for a bracket behind a known name that holds no unit
 */
export function readHeading<N extends string>(table: string, { value }: Cell, names: Names<N>): Heading<N> {
  // A blank of the header arrives as 0 from some hosts; what is no number says nothing either.
  const typed = isBlank(value) || value === 0 || Number.isNaN(value) ? "" : String(value).trim();
  const whole = names.get(typed);
  if (whole) return { name: whole, typed };
  const [, before = typed, inside] = /^(.*?)\s*\(([^()]*)\)$/.exec(typed) ?? [];
  const name = names.get(before);
  if (!name || inside === undefined) return { typed };
  // Money has no length: what stands behind it is a remark, as (EUR) or (each).
  if (table === "rates" || name === "price") return { name, typed };
  const mark = MARKS[inside.trim().toLowerCase()];
  if (!mark) throw new Fault("table.headingUnit", { table, heading: typed });
  return { name, mark, typed };
}

/** What a heading says before its bracket. */
export const bareHeading = (typed: string): string => typed.replace(/\s*\([^()]*\)$/, "");

const MARKS: Record<string, Mark> = {
  in: "in",
  inch: "in",
  inches: "in",
  '"': "in",
  mm: "mm",
  cm: "cm",
  m: "m",
  ft: "ft",
  feet: "ft",
  "'": "ft",
};

/** Letters and digits alone, in American spelling. The same few are asked for by every call, and kept. */
export function fold(text: string): string {
  let key = folded.get(text);
  if (key === undefined) {
    key = american(text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, ""));
    if (folded.size < MOST_KEPT && text.length < LONGEST_NEAR) folded.set(text, key);
  }
  return key;
}

const folded = new Map<string, string>();
const MOST_KEPT = 2000;
