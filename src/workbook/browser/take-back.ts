import { SetRangeValuesMutation } from "@univerjs/sheets";
import { ICommandService, type ICellData } from "@univerjs/core";
import { isFormula, type Content } from "../edit/content";
import type { Book } from "./book";
import { cellData } from "./cell-data";
import type { Grid } from "./univer";
import type { Place } from "./worker/messages";

/**
 * Puts back into the grid what the workbook has in those cells. No step to be undone comes of it: to undo the step that
 * was taken back then changes nothing.
 */
export async function takeBack({ univer }: Grid, unitId: string, book: Book, cells: readonly Place[]): Promise<void> {
  const commands = univer.__getInjector().get(ICommandService);
  const contents = await book.contents(cells);
  cells.forEach(({ sheet, row, column }, i) => {
    const cellValue = { [row]: { [column]: written(contents[i]!) } };
    commands.syncExecuteCommand(SetRangeValuesMutation.id, { unitId, subUnitId: sheet, cellValue });
  });
}

const EMPTY = { v: null, t: null, f: null, si: null, p: null };

/** What the grid keeps of what a cell holds, and nothing of what stood there before. */
export const written = (content: Content): ICellData => ({
  ...EMPTY,
  ...(isFormula(content) ? { f: content.formula } : cellData(content)),
});
