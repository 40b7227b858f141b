import { readFileSync } from "node:fs";

/** A published value, or a fact of the trade; `source` where there is one to name. */
export interface Reference {
  id: string;
  how: string;
  source?: string;
  fact?: string;
  values?: Record<string, unknown>;
  example?: Record<string, unknown>;
  examples?: unknown;
  rule?: string;
  formula?: string;
}

const all = JSON.parse(readFileSync(new URL("reference-values.json", import.meta.url), "utf8")) as Reference[];

/** The reference value of that name. */
export function reference(id: string): Reference {
  const found = all.find((entry) => entry.id === id);
  if (!found) throw new Error(`There is no reference value ${id}.`);
  return found;
}

/** For titles: where a value comes from. */
export const origin = (id: string): string => reference(id).source ?? reference(id).how;
