import { SetRangeValuesCommand, SheetsSelectionsService } from "@univerjs/sheets";
import { ISheetClipboardService, SheetPasteShortKeyCommand } from "@univerjs/sheets-ui";
import { CanceledError, ICommandService, type ICellData, type IRange, type Worksheet } from "@univerjs/core";
import { entryCell, type Reading } from "./entries";
import { readEntry } from "./entry";
import { pastedTable } from "./pasted-table";
import { makeRoom } from "./room";
import type { TypedFormats } from "./typed-formats";
import type { Grid } from "./univer";

/**
 * What is pasted from elsewhere is read text by text, as if it were typed. What was copied in this page is left to the
 * library, which knows its formulas.
 * @param refuse told in words why nothing was pasted
 */
export function readPasted(grid: Grid, formats: TypedFormats, reading: Reading, refuse: (words: string) => void): void {
  const { univer, api } = grid;
  const injector = univer.__getInjector();
  const commands = injector.get(ICommandService);
  const clipboard = injector.get(ISheetClipboardService);
  commands.beforeCommandExecuted(({ id, params }) => {
    if (!PASTES.test(id)) return;
    const { htmlContent, textContent } = (params ?? {}) as { htmlContent?: string; textContent?: string };
    const copyId = /data-copy-id="([^"]+)"/.exec(htmlContent ?? "")?.[1] ?? "";
    const copied = clipboard.copyContentCache().get(copyId);
    // The library would insert the rows that are missing, which is refused.
    if (copied || id !== SheetPasteShortKeyCommand.id) return makeRoomFor(copied ?? lastCopied());
    queueMicrotask(() => {
      paste(pastedTable({ html: htmlContent, text: textContent }));
    });
    throw new CanceledError();
  });

  /** Where what is pasted goes: the sheet that is seen, from the selection on. */
  const destination = () => {
    const book = api.getActiveWorkbook();
    const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
    if (!book || !range) return undefined;
    const sheet = book.getActiveSheet();
    return { sheet, range, unitId: book.getId(), subUnitId: sheet.getSheetId() };
  };
  const lastCopied = () => clipboard.copyContentCache().get(clipboard.copyContentCache().getLastCopyId() ?? "");
  const makeRoomFor = (copied: ReturnType<typeof lastCopied>): void => {
    const to = destination();
    if (!copied?.range || !to) return;
    makeRoom(grid, to.unitId, to.subUnitId, {
      rows: to.range.startRow + copied.range.rows.length,
      columns: to.range.startColumn + copied.range.cols.length,
    });
  };

  const paste = (texts: readonly (readonly string[])[]): void => {
    const to = destination();
    if (!to) return;
    if (texts.length === 0) return refuse(NOTHING);
    const { sheet, range, unitId, subUnitId } = to;
    const target = targetOf(range, texts);
    makeRoom(grid, unitId, subUnitId, { rows: target.endRow + 1, columns: target.endColumn + 1 });
    const words = whyNot(sheet.getSheet(), target, texts);
    if (words) return refuse(words);
    const value: Record<number, Record<number, ICellData>> = {};
    for (let row = target.startRow; row <= target.endRow; row++) {
      for (let column = target.startColumn; column <= target.endColumn; column++) {
        if (isCovered(sheet.getSheet(), row, column)) continue;
        const line = texts[(row - target.startRow) % texts.length]!;
        const text = line[(column - target.startColumn) % line.length]!;
        const entry = readEntry(text, reading.cell(unitId, subUnitId, row, column));
        formats.note(subUnitId, row, column, entry);
        (value[row] ??= {})[column] = entryCell(entry);
      }
    }
    void commands.executeCommand(SetRangeValuesCommand.id, { unitId, subUnitId, range: target, value });
    sheet.getRange(target).activate();
  };
}

/** A table goes where the selection begins; a selection that it fills several times over is filled. */
function targetOf({ startRow, startColumn, endRow, endColumn }: IRange, texts: readonly (readonly string[])[]): IRange {
  const [rows, columns] = [texts.length, texts[0]!.length];
  const [down, across] = [endRow - startRow + 1, endColumn - startColumn + 1];
  const fills = down % rows === 0 && across % columns === 0;
  const [height, width] = fills ? [down, across] : [rows, columns];
  return { startRow, startColumn, endRow: startRow + height - 1, endColumn: startColumn + width - 1 };
}

function whyNot(
  sheet: Worksheet,
  { startRow, startColumn, endRow, endColumn }: IRange,
  texts: readonly (readonly string[])[],
): string | undefined {
  if (endRow >= sheet.getRowCount() || endColumn >= sheet.getColumnCount()) {
    return `Nothing was pasted: ${texts.length} rows of ${texts[0]!.length} do not fit on this sheet from here.`;
  }
  for (const { startRow: top, startColumn: left, endRow: bottom, endColumn: right } of sheet.getMergeData()) {
    const isOutside = top > endRow || bottom < startRow || left > endColumn || right < startColumn;
    const isAlone = texts.length === 1 && texts[0]!.length === 1;
    if (!isOutside && !isAlone) return "Nothing was pasted: there are joined cells, which a table does not fit into.";
  }
  return undefined;
}

/** A cell that another one of the joined cells stands for. */
function isCovered(sheet: Worksheet, row: number, column: number): boolean {
  const merged = sheet.getMergedCell(row, column);
  return merged !== null && merged !== undefined && (merged.startRow !== row || merged.startColumn !== column);
}

const PASTES = /^(?:sheet|univer)\.command\.(?:optional-)?paste/;
const NOTHING = "There is nothing to paste that could stand in a cell.";
