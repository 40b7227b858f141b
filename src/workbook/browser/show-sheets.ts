import { ICommandService, mergeWorksheetSnapshotWithDefault } from "@univerjs/core";
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetActiveOperation,
  SetWorksheetNameMutation,
  SetWorksheetOrderMutation,
} from "@univerjs/sheets";
import type { SheetEdit } from "../edit/index";
import { sheetData } from "./snapshot";
import { written } from "./take-back";
import type { Grid } from "./univer";
import type { SheetsChanged } from "./worker/messages";
import type { Results } from "./worker/results";

/**
 * Shows in the grid what has become of the sheets in the workbook.
 * @param isTyped whether something was typed into a cell meanwhile, which then stays
 */
export function showSheets(
  { univer, api }: Grid,
  unitId: string,
  edit: SheetEdit,
  { added, sheets, cells }: SheetsChanged,
  results: Results,
  isTyped: (sheet: string, row: number, column: number) => boolean,
): void {
  const commands = univer.__getInjector().get(ICommandService);
  // The gate lets through what the page does itself.
  const run = (id: string, params: object): void =>
    void commands.syncExecuteCommand(id, { unitId, ...params }, { onlyLocal: true, fromFormula: true });
  const order = (): readonly string[] => api.getUniverSheet(unitId)!.getWorkbook().getSheetOrders();
  const { id } = edit;
  const place = sheets.filter(({ hasCells }) => hasCells).findIndex((sheet) => sheet.id === id);
  const show = (sheet: string): void => run(SetWorksheetActiveOperation.id, { subUnitId: sheet });
  if (edit.kind === "add") {
    run(InsertSheetMutation.id, { index: place, sheet: mergeWorksheetSnapshotWithDefault(sheetData(added!, results)) });
    show(id);
  } else if (edit.kind === "rename") {
    run(SetWorksheetNameMutation.id, { subUnitId: id, name: edit.name });
  } else if (edit.kind === "move") {
    run(SetWorksheetOrderMutation.id, { subUnitId: id, fromOrder: order().indexOf(id), toOrder: place });
  } else {
    const next = neighbor(order(), id, (sheet) => !sheets.find((one) => one.id === sheet)?.isHidden);
    const workbook = api.getUniverSheet(unitId)!.getWorkbook();
    if (next !== undefined && workbook.getActiveSheet()?.getSheetId() === id) show(next);
    run(RemoveSheetMutation.id, { subUnitId: id });
  }
  for (const { sheet, row, column, content } of cells) {
    if (isTyped(sheet, row, column)) continue;
    const cellValue = { [row]: { [column]: written(content) } };
    commands.syncExecuteCommand(SetRangeValuesMutation.id, { unitId, subUnitId: sheet, cellValue });
  }
}

/** The sheet that is seen once another one is gone: the next one, or the last. */
function neighbor(order: readonly string[], id: string, isSeen: (sheet: string) => boolean): string | undefined {
  const at = order.indexOf(id);
  return order.slice(at + 1).find(isSeen) ?? order.slice(0, at).reverse().find(isSeen);
}
