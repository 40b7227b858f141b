import { expect } from "vitest";

export type Table = unknown[][];

/** The recalculation's cell, row or table as what a function must give: every number to 1e-9, other cells as they are. */
export function near(cell: unknown): unknown {
  if (Array.isArray(cell)) return cell.map(near);
  const value = numbers(cell);
  return typeof value === "number" ? expect.closeTo(value, 9) : value;
}

/** Fractions, and decimals of twenty places, as numbers. */
export function numbers(cell: unknown): unknown {
  if (Array.isArray(cell)) return cell.map(numbers);
  const [, numerator, denominator] = /^(-?\d+)\/(\d+)$/.exec(String(cell)) ?? [];
  if (numerator) return Number(numerator) / Number(denominator);
  return /^-?\d+\.\d{20}$/.test(String(cell)) ? Number(cell) : cell;
}

/** Those columns alone, in that order, header included. */
export function columns(table: Table, headings: readonly unknown[]): Table {
  const places = headings.map((heading) => table[0]!.indexOf(heading));
  return table.map((row) => places.map((place) => row[place]));
}

/** Operation, value and pieces in the recalculation's order; heights of blades and depths of sockets stand apart. */
export function settings(table: Table): Table {
  return table
    .slice(1)
    .filter(
      ([, operation, setting]) =>
        operation !== "Caution" && !(operation === "Bottom slots" && !/^Stop/.test(String(setting))),
    )
    .map(([, operation, setting, value, pieces]) => [named(String(operation), String(setting)), value, pieces])
    .sort(([a, u, m], [b, v, n]) => (a === b ? Number(u) - Number(v) || Number(m) - Number(n) : a! < b! ? -1 : 1));
}

function named(operation: string, setting: string): string {
  if (setting.startsWith("Blade height") && operation !== "Runner groove") return `${operation} blade`;
  return setting === "Socket depth" ? `${operation} sockets` : operation;
}

/** Item, size and quantity, equal items of one size together, by name and size. */
export function sums(rows: Table): Table {
  const found = new Map<string, unknown[]>();
  for (const [item, size, many] of rows) {
    const key = JSON.stringify([item, size]);
    found.set(key, [item, size, Number(found.get(key)?.[2] ?? 0) + Number(many)]);
  }
  return [...found.values()].sort(([a, x], [b, y]) => (a === b ? Number(x) - Number(y) : a! < b! ? -1 : 1));
}
