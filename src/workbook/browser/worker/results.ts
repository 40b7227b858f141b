import { contains, type Area } from "../../address";
import type { Scalar } from "../../engine/index";

/**
 * What the engine last found, in the words of a grid. Everything goes by its place, and can be sent from the worker to
 * the page. On the way an error is no longer a `CellError`, but has all that it had.
 */
export interface Results {
  /** The values in cells that hold a formula. */
  values: Map<string, Scalar>;
  /** The values in cells that a formula fills which is not worked out, as the file has them. */
  filled: Map<string, Scalar>;
  /** What more than one cell shows, by the formula's cell. */
  spills: Map<string, Spill>;
  /** The sentence behind an error, or behind a formula that is not worked out. */
  messages: Map<string, string>;
  /** The number formats that results bring with them, for cells that have none. */
  formats: Map<string, string>;
}

export interface Spill {
  sheet: string;
  row: number;
  column: number;
  area: Area;
  values: readonly (readonly Scalar[])[];
}

export const place = (sheet: string, row: number, column: number): string => `${sheet} ${row} ${column}`;

/** The value in a cell that holds a formula, or that one has spilled into. */
export function valueAt({ values, filled, spills }: Results, sheet: string, row: number, column: number): Scalar {
  const at = place(sheet, row, column);
  const own = values.has(at) ? values.get(at) : filled.get(at);
  if (own !== undefined) return own;
  for (const { sheet: on, area, values } of spills.values())
    if (on === sheet && contains(area, row, column)) return values[row - area.top]![column - area.left] ?? null;
  return null;
}

/** How far spills reach, sheet by sheet. */
export function reaches({ spills }: Results): Map<string, { rows: number; columns: number }> {
  const sheets = new Map<string, { rows: number; columns: number }>();
  for (const { sheet, area } of spills.values()) {
    const { rows, columns } = sheets.get(sheet) ?? { rows: 0, columns: 0 };
    sheets.set(sheet, { rows: Math.max(rows, area.bottom + 1), columns: Math.max(columns, area.right + 1) });
  }
  return sheets;
}
