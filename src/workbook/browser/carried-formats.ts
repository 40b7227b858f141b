import { IAutoFillService } from "@univerjs/sheets";
import { ISheetClipboardService } from "@univerjs/sheets-ui";
import { ObjectMatrix, type ICellData, type Nullable } from "@univerjs/core";
import { contentOfGrid } from "./cell-data";
import type { Reading } from "./entries";
import type { TypedFormats } from "./typed-formats";
import type { Grid } from "./univer";

/** What is copied or filled into cells brings the format along that its source is shown with, as what is typed does. */
export function carryFormats({ univer }: Grid, formats: TypedFormats, reading: Reading): void {
  const injector = univer.__getInjector();
  const note = (sheet: string, row: number, column: number, cell: Nullable<ICellData>, format?: string): void => {
    const content = contentOfGrid(cell || null, (cell || null)?.f ?? undefined);
    if (typeof content === "number") formats.note(sheet, row, column, { content, ...(format ? { format } : {}) });
  };
  injector.get(ISheetClipboardService).addClipboardHook({
    id: "carry-formats",
    onPasteCells(from, to, cells) {
      if (from) {
        const { rows, cols } = from.range;
        cells.forValue((y, x, cell) => {
          const [row, column] = [to.range.rows[y], to.range.cols[x]];
          if (row === undefined || column === undefined) return;
          const source = [rows[y % rows.length]!, cols[x % cols.length]!] as const;
          note(to.subUnitId, row, column, cell, reading.format(from.unitId, from.subUnitId, ...source));
        });
      }
      return { undos: [], redos: [] };
    },
  });
  injector.get(IAutoFillService).addHook({
    id: "carry-formats",
    onBeforeSubmit({ unitId, subUnitId, source, target }, _direction, _how, cells) {
      const from = (of: number[], all: number[], at: number): number => {
        const [first] = all;
        return of.includes(at) ? at : of[Math.abs(at - first!) % of.length]!;
      };
      new ObjectMatrix(cells).forValue((row, column, cell) => {
        const at = [from(source.rows, target.rows, row), from(source.cols, target.cols, column)] as const;
        note(subUnitId, row, column, cell, reading.format(unitId, subUnitId, ...at));
      });
    },
  });
}
