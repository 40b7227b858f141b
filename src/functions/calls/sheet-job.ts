import { fromDouble, type Unit } from "../../core/length";
import type { Effort, Solution } from "../../core/sheets";
import { optionalLength, word } from "../arguments";
import { readParts, readStock } from "../tables";
import { withUnit } from "./evaluate";
import { matchStock, type SheetRows, type SolidRows } from "./sheet-groups";
import { halvingsOf, solved } from "./solved";

/** Parts and the sheets that they are cut from, laid out. */
export interface SheetGroup extends SheetRows {
  solution: Solution;
}

export interface SheetJob {
  unit: Unit;
  effort: Effort;
  groups: readonly SheetGroup[];
  /** Parts of solid wood, which are laid out on nothing. */
  solid: readonly SolidRows[];
}

/**
 * Runs a cell function of `parts, stock, [kerf], [trim], [effort], [unit]`. The functions that take them share one
 * answer of equal input.
 */
export const withSheets = <R>(raw: readonly unknown[], body: (job: SheetJob) => R): R =>
  withUnit(ARGUMENTS, ([parts, stock, kerf, trim, effort], unit) => {
    const { sheets, solid } = matchStock(parts, stock, unit);
    const halvings = halvingsOf(sheets);
    const groups = sheets.map((rows, i) => ({
      ...rows,
      solution: solved(rows, { kerf, trim, effort, halvings: halvings[i]! }),
    }));
    return body({ unit, effort, groups, solid });
  })(raw);

const ARGUMENTS = [
  { name: "parts", read: readParts },
  { name: "stock", read: readStock },
  optionalLength("kerf", (unit) => fromDouble(unit === "in" ? 0.125 : 3.2)),
  optionalLength("trim", () => fromDouble(0)),
  word<Effort>("effort", ["standard", "quick", "thorough"]),
] as const;
