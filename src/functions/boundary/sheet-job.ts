import { fromDouble, type Rational, type Unit } from "../../core/length";
import { solve, type Effort, type Solution } from "../../core/sheets";
import { passErrorsOn } from "./incoming";
import { cellError } from "./cell-error";
import { optionalLength } from "./length-argument";
import { readParts, readStock, stockFor, type PartRow, type StockRow } from "./sheet-tables";
import { word } from "./word-argument";

/** Parts and stock that have to do with each other: of one material and thickness, as a rule. */
export interface SheetGroup {
  parts: PartRow[];
  stock: StockRow[];
  solution: Solution;
}

export interface SheetJob {
  unit: Unit;
  groups: readonly SheetGroup[];
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
  const groups = grouped(parts, stock, unit).map((group) => ({
    ...group,
    solution: solved(group, kerf, trim, effort),
  }));
  return { unit, groups };
}

/** Rows of stock that any part may choose between go together, with all the parts that may be cut from them. */
function grouped(parts: readonly PartRow[], stock: readonly StockRow[], unit: Unit) {
  const groups: { parts: PartRow[]; stock: Set<StockRow> }[] = [];
  const choices = new Map<PartRow, StockRow[]>();
  for (const part of parts) {
    const choice = stockFor(part, stock, unit);
    choices.set(part, choice);
    const touched = groups.filter((group) => choice.some((row) => group.stock.has(row)));
    const merged = { parts: touched.flatMap((group) => group.parts), stock: new Set<StockRow>(choice) };
    for (const group of touched) {
      group.stock.forEach((row) => merged.stock.add(row));
      groups.splice(groups.indexOf(group), 1);
    }
    merged.parts.push(part);
    groups.push(merged);
  }
  return groups
    .map((group) => ({ parts: inOrder(group.parts), stock: inOrder([...group.stock]) }))
    .sort((a, b) => a.stock[0]!.row - b.stock[0]!.row)
    .map((group) => ({
      stock: group.stock,
      parts: group.parts.map((part) => ({ ...part, from: choices.get(part)!.map((row) => group.stock.indexOf(row)) })),
    }));
}

const inOrder = <T extends { row: number }>(rows: readonly T[]): T[] => [...rows].sort((a, b) => a.row - b.row);

/** Answers to the last questions, by what was asked: equal input gives the equal answer, so that asking once will do. */
const memo = new Map<string, Solution>();
const REMEMBERED = 24;

function solved(
  { parts, stock }: { parts: PartRow[]; stock: StockRow[] },
  kerf: Rational,
  trim: Rational,
  effort: Effort,
): Solution {
  const key = JSON.stringify([parts, stock, kerf, trim, effort], (_, value: unknown) =>
    typeof value === "bigint" ? `${value}` : value,
  );
  const known = memo.get(key);
  if (known) return known;
  const solution = solve({ parts, stock, kerf, trim }, effort);
  if (memo.size >= REMEMBERED) memo.delete(memo.keys().next().value!);
  memo.set(key, solution);
  return solution;
}
