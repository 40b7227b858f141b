import { Fault } from "../../core/length";
import { readFilled, readRange, type Cell, type RangeRow, isBlank, type Typed } from "../cells";
import { bareHeading, fold, namesAmong, readHeading, type Heading, type Names } from "./heading";
import type { Row, Table } from "./row";

/**
 * Reads a range with a header row. Columns stand in any order; blank rows are skipped; a numeric 0 is a blank, for
 * some hosts pass empty cells as 0.
 * @param table its name, for messages
 * @param required headings without which it is no such table
 * @param unless a heading beside which they are not required
 * @param rowless whether a table may have a header row alone
 * @throws Fault `table.blank`, `table.noHeader`, `table.headingTwice`, `table.headingMisspelled`, `table.headingMissing`,
 * `table.headingUnit`, `table.noRows`, `table.tooLong`
 */
export function readTable<N extends string>(
  table: string,
  raw: unknown,
  known: readonly N[],
  required: readonly N[],
  { unless, rowless = false }: { unless?: N; rowless?: boolean } = {},
): Table<N> {
  const [header, ...body] = readFilled(table, raw);
  if (!header) throw new Fault("table.blank", { table, required });
  const names = namesAmong(known);
  const headings = header.cells.map((cell) => readHeading(table, cell, names));
  const asked = unless && headings.some(({ name }) => name === unless) ? [] : required;
  checkHeadings(table, headings, header.cells, names, asked);
  const zeros: { row: number; heading: N }[] = [];
  const rows = body.map((row) => readRow(row, headings, zeros)).filter(({ cells }) => cells.size > 0);
  if (rows.length === 0 && !rowless) throw new Fault("table.noRows", { table });
  const numbers = new Set(rows.map(({ number }) => number));
  return { rows, headings, unread: unread(headings, body), zeros: zeros.filter(({ row }) => numbers.has(row)) };
}

/** Whether a range says nothing at all; some hosts pass empty cells as 0. */
export const isBlankTable = (table: string, raw: unknown): boolean =>
  readRange(table, raw).every(({ cells }) => cells.every(({ value }) => value === 0 || isBlank(value)));

function readRow<N extends string>(
  { number, cells }: RangeRow,
  headings: readonly Heading<N>[],
  zeros: { row: number; heading: N }[],
): Row<N> {
  const named = new Map<N, Typed>();
  headings.forEach(({ name, mark }, i) => {
    const cell = cells[i];
    if (!name || !cell || isBlank(cell.value)) return;
    if (cell.value === 0) zeros.push({ row: number, heading: name });
    else named.set(name, mark ? { ...cell, mark } : cell);
  });
  return { number, cells: named };
}

function checkHeadings<N extends string>(
  table: string,
  headings: readonly Heading<N>[],
  cells: readonly Cell[],
  names: Names<N>,
  required: readonly N[],
): void {
  const seen = new Set<N>();
  const own = new Set<string>();
  for (const { name, typed } of headings) {
    if (name ? seen.has(name) : own.has(fold(typed)))
      throw new Fault("table.headingTwice", { table, name: name ?? typed });
    if (name) seen.add(name);
    else if (fold(typed) !== "") {
      own.add(fold(typed));
      checkSpelling(table, typed, names);
    }
  }
  if (seen.size === 0)
    throw new Fault("table.noHeader", { table, required, first: cells.slice(0, 4).map(({ value }) => value) });
  const missing = required.filter((name) => !seen.has(name));
  if (missing.length > 0) throw new Fault("table.headingMissing", { table, missing });
}

/** A heading within two edits of one of ours is one of ours misspelled; shorter words are near to too many. */
function checkSpelling<N extends string>(table: string, typed: string, names: Names<N>): void {
  const bare = bareHeading(typed);
  if (fold(bare).length < 5) return;
  const { name, edits } = names.nearest(bare);
  if (edits <= 2) throw new Fault("table.headingMisspelled", { table, heading: typed, nearest: name });
}

/** Headings that say nothing to us, and columns that hold something under no heading at all. */
function unread<N extends string>(headings: readonly Heading<N>[], body: readonly RangeRow[]): string[] {
  const columns = body.reduce((most, { cells }) => Math.max(most, cells.length), headings.length);
  const holds = (c: number): boolean => body.some(({ cells }) => !isBlank(cells[c]?.value) && cells[c]?.value !== 0);
  return Array.from({ length: columns }, (_, c) => c)
    .filter((c) => !headings[c]?.name && (headings[c]?.typed || holds(c)))
    .map((c) => headings[c]?.typed || `number ${c + 1}, which has no heading,`);
}
