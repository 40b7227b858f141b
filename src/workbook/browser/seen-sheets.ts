import { ICommandService } from "@univerjs/core";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";
import { IEditorBridgeService } from "@univerjs/sheets-ui";
import type { Grid } from "./univer";

/** Goes to the next sheet that is seen, or the one before; stays at the last, and while a cell is being changed. */
export function goToSheet(grid: Grid, step: 1 | -1): void {
  if (grid.univer.__getInjector().get(IEditorBridgeService).isVisible().visible) return;
  const seen = seenSheets(grid);
  const next = seen[seen.indexOf(grid.api.getActiveWorkbook()!.getActiveSheet().getSheetId()) + step];
  if (next !== undefined) showSheet(grid, next);
}

/** The sheets that are seen, in their order, by their ids. */
export const seenSheets = ({ api }: Grid): string[] =>
  api
    .getActiveWorkbook()!
    .getSheets()
    .filter((sheet) => !sheet.isSheetHidden())
    .map((sheet) => sheet.getSheetId());

export function showSheet({ univer, api }: Grid, id: string): void {
  const unitId = api.getActiveWorkbook()!.getId();
  univer
    .__getInjector()
    .get(ICommandService)
    .syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId: id });
}
