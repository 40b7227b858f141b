import { toBoolean, toNumber } from "../coercion";
import type { ErrorCode } from "../../formula/error-codes";
import type { Evaluator, Ordinary } from "../kinds";
import { compare } from "../operators";
import {
  CellError,
  fail,
  isScalar,
  Reference,
  Unsupported,
  type Scalar,
  type Scope,
  type SheetArea,
  type Value,
} from "../values";
import { spend } from "../budget";
import { firstFrom } from "../first-from";
import { Wildcard } from "../wildcards";
import { Searched } from "./searched";

/** Looking a value up in a row, a column or a table. */
export const lookup: Record<string, Ordinary> = {
  MATCH: {
    signature: "VRV",
    call(args, evaluator) {
      const kind = args[2] === undefined ? 1 : toNumber(args[2] as Scalar);
      if (kind instanceof CellError) return kind;
      const found = find(
        scalar(args[0]),
        line(evaluator, args[1], "#N/A"),
        kind === 0 ? "exact" : kind > 0 ? "sorted" : "falling",
      );
      return found instanceof CellError ? found : found + 1;
    },
  },

  XMATCH: {
    signature: "VAVV",
    call(args, evaluator) {
      const found = modern(scalar(args[0]), line(evaluator, args[1]), scalar(args[2]), scalar(args[3]));
      return found instanceof CellError ? found : found + 1;
    },
  },

  VLOOKUP: { signature: "VRVV", call: (args, evaluator, scope) => inTable(args, evaluator, scope, true) },
  HLOOKUP: { signature: "VRVV", call: (args, evaluator, scope) => inTable(args, evaluator, scope, false) },

  /** The last that is not beyond, in the longer side of a table where no results are given. */
  LOOKUP: {
    signature: "VAA",
    call(args, evaluator) {
      if (args[1] instanceof CellError) return args[1];
      const table = evaluator.matrix(args[1]);
      const across = table[0]!.length > table.length;
      const keys = args[2] === undefined ? (across ? table[0]! : firstColumn(table)) : line(evaluator, args[1], "#N/A");
      const found = find(scalar(args[0]), keys, "sorted");
      if (found instanceof CellError) return found;
      if (args[2] === undefined) return across ? table.at(-1)![found]! : table[found]!.at(-1)!;
      const results = line(evaluator, args[2], "#N/A");
      return results instanceof CellError
        ? results
        : (results[found] ?? (found < results.length ? null : fail("#N/A")));
    },
  },

  XLOOKUP: {
    signature: "VAARVV",
    call(args, evaluator) {
      const keys = evaluator.matrix(args[1]);
      const found = modern(scalar(args[0]), line(evaluator, args[1]), scalar(args[4]), scalar(args[5]));
      const results = evaluator.matrix(args[2]);
      const upright = keys[0]!.length === 1 && keys.length === results.length;
      if (!upright && (keys.length !== 1 || results[0]!.length !== keys[0]!.length)) return fail("#VALUE!");
      if (found instanceof CellError) return found.code === "#N/A" && args[3] !== undefined ? args[3] : found;
      if (args[2] instanceof Reference) return lineOf(args[2].areas[0]!, found, upright);
      return upright ? [results[found]!] : results.map((row) => [row[found]!]);
    },
  },
};

/** A found row or column stays a range, so that `A1:XLOOKUP(…)` goes up to it. */
function lineOf(area: SheetArea, found: number, upright: boolean): Reference {
  return upright
    ? Reference.single(area.sheet, { ...area, top: area.top + found, bottom: area.top + found })
    : Reference.single(area.sheet, { ...area, left: area.left + found, right: area.left + found });
}

type Way = "exact" | "sorted" | "falling";

function scalar(value: Value): Scalar {
  return isScalar(value) ? value : null;
}

/** The single row or column that is searched. */
function line(evaluator: Evaluator, value: Value, otherwise: ErrorCode = "#VALUE!"): Scalar[] | CellError {
  if (value instanceof CellError) return value;
  const matrix = evaluator.matrix(value);
  if (matrix.length === 1) return matrix[0]!;
  return matrix[0]!.length === 1 ? firstColumn(matrix) : fail(otherwise);
}

function find(wanted: Scalar, values: Scalar[] | CellError, way: Way): number | CellError {
  if (wanted instanceof CellError) return wanted;
  if (values instanceof CellError) return values;
  const key = wanted ?? 0;
  const found = way === "exact" ? exact(key, values, true) : nearest(key, values, way);
  return found < 0 ? fail("#N/A") : found;
}

function exact(wanted: Scalar, values: readonly Scalar[], wild: boolean): number {
  if (wild && typeof wanted === "string" && /[*?~]/.test(wanted)) {
    const pattern = new Wildcard(wanted);
    return counted(
      values,
      values.findIndex((value) => typeof value === "string" && pattern.matches(value)),
    );
  }
  return wanted === null ? -1 : Searched.of(values).first(wanted);
}

/** What was gone through on the way to the place found, counted. */
function counted(values: readonly Scalar[], found: number): number {
  spend(found < 0 ? values.length : found + 1);
  return found;
}

/**
 * The last value that is not beyond the wanted one, as a search by halves finds it; values of another kind are passed
 * over. Where the list is not in order, what the halves happen on is anybody's guess, but for a value beyond them all.
 */
function nearest(wanted: Scalar, values: Scalar[], way: Way): number {
  const sign = way === "sorted" ? 1 : -1;
  const kind = Searched.of(values).ofKind(typeof wanted as "number" | "string" | "boolean");
  const usable = kind.at;
  const low = byHalvesFrom(usable.length, (i) => compare(values[usable[i]!]!, wanted) * sign > 0);
  if (low < usable.length || kind.reachesBeyond(wanted, sign)) kind.requireOrder(sign);
  return low === 0 ? -1 : usable[low - 1]!;
}

function byHalvesFrom(count: number, isSo: (place: number) => boolean): number {
  spend(Math.ceil(Math.log2(count + 2)));
  return firstFrom(count, isSo);
}

/** XMATCH and XLOOKUP: 0 exact, -1 or the next smaller, 1 or the next larger, 2 wildcards; from either end or by halves. */
function modern(wanted: Scalar, values: Scalar[] | CellError, mode: Scalar, order: Scalar): number | CellError {
  const kind = toNumber(mode);
  const direction = toNumber(order ?? 1);
  if (wanted instanceof CellError) return wanted;
  if (values instanceof CellError) return values;
  if (kind instanceof CellError) return kind;
  if (direction instanceof CellError) return direction;
  if (![-1, 0, 1, 2].includes(kind) || ![-2, -1, 1, 2].includes(direction)) return fail("#VALUE!");
  if (Math.abs(direction) === 2) return kind === 2 ? fail("#VALUE!") : byHalves(wanted, values, kind, direction / 2);
  const backward = direction === -1;
  const list = backward ? Searched.of(values).backward : values;
  let found =
    kind === 2 ? exact(wanted, list, true) : wanted === null ? list.indexOf(null) : exact(wanted, list, false);
  if (found < 0 && (kind === -1 || kind === 1)) found = Searched.of(list).nearest(wanted ?? 0, kind);
  if (found < 0) return fail("#N/A");
  return backward ? values.length - 1 - found : found;
}

/** A falling list is gone through from its end, as a rising one. Of equal values the first on that way is found. */
function byHalves(wanted: Scalar, values: Scalar[], kind: number, sign: number): number | CellError {
  const all = Searched.of(values).ofKind("any");
  if (wanted === null || all.hasErrors) throw new Unsupported("searches by halves for a blank or among errors");
  all.requireOrder(sign);
  const { length } = all.at;
  const place = (i: number): number | undefined => all.at[sign < 0 ? length - 1 - i : i];
  const next = byHalvesFrom(length, (i) => compare(values[place(i)!]!, wanted) >= 0);
  if (next < length && compare(values[place(next)!]!, wanted) === 0) return place(next)!;
  return (kind === 0 ? undefined : place(kind < 0 ? next - 1 : next)) ?? fail("#N/A");
}

function inTable(args: Value[], evaluator: Evaluator, _scope: Scope, upright: boolean): Value {
  const at = toNumber(scalar(args[2]));
  const sorted = args[3] === undefined ? true : toBoolean(scalar(args[3]));
  if (at instanceof CellError) return at;
  if (sorted instanceof CellError) return sorted;
  if (args[1] instanceof CellError) return args[1];
  if (typeof args[1] === "string") return fail("#VALUE!");
  const table = args[1] instanceof Reference ? evaluator.cells.matrix(args[1].areas[0]!) : evaluator.matrix(args[1]);
  const keys = upright ? firstColumn(table) : table[0]!;
  const found = find(scalar(args[0]), keys, sorted ? "sorted" : "exact");
  if (at < 1) return fail("#VALUE!");
  if (Math.floor(at) > (upright ? table[0]!.length : table.length)) return fail("#REF!");
  if (found instanceof CellError) return found;
  return upright ? table[found]![Math.floor(at) - 1]! : table[Math.floor(at) - 1]![found]!;
}

/** The same table is searched by thousands of formulas; its first column is taken out once. */
const firstColumns = new WeakMap<Scalar[][], Scalar[]>();

function firstColumn(table: Scalar[][]): Scalar[] {
  let column = firstColumns.get(table);
  if (!column) firstColumns.set(table, (column = table.map((row) => row[0]!)));
  return column;
}
