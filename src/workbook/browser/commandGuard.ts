import { CanceledError, CommandType, ICommandService, ObjectMatrix, type ICellData } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { Grid } from "./univer";

/**
 * The file is written back with everything but its cells' contents as it was, so nothing else is changed here: a row
 * that nobody saves would be lost. Whatever would change more is stopped before it begins, and pasted styles are left
 * out. Widths and heights may be pulled, to read what a cell cuts off.
 * @param onRefused called when something was stopped
 */
export function allowCellsOnly({ univer }: Grid, onRefused: (what: "cut" | "other") => void): void {
  const commands = univer.__getInjector().get(ICommandService);
  commands.beforeCommandExecuted(({ id, type, params }, options) => {
    if (id === SetRangeValuesMutation.id && !options?.fromFormula) return withoutStyles(params as Values);
    if (type !== CommandType.COMMAND || !id.startsWith(PREFIX) || ALLOWED.has(id.slice(PREFIX.length))) return;
    onRefused(id === `${PREFIX}cut` ? "cut" : "other");
    throw new CanceledError();
  });
}

interface Values {
  cellValue?: Record<number, Record<number, ICellData | null>>;
}

function withoutStyles({ cellValue }: Values): void {
  if (!cellValue) return;
  new ObjectMatrix(cellValue).forValue((_row, _column, cell) => {
    if (cell) delete cell.s;
  });
}

const PREFIX = "sheet.command.";

const ALLOWED = new Set(
  `auto-clear-content auto-fill change-zoom-ratio clear-selection-content copy copy-down copy-formula-only copy-right
  delta-column-width delta-row-height expand-selection move-selection move-selection-enter-tab optional-paste paste
  paste-by-short-key paste-formula paste-value refill scroll-to-cell scroll-view scroll-view-reset select-all select-range
  set-range-values set-row-height set-scroll-relative set-worksheet-activate set-worksheet-col-width set-zoom-ratio`.split(
    /\s+/,
  ),
);
