import { Fault, naming } from "../../core/length";
import { readCell, type Cell } from "./cell";
import { isBlank } from "./typed";

/** A row of a range that holds anything at all, with its place in the range, from 1. */
export interface RangeRow {
  number: number;
  cells: readonly Cell[];
}

/** As many rows are worked out within some seconds; a shop has fewer. */
export const MOST_ROWS = 5_000;

/**
 * The rows of a range that hold more than blanks, and than the zeros that some hosts pass for them.
 * @throws Fault `table.tooLong`
 */
export function readFilled(table: string, raw: unknown): RangeRow[] {
  const rows = readRange(table, raw).filter(({ cells }) => cells.some(({ value }) => value !== 0 && !isBlank(value)));
  if (rows.length > MOST_ROWS + 1) throw new Fault("table.tooLong", { table, rows: rows.length - 1, most: MOST_ROWS });
  return rows;
}

/** The rows of a range that are not blank; a single cell is a range of one. */
export function readRange(table: string, raw: unknown): RangeRow[] {
  const rows = Array.isArray(raw) ? (raw as unknown[]).map((row) => (Array.isArray(row) ? row : [row])) : [[raw]];
  return rows
    .map((row, r) => ({ number: r + 1, cells: row.map((cell, c) => readPlaced(table, r, c, cell)) }))
    .filter(({ cells }) => cells.some(({ value }) => !isBlank(value)));
}

function readPlaced(table: string, row: number, column: number, raw: unknown): Cell {
  // Nearly all cells are bare; only what is wrapped can be at fault.
  if (typeof raw !== "object" || raw === null) return { value: raw };
  const cell = naming(`${table}, row ${row + 1}, column ${column + 1}`, () => readCell(raw));
  if (cell.value instanceof Object) throw new Fault("argument.unsupported", { argument: table, type: "object" });
  return cell;
}
