import type { Fault } from "../../core/length";
import { STANDARDS_HELP } from "../../guide/index";

/** A cell of one of a call's tables: which table, and where in it, from 0. */
export interface Place {
  table: number;
  row: number;
  column: number;
}

interface Finding {
  where: string;
  /** What it is about, the likeliest first. */
  about: readonly string[];
  /** Its remedy, and what was found: standards and headings stand in it by their names. */
  text: string;
  fault: Fault | undefined;
}

/** The labels of the openings, and the row of each in its table, the first being 1. */
interface Openings {
  labels: readonly string[];
  rows: readonly number[];
}

const TABLES = ["openings", "standards", "stock", "rates"];

/**
 * The cell that a finding is about: the one that its fault names; or, of the names in its text, the first that has a
 * cell of its own, in the row of its opening or in the standards; or that opening's label.
 * @param raw the tables in the order of TABLES
 * @returns undefined where it is about what stands in no cell, as a price that is missing
 */
export function placeOf(
  { where, about, text, fault }: Finding,
  raw: readonly unknown[],
  openings: Openings,
): Place | undefined {
  const tables = raw.map((one) => (Array.isArray(one) ? (one as unknown[][]) : []));
  const named = fault && ofFault(fault, tables);
  if (named) return named;
  const table = TABLES.indexOf(where.split(",")[0]!);
  if (table > 0) return ofTable(table, tables[table] ?? [], text);
  const row = rowOf(where, openings);
  for (const name of [...about, ...namesIn(text)]) {
    const column = columnOf(tables[0] ?? [], name);
    if (row !== undefined && column >= 0 && !isEmpty(tables[0]![row]?.[column])) return { table: 0, row, column };
    const own = pairOf(tables[1] ?? [], name);
    if (own) return { table: 1, ...own };
  }
  if (row === undefined) return headerOf(tables[0] ?? [], text);
  return { table: 0, row, column: Math.max(0, columnOf(tables[0]!, "opening")) };
}

/** What was read when it went wrong is told as `openings, row 3, Width`, or `standards, front gap`. */
function ofFault({ data }: Fault, tables: readonly unknown[][][]): Place | undefined {
  const told = data as { argument?: string; table?: string; row?: number };
  const [name = told.table, ...more] = told.argument?.split(", ") ?? [];
  const table = TABLES.indexOf(name ?? "");
  const cells = tables[table];
  if (!cells) return undefined;
  const numbered = /^row (\d+)$/.exec(more[0] ?? "")?.[1] ?? told.row;
  if (numbered !== undefined) {
    const row = Number(numbered) - 1;
    if (!cells[row]) return undefined;
    return { table, row, column: Math.max(0, more[1] === undefined ? 0 : columnOf(cells, more[1])) };
  }
  const pair = more[0] === undefined ? undefined : pairOf(cells, more[0]);
  return pair && { table, ...pair };
}

/** In tables of names and values the row that the text names; in stock the heading. */
function ofTable(table: number, cells: readonly unknown[][], text: string): Place | undefined {
  const names = TABLES[table] === "stock" ? [] : namesAt(cells);
  const said = names.find(({ name }) => contains(fold(text), name));
  if (said) return { table, row: said.row, column: 1 };
  return TABLES[table] === "stock" && cells.length > 0
    ? (headerOf(cells, text, table) ?? { table, row: 0, column: 0 })
    : undefined;
}

function rowOf(where: string, { labels, rows }: Openings): number | undefined {
  const [first] = where.split(", ");
  const own = labels.indexOf(first!);
  // A drawer is called as its opening is, with its number.
  const place = own >= 0 ? own : labels.indexOf(first!.replace(/\d+$/, ""));
  return place < 0 ? undefined : rows[place]! - 1;
}

/** The heading that a text names, of a table that cannot be read or has no row for it. */
function headerOf(cells: readonly unknown[][], text: string, table = 0): Place | undefined {
  const row = cells.findIndex((one) => one.some((cell) => !isEmpty(cell)));
  if (row < 0) return undefined;
  const words = fold(text);
  const column = cells[row]!.findIndex((cell) => !isEmpty(cell) && contains(words, heading(cell)));
  return column < 0 ? undefined : { table, row, column };
}

/** Standards and headings of openings in the order in which a text names them, the longer of two at one place first. */
function namesIn(text: string): string[] {
  const words = fold(text);
  return NAMES.map((name) => ({ name, at: ` ${words} `.indexOf(` ${name} `) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at || b.name.length - a.name.length)
    .map(({ name }) => name);
}

const fold = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
const heading = (cell: unknown): string => fold(String(cell).replace(/\(.*\)\s*$/, ""));
const contains = (words: string, name: string): boolean => name !== "" && ` ${words} `.includes(` ${name} `);
const isEmpty = (cell: unknown): boolean => cell === "" || cell === null || cell === undefined || cell === 0;

const NAMES = [
  ...Object.keys(STANDARDS_HELP),
  "width",
  "height",
  "depth",
  "drawers",
  "quantity",
  "case width",
  "box heights",
  "cabinet",
].map(fold);

/** Of the first row that holds such a heading. */
function columnOf(cells: readonly unknown[][], name: string): number {
  const header = cells.find((row) => row.some((cell) => !isEmpty(cell))) ?? [];
  return header.findIndex((cell) => heading(cell) === fold(name));
}

const namesAt = (cells: readonly unknown[][]): { name: string; row: number }[] =>
  cells.map(([name], row) => ({ name: heading(name ?? ""), row })).filter(({ name }) => name !== "");

/** The value beside a name. */
function pairOf(cells: readonly unknown[][], name: string): Omit<Place, "table"> | undefined {
  const found = namesAt(cells).find((one) => one.name === fold(name));
  return found && { row: found.row, column: 1 };
}
