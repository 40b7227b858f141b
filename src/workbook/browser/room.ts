import { CanceledError, ICommandService, ObjectMatrix, type ICellData, type IRange } from "@univerjs/core";
import {
  SetRangeValuesMutation,
  SetSelectionsOperation,
  SetWorksheetColumnCountMutation,
  SetWorksheetRowCountMutation,
} from "@univerjs/sheets";
import { MAX_COLUMNS, MAX_ROWS } from "../address";
import type { Grid } from "./univer";

/** How many rows and columns something has. */
export interface Size {
  rows: number;
  columns: number;
}

/** What a sheet of the file's format can hold (ECMA-376, 18.3.1.73 and the spreadsheet program's limits). */
const MOST: Size = { rows: MAX_ROWS, columns: MAX_COLUMNS };

/** What every sheet has, and what stays empty beyond all that is used. */
const LEAST: Size = { rows: 200, columns: 26 };
const AIR: Size = { rows: 100, columns: 13 };

/** How near the edge a person comes before there is more. */
const NEAR: Size = { rows: 10, columns: 3 };

/** How much of a sheet the grid has where so much of it is used: well beyond, for results spill and lists grow. */
export const roomFor = ({ rows, columns }: Size): Size => ({
  rows: Math.min(MOST.rows, Math.max(LEAST.rows, rows + AIR.rows)),
  columns: Math.min(MOST.columns, Math.max(LEAST.columns, columns + AIR.columns)),
});

/** Makes a sheet larger where so much of it does not fit well. It never gets smaller, and nobody undoes it. */
export function makeRoom({ univer, api }: Grid, unitId: string, subUnitId: string, used: Size): void {
  const sheet = api.getUniverSheet(unitId)?.getSheetBySheetId(subUnitId)?.getSheet();
  if (!sheet) return;
  const commands = univer.__getInjector().get(ICommandService);
  const [rowCount, columnCount] = [sheet.getRowCount(), sheet.getColumnCount()];
  const room = roomFor(used);
  const local = { onlyLocal: true, fromFormula: true };
  if (used.rows > rowCount - NEAR.rows && room.rows > rowCount)
    commands.syncExecuteCommand(SetWorksheetRowCountMutation.id, { unitId, subUnitId, rowCount: room.rows }, local);
  if (used.columns > columnCount - NEAR.columns && room.columns > columnCount)
    commands.syncExecuteCommand(
      SetWorksheetColumnCountMutation.id,
      { unitId, subUnitId, columnCount: room.columns },
      local,
    );
}

/**
 * Every cell that is gone to or written is one that is seen: the sheet gets larger, up to what a file can hold.
 * @param refuse told in words why a cell was not gone to
 */
export function keepRoom(grid: Grid, refuse: (words: string) => void): void {
  const commands = grid.univer.__getInjector().get(ICommandService);
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SetSelectionsOperation.id) return;
    const { unitId, subUnitId, selections } = params as Selected;
    for (const { range, primary } of selections) {
      const used = reach(range);
      if (used.rows > MOST.rows || used.columns > MOST.columns) {
        refuse(NO_SUCH_CELL);
        throw new CanceledError();
      }
      // A whole row or column ends where the sheet does, and wants no more of it.
      const sheet = grid.api.getUniverSheet(unitId)?.getSheetBySheetId(subUnitId)?.getSheet();
      if (sheet && (used.rows > sheet.getRowCount() || used.columns > sheet.getColumnCount()))
        makeRoom(grid, unitId, subUnitId, used);
      if (primary) makeRoom(grid, unitId, subUnitId, reach(primary));
    }
  });
  commands.onCommandExecuted(({ id, params }) => {
    if (id !== SetRangeValuesMutation.id) return;
    const { unitId, subUnitId, cellValue } = params as Written;
    const used = { rows: 0, columns: 0 };
    new ObjectMatrix(cellValue ?? {}).forValue((row, column, cell) => {
      if (!cell || (cell.v ?? cell.f ?? cell.p ?? cell.si) === null) return;
      used.rows = Math.max(used.rows, row + 1);
      used.columns = Math.max(used.columns, column + 1);
    });
    makeRoom(grid, unitId, subUnitId, used);
  });
}

/** The end of a range; one of whole rows or columns may leave the other side open. */
const reach = ({ endRow, endColumn }: Pick<IRange, "endRow" | "endColumn">): Size => ({
  rows: Number.isNaN(endRow) ? 0 : endRow + 1,
  columns: Number.isNaN(endColumn) ? 0 : endColumn + 1,
});

const NO_SUCH_CELL = "There is no such cell: a sheet ends with row 1,048,576 and with column XFD.";

interface Selected {
  unitId: string;
  subUnitId: string;
  selections: { range: IRange; primary?: IRange | null }[];
}

interface Written {
  unitId: string;
  subUnitId: string;
  cellValue?: Record<number, Record<number, ICellData | null>>;
}
