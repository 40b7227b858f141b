import type { ICellData } from "@univerjs/core";
import { CellError, type Scalar } from "../engine/index";
import { cellData } from "./cellData";
import type { Results } from "./results";
import { sheetId } from "./snapshot";

type Matrix<T> = Record<number, Record<number, T>>;
type BySheet<T> = Record<string, Matrix<T>>;

/**
 * The formulas' own cells whose value is another than before.
 * @param written cells whose formula was written, and whose value the grid therefore lacks
 */
export function changedValues(before: Results, now: Results, written: ReadonlySet<string>): BySheet<ICellData> {
  const sheets: BySheet<ICellData> = {};
  for (const [at, value] of now.values) {
    if (!written.has(at) && same(before.values.get(at), value)) continue;
    const [sheet, row, column] = at.split(" ").map(Number) as [number, number, number];
    set(sheets, sheet, row, column, cellData(value));
  }
  return sheets;
}

/** All spilled ranges and what stands in them, as the grid's library is told. */
export function arraysOf({ spills }: Results, unitId: string) {
  const ranges: BySheet<object> = {};
  const cells: BySheet<ICellData> = {};
  for (const { sheet, row, column, area, values } of spills) {
    const { top, left, bottom, right } = area;
    set(ranges, sheet, row, column, { startRow: top, startColumn: left, endRow: bottom, endColumn: right });
    values.forEach((line, y) => line.forEach((value, x) => set(cells, sheet, top + y, left + x, cellData(value))));
  }
  return {
    arrayFormulaRange: { [unitId]: ranges },
    arrayFormulaCellData: { [unitId]: cells },
    arrayFormulaEmbedded: {},
  };
}

function set<T>(sheets: BySheet<T>, sheet: number, row: number, column: number, value: T): void {
  ((sheets[sheetId(sheet)] ??= {})[row] ??= {})[column] = value;
}

const same = (a: Scalar | undefined, b: Scalar): boolean =>
  a instanceof CellError && b instanceof CellError ? a.code === b.code : a === b;
