import { defaultStandards } from "../../core/drawer";
import { isRational, type Unit } from "../../core/length";
import { STANDARDS_HELP, usualInWords } from "../../guide/index";
import type { Inserted } from "../inserts";
import type { StandardName } from "./entries";

/** A value to begin with: what a button says, and the two cells that it gives. */
interface Value {
  label: string;
  inserted: Inserted;
}

/** What may be put in of a standard: each of its words; or what is usual in inches, and in millimeters. */
export function valuesOf(name: StandardName | "unit"): Value[] {
  const pair = (value: string): Value => ({ label: value, inserted: { cells: [name, value] } });
  if (name === "unit") return [pair("in"), pair("mm")];
  const { choices } = STANDARDS_HELP[name];
  if (choices) return choices.map(pair);
  const values = [...new Set((["in", "mm"] as const).map((unit) => valueIn(name, unit)))];
  return values.map((value) => (value === undefined ? { label: "name", inserted: { cells: [name] } } : pair(value)));
}

/** With its unit, for nobody knows yet which unit the job is in; undefined where nothing holds by itself. */
function valueIn(name: StandardName, unit: Unit): string | undefined {
  const usual: unknown = defaultStandards(unit)[name];
  if (usual === undefined) return undefined;
  const written = usualInWords(name, unit);
  const marked = (length: string): string => (/[a-z]/.test(length) ? length : `${length} ${unit}`);
  if (isRational(usual)) return marked(written);
  if (Array.isArray(usual) && usual.some(isRational)) return written.split(/; ?/).map(marked).join("; ");
  return written === "by material" ? undefined : written;
}

/** What holds where it is left out, in inches and in millimeters, as it is shown. */
export const usualOf = (name: StandardName | "unit"): string =>
  name === "unit"
    ? "in"
    : [...new Set((["in", "mm"] as const).map((unit) => valueIn(name, unit) ?? usualInWords(name, unit)))].join(" | ");
