import { fromDouble, type Unit } from "../../core/length";
import type { Effort, Solution } from "../../core/sheets";
import { passErrorsOn } from "./incoming";
import { cellError } from "./cell-error";
import { optionalLength } from "./length-argument";
import { matchStock, type SheetRows, type SolidRows } from "./sheet-groups";
import { readParts, readStock } from "./sheet-tables";
import { solved } from "./solved";
import { word } from "./word-argument";

/** Parts and the sheets that they are cut from, laid out. */
export interface SheetGroup extends SheetRows {
  solution: Solution;
}

export interface SheetJob {
  unit: Unit;
  groups: readonly SheetGroup[];
  /** Parts of solid wood, which are laid out on nothing. */
  solid: readonly SolidRows[];
}

/**
 * Runs a cell function of `parts, stock, [kerf], [trim], [effort], [unit]`. The functions that take them share one
 * answer of equal input.
 */
export function withSheets<R>(raw: readonly unknown[], body: (job: SheetJob) => R): R {
  let unit: Unit = "in";
  try {
    passErrorsOn(raw);
    unit = unitOf(raw[5]);
    return body(sheetJob(raw, unit));
  } catch (thrown) {
    throw cellError(thrown, unit);
  }
}

const kerfArgument = optionalLength("kerf", (unit) => fromDouble(unit === "in" ? 0.125 : 3.2));
const trimArgument = optionalLength("trim", () => fromDouble(0));
const effortArgument = word<Effort>("effort", ["standard", "quick", "thorough"]);
const unitArgument = word<Unit>("unit", ["in", "mm"]);

/** A bad unit is named in its turn, after the arguments to its left. */
function unitOf(raw: unknown): Unit {
  try {
    return unitArgument.read(raw, "in", []);
  } catch {
    return "in";
  }
}

function sheetJob(
  [partsRaw, stockRaw, kerfRaw, trimRaw, effortRaw, unitRaw]: readonly unknown[],
  unit: Unit,
): SheetJob {
  const parts = readParts(partsRaw, unit);
  const stock = readStock(stockRaw, unit);
  const kerf = kerfArgument.read(kerfRaw, unit, []);
  const trim = trimArgument.read(trimRaw, unit, []);
  const effort = effortArgument.read(effortRaw, unit, []);
  unitArgument.read(unitRaw, unit, []);
  const { sheets, solid } = matchStock(parts, stock, unit);
  return { unit, groups: sheets.map((rows) => ({ ...rows, solution: solved(rows, { kerf, trim, effort }) })), solid };
}
