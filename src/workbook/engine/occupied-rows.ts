import type { Cell } from "./engine";
import { firstFrom } from "./first-from";

/** The rows of one sheet in which a cell holds something of its own: what lies between them need not be gone through. */
export class OccupiedRows {
  private rows: number[] | undefined;

  constructor(private readonly cells: ReadonlyMap<number, Cell>) {}

  /** A cell of this row holds something from now on. */
  add(row: number): void {
    if (!this.rows) return;
    const at = rowFrom(this.rows, row);
    if (this.rows[at] !== row) this.rows.splice(at, 0, row);
  }

  /** Those from one row to another, rising; how many there are is known without copying them. */
  between(top: number, bottom: number): { count: number; rows: () => number[] } {
    const rows = (this.rows ??= sortedRows(this.cells));
    const from = rowFrom(rows, top);
    const to = rowFrom(rows, bottom + 1);
    return { count: to - from, rows: () => rows.slice(from, to) };
  }
}

function sortedRows(cells: ReadonlyMap<number, Cell>): number[] {
  const rows: number[] = [];
  let isSorted = true;
  for (const { row } of cells.values()) {
    const last = rows.at(-1) ?? -1;
    if (row === last) continue;
    if (row < last) isSorted = false;
    rows.push(row);
  }
  // Files hold their cells row by row.
  return isSorted ? rows : [...new Set(rows)].sort((a, b) => a - b);
}

const rowFrom = (rows: readonly number[], row: number): number =>
  firstFrom(rows.length, (place) => rows[place]! >= row);
