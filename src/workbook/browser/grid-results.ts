import type { ICellData } from "@univerjs/core";
import { cellData } from "./cell-data";
import type { Results } from "./worker/results";

type Matrix<T> = Record<number, Record<number, T>>;
type BySheet<T> = Record<string, Matrix<T>>;

/** Formulas' own cells with their values, as the grid's library is told. */
export function valuesOf({ values }: Results, places: Iterable<string>): BySheet<ICellData> {
  const sheets: BySheet<ICellData> = {};
  for (const at of places) {
    const value = values.get(at);
    const [sheet, row, column] = at.split(" ") as [string, string, string];
    if (value !== undefined) set(sheets, sheet, Number(row), Number(column), cellData(value));
  }
  return sheets;
}

/** All spilled ranges and what stands in them, as the grid's library is told. */
export function arraysOf({ spills, filled }: Results, unitId: string) {
  const ranges: BySheet<object> = {};
  const cells: BySheet<ICellData> = {};
  for (const { sheet, row, column, area, values } of spills.values()) {
    const { top, left, bottom, right } = area;
    set(ranges, sheet, row, column, { startRow: top, startColumn: left, endRow: bottom, endColumn: right });
    values.forEach((line, y) => line.forEach((value, x) => set(cells, sheet, top + y, left + x, cellData(value))));
  }
  for (const [at, value] of filled) {
    const [sheet, row, column] = at.split(" ") as [string, string, string];
    set(cells, sheet, Number(row), Number(column), cellData(value));
  }
  return {
    arrayFormulaRange: { [unitId]: ranges },
    arrayFormulaCellData: { [unitId]: cells },
    arrayFormulaEmbedded: {},
  };
}

function set<T>(sheets: BySheet<T>, sheet: string, row: number, column: number, value: T): void {
  ((sheets[sheet] ??= {})[row] ??= {})[column] = value;
}
