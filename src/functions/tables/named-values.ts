import { Fault } from "../../core/length";
import { readFilled, type Cell, isBlank, type Typed } from "../cells";
import { fold, namesAmong, readHeading, type Names } from "./heading";

/**
 * Reads a table of two columns, names and values. Blank values are left out, 0 is zero, and every name must be known.
 * @param table its name, for messages
 * @param open tells the name that one of a person's own stands under, where there may be such
 * @throws Fault `table.notTwoColumns`, `table.nameBlank`, `table.nameTwice`, `table.swapped`, `table.nameUnknown`,
 * `table.tooLong`
 */
export function readNamedValues<N extends string>(
  table: string,
  raw: unknown,
  known: readonly N[],
  open: (typed: string) => N | undefined = () => undefined,
): Map<N, Typed> {
  const names = namesAmong(known);
  const values = new Map<N, Typed>();
  const seen = new Map<N, number>();
  const rows = readFilled(table, raw);
  for (const [i, { number, cells }] of rows.entries()) {
    const [nameCell = { value: null }, value = { value: null }, ...others] = cells;
    if (others.some((cell) => !isBlank(cell.value))) {
      throw new Fault("table.notTwoColumns", { table, columns: cells.length });
    }
    if (i === 0 && isTitle(nameCell, value)) continue;
    const { name, mark } = readName(table, number, nameCell, value, names, open);
    const other = seen.get(name);
    if (other !== undefined) throw new Fault("table.nameTwice", { table, name, first: other, second: number });
    seen.set(name, number);
    if (!isBlank(value.value)) values.set(name, mark ? { ...value, mark } : value);
  }
  return values;
}

function readName<N extends string>(
  table: string,
  row: number,
  cell: Cell,
  value: Cell,
  names: Names<N>,
  open: (typed: string) => N | undefined,
) {
  const { name: known, mark, typed } = readHeading(table, cell, names);
  const name = known ?? open(typed);
  if (name !== undefined) return { name, mark };
  if (typeof value.value === "string" && names.get(value.value)) {
    throw new Fault("table.swapped", { table, row, name: value.value });
  }
  if (typed === "") throw new Fault("table.nameBlank", { table, row });
  throw new Fault("table.nameUnknown", { table, row, name: typed, nearest: names.nearest(typed).name });
}

/** A row of titles over the two columns. */
const isTitle = (name: Cell, value: Cell): boolean =>
  /^(standard|rate|name)s?$/.test(fold(String(name.value))) &&
  /^(value|price|amount)s?$/.test(fold(String(value.value)));
