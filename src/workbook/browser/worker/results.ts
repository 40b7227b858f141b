import { contains, sameArea, type Area } from "../../address";
import { CellError, type Outcome, type Result, type Scalar } from "../../engine/index";
import type { EditedWorkbook } from "../../edit/index";

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

/** What is told of formulas that are worked out, on sheets with these ids. */
export function resultsOf(worked: readonly Result[], ids: readonly string[]): Results {
  const results = nothing();
  for (const { sheet: at, row, column, area, values, formats } of worked) {
    const sheet = ids[at]!;
    const own = place(sheet, row, column);
    const value = values[0]?.[0] ?? 0;
    results.values.set(own, value);
    if (!sameArea(area, { top: row, left: column, bottom: row, right: column }))
      results.spills.set(own, { sheet, row, column, area, values });
    if (value instanceof CellError && value.code === "#SPILL!") results.messages.set(own, BLOCKED);
    values.forEach((line, y) =>
      line.forEach((value, x) => {
        const format = formats?.[y]?.[x];
        const message = value instanceof CellError ? value.message : undefined;
        if (!format && !message) return;
        const cell = place(sheet, area.top + y, area.left + x);
        if (message) results.messages.set(cell, message);
        if (format) results.formats.set(cell, format);
      }),
    );
  }
  return results;
}

const BLOCKED = "The cells that this formula would fill are not empty. Clear them, and it fills them.";

/** What is told of formulas that are not worked out. */
export function keptResults(workbook: EditedWorkbook, kept: Outcome["kept"]): Results {
  const ids = workbook.sheets.map(({ id }) => id);
  const results = nothing();
  for (const { sheet, row, column, reason } of kept) {
    const own = place(ids[sheet]!, row, column);
    results.values.set(own, workbook.storedValue(sheet, row, column));
    results.messages.set(own, `This formula is not worked out here: it ${reason}.`);
  }
  ids.forEach((id, sheet) => {
    for (const { row, column, value } of workbook.keptCells(sheet)) results.filled.set(place(id, row, column), value);
  });
  return results;
}

const nothing = (): Results => ({
  values: new Map(),
  filled: new Map(),
  spills: new Map(),
  messages: new Map(),
  formats: new Map(),
});

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
