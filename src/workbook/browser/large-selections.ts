import { CanceledError, ICommandService, type IRange } from "@univerjs/core";
import { ClearSelectionContentCommand, SheetsSelectionsService } from "@univerjs/sheets";
import { IEditorBridgeService, StatusBarController } from "@univerjs/sheets-ui";
import type { Grid } from "./univer";

/** The library writes down every cell of a selection, whether something stands there or not. */
const MOST_CELLS = 1_000_000;
/** Of more, only those are cleared that hold something. */
const MANY_CELLS = 10_000;

/**
 * A whole sheet may be selected, which can have more cells than any memory. Clearing it clears what is there; to copy
 * or fill so much is refused. To be called once a workbook is there.
 * @param refuse told in words why nothing was done
 */
export function boundSelections({ univer, api }: Grid, refuse: (words: string) => void): void {
  const injector = univer.__getInjector();
  const commands = injector.get(ICommandService);
  // It adds up what is selected, cell by cell, for a line that is not shown here.
  injector.get(StatusBarController).dispose();
  const selected = (): IRange[] =>
    injector
      .get(SheetsSelectionsService)
      .getCurrentSelections()
      .map(({ range }) => range);
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id === ClearSelectionContentCommand.id) {
      const ranges = (params as { ranges?: IRange[] } | undefined)?.ranges ?? selected();
      // Its own list has one cell each.
      if (cellsIn(ranges) <= Math.max(MANY_CELLS, ranges.length)) return;
      const held = holding(ranges);
      queueMicrotask(() => void (held.length > 0 && commands.executeCommand(id, { ...params, ranges: held })));
      throw new CanceledError();
    }
    // What is copied while a cell is written in is its text.
    if (
      !WRITERS.test(id) ||
      injector.get(IEditorBridgeService).isVisible().visible ||
      cellsIn(selected()) <= MOST_CELLS
    )
      return;
    refuse(TOO_MANY);
    throw new CanceledError();
  });

  const holding = (ranges: readonly IRange[]): IRange[] => {
    const cells: IRange[] = [];
    const sheet = api.getActiveWorkbook()?.getActiveSheet()?.getSheet();
    sheet?.getCellMatrix().forValue((row, column, cell) => {
      const isHeld = cell && (cell.v ?? cell.f ?? cell.si ?? cell.p ?? null) !== null;
      if (isHeld && ranges.some((range) => holds(range, row, column)))
        cells.push({ startRow: row, endRow: row, startColumn: column, endColumn: column });
    });
    return cells;
  };
}

const WRITERS = /^(sheet|univer)\.command\.(copy|cut|paste|auto-fill|refill|optional-paste)/;

const cellsIn = (ranges: readonly IRange[]): number =>
  ranges.reduce(
    (sum, range) => sum + (range.endRow - range.startRow + 1) * (range.endColumn - range.startColumn + 1),
    0,
  );

const holds = (range: IRange, row: number, column: number): boolean =>
  row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn;

const TOO_MANY = "These are more cells than can be copied or filled at once. Select only those that you mean.";
