import { FormulaDataModel } from "@univerjs/engine-formula";
import { IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import type { Content } from "../edit/index";
import { contentOfGrid } from "./cell-data";
import type { Grid } from "./univer";

/** What a person put into a cell, as the grid has it. */
export function gridContent({ univer }: Grid, unitId: string, sheet: string, row: number, column: number): Content {
  const injector = univer.__getInjector();
  const workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  const cell = workbook?.getSheetBySheetId(sheet)?.getCellRaw(row, column) ?? undefined;
  const formula =
    cell?.f || cell?.si ? injector.get(FormulaDataModel).getFormulaStringByCell(row, column, sheet, unitId) : undefined;
  return contentOfGrid(cell, formula ?? undefined);
}
