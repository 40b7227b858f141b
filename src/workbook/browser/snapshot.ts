import { BooleanNumber, LocaleType, type ICellData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import { isFormula } from "../edit/content";
import type { SheetLook } from "../look/index";
import { cellData } from "./cell-data";
import { gridStyles } from "./grid-styles";
import { roomFor } from "./room";
import type { OpenedBook, OpenedSheet } from "./worker/messages";
import { valueAt, type Results } from "./worker/results";

/** The workbook as the grid wants it; sheets have the same ids there. Sheets without cells (charts) stay in the file alone. */
export function snapshot(opened: OpenedBook, id: string, name: string): IWorkbookData {
  const sheets = opened.sheets.filter(({ hasCells }) => hasCells);
  return {
    id,
    name,
    appVersion: "0.25.1",
    locale: LocaleType.EN_US,
    styles: gridStyles(opened.styles),
    sheetOrder: sheets.map((sheet) => sheet.id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheetData(sheet, opened.results)])),
  };
}

/** One sheet as the grid wants it. */
export function sheetData(sheet: OpenedSheet, results: Results): Partial<IWorksheetData> & { id: string } {
  const look = sheet.look!;
  const cells: Record<number, Record<number, ICellData>> = {};
  const at = (row: number, column: number): ICellData => ((cells[row] ??= {})[column] ??= {});
  const size = {
    rows: Math.max(look.selected.row + 1, look.frozen.rows),
    columns: Math.max(look.selected.column + 1, look.frozen.columns),
  };
  const reach = (row: number, column: number): void => {
    size.rows = Math.max(size.rows, row + 1);
    size.columns = Math.max(size.columns, column + 1);
  };
  for (const [place, style] of look.cells) {
    const [row, column] = place.split(" ").map(Number) as [number, number];
    at(row, column).s = String(style);
    reach(row, column);
  }
  for (const { row, column, content } of sheet.cells) {
    const value = isFormula(content) ? valueAt(results, sheet.id, row, column) : content;
    Object.assign(at(row, column), cellData(value), isFormula(content) ? { f: content.formula } : {});
    reach(row, column);
  }
  for (const { sheet: on, area } of results.spills.values()) if (on === sheet.id) reach(area.bottom, area.right);
  const room = roomFor(size);
  return {
    id: sheet.id,
    name: sheet.name,
    hidden: sheet.isHidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    cellData: cells,
    rowCount: room.rows,
    columnCount: room.columns,
    defaultColumnWidth: look.defaultWidth,
    defaultRowHeight: look.defaultHeight,
    showGridlines: look.gridlines ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    freeze: frozen(look),
    mergeData: sheet.merged.map(({ top, left, bottom, right }) => ({
      startRow: top,
      startColumn: left,
      endRow: bottom,
      endColumn: right,
    })),
    rowData: Object.fromEntries(
      [...look.rows].map(([row, { height, hidden, style }]) => [
        row,
        {
          ...(height === undefined ? {} : { h: height, ia: BooleanNumber.FALSE }),
          hd: hidden ? 1 : 0,
          ...(style === undefined ? {} : { s: String(style) }),
        },
      ]),
    ),
    columnData: Object.fromEntries(
      [...look.columns].map(([column, { width, hidden, style }]) => [
        column,
        { ...(width === undefined ? {} : { w: width }), hd: hidden ? 1 : 0, ...(style ? { s: String(style) } : {}) },
      ]),
    ),
  };
}

function frozen({ frozen: { rows, columns } }: SheetLook): IWorksheetData["freeze"] {
  return { xSplit: columns, ySplit: rows, startRow: rows || -1, startColumn: columns || -1 };
}
