import { ICommandService, type ICellData } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import type { PlainCell } from "../../taskpane/host/host";
import { cellData } from "./cell-data";
import { makeRoom } from "./room";
import type { OpenInGrid } from "./session";
import type { SheetTabs } from "./sheet-tabs";
import type { TypedNumbers } from "./typed-numbers";
import type { Grid } from "./univer";

/**
 * Adds a sheet and fills it, as a person would by hand: both are undone by the same keys.
 * @returns its name
 */
export async function addSheet(
  grid: Grid,
  tabs: SheetTabs,
  opened: OpenInGrid,
  typed: TypedNumbers | undefined,
  wanted: string,
  rows: readonly (readonly PlainCell[])[],
): Promise<string> {
  const { id, name } = await tabs.insert(wanted);
  const { unitId, calculation } = opened;
  const columns = Math.max(...rows.map((row) => row.length));
  makeRoom(grid, unitId, id, { rows: rows.length, columns });
  const value = rows.map((cells, row) =>
    Array.from({ length: columns }, (_, column): ICellData => {
      const cell = cells[column] ?? null;
      if (cell === null) return {};
      if (typeof cell !== "object") return { ...cellData(cell), f: null };
      if ("formula" in cell) return { f: cell.formula, v: null };
      typed?.note(id, row, column, { content: cell.value, format: cell.format });
      return cellData(cell.value);
    }),
  );
  await grid.univer
    .__getInjector()
    .get(ICommandService)
    .executeCommand(SetRangeValuesCommand.id, {
      unitId,
      subUnitId: id,
      range: { startRow: 0, endRow: rows.length - 1, startColumn: 0, endColumn: columns - 1 },
      value,
    });
  await calculation.settled();
  return name;
}
