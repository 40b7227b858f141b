import { CellValueType, InterceptorEffectEnum, type ICellData, type Nullable } from "@univerjs/core";
import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { ISheetClipboardService } from "@univerjs/sheets-ui";
import { isFormula } from "../edit/content";
import { contentOfGrid } from "./cell-data";
import type { Grid } from "./univer";

/**
 * As many characters of a cell are drawn, and as many are laid out to be edited: the grid makes an object of each, and
 * measures how they break into lines, so that ten thousand took seconds and hundreds of megabytes.
 */
const MOST_DRAWN = 1_000;
const MOST_EDITED = 4_000;

/** So much of a longer text in what was typed tells that it was meant to be changed, not to be replaced. */
const TOLD_BY = 200;

/** Before any other. */
const PRIORITY = 2_000;

/**
 * Draws the beginning of a text that no cell has room for, and lets nobody edit that beginning as if it were the whole.
 * What is copied, kept and saved is the whole text; a new one may be typed over it.
 */
export function shortenLongTexts(grid: Grid, refuse: (words: string) => void): void {
  copyWhole(grid);
  const service = grid.univer.__getInjector().get(SheetInterceptorService);
  service.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: PRIORITY,
    effect: InterceptorEffectEnum.Value,
    handler(cell, _, next) {
      const shown = next(cell);
      const text = shown?.p?.body?.dataStream ?? shown?.v;
      if (typeof text !== "string" || text.length <= MOST_DRAWN) return shown;
      return { ...shown, p: null, v: beginning(text, MOST_DRAWN) };
    },
  });
  service.writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: PRIORITY,
    handler(cell, { worksheet, row, col }, next) {
      const text = longText(worksheet.getCellRaw(row, col));
      if (text === undefined) return next(cell);
      return { ...cell, f: null, si: null, p: null, t: CellValueType.STRING, v: beginning(text, MOST_DRAWN) };
    },
  });
  service.writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: PRIORITY,
    handler(cell, { worksheet, row, col }, next) {
      const raw = worksheet.getCellRaw(row, col);
      const text = longText(raw);
      const typed = textOf(cell);
      if (text === undefined || !typed || !isChanged(text, typed)) return next(cell);
      if (inOneLine(typed) !== inOneLine(beginning(text, MOST_DRAWN))) refuse(words(text.length));
      return raw;
    },
  });
}

/** What is handed to other programs is what is shown, which would be the beginning. */
function copyWhole({ univer, api }: Grid): void {
  univer
    .__getInjector()
    .get(ISheetClipboardService)
    .addClipboardHook({
      id: "copy-long-texts",
      getCellValueBySpecialMatrix(row, column) {
        const raw = api.getActiveWorkbook()?.getActiveSheet()?.getSheet().getCellRaw(row, column);
        const text = raw && (raw.p?.body?.dataStream.replace(/\r\n$/, "") ?? raw.v);
        if (!raw || typeof text !== "string" || text.length <= MOST_DRAWN) return undefined;
        return { ...raw, displayV: text.replaceAll("\r", "\n") };
      },
    });
}

const words = (length: number): string =>
  `This cell holds ${length.toLocaleString("en-US")} characters. More than ${MOST_EDITED.toLocaleString("en-US")} are changed in the spreadsheet program; here a new text may be typed over them.`;

/** The grid ends lines in several ways. */
const inOneLine = (text: string): string => text.replaceAll(/[\r\n]/g, "");

const isChanged = (text: string, typed: string): boolean =>
  inOneLine(typed).startsWith(inOneLine(text).slice(0, TOLD_BY));

/** By whole characters, which may be of two halves. */
function beginning(text: string, most: number): string {
  const start = text.slice(0, most - 1);
  return `${/[\uD800-\uDBFF]$/.test(start) ? start.slice(0, -1) : start}…`;
}

/** What a cell holds as somebody would edit it, where it is too long for that. */
function longText(cell: Nullable<ICellData>): string | undefined {
  const text = textOf(cell);
  return text !== undefined && text.length > MOST_EDITED ? text : undefined;
}

function textOf(cell: Nullable<ICellData>): string | undefined {
  if (!cell) return undefined;
  const content = contentOfGrid(cell, cell.f || undefined);
  if (isFormula(content)) return content.formula;
  return typeof content === "string" ? content : undefined;
}
