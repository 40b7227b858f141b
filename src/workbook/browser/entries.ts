import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, INumfmtService, SheetInterceptorService } from "@univerjs/sheets";
import { CellValueType, type ICellData } from "@univerjs/core";
import { isFormula } from "../edit/content";
import { cellData, contentOfGrid } from "./cell-data";
import { entryText, readEntry, type Entry, type EntryCell } from "./entry";
import type { OpenInGrid } from "./session";
import type { TypedFormats } from "./typed-formats";
import type { Grid } from "./univer";
import { place } from "./worker/results";

/** Before the library reads in its own way what was typed. */
const PRIORITY = 1_000;

/** How texts that come into the cells of the open workbook are read. */
export interface Reading {
  /** What a cell's own format says about it. */
  cell(unit: string, sheet: string, row: number, column: number): EntryCell;
  /** Whether a cell has a number format of its own, which stays whatever is typed. */
  isFormatted(unit: string, sheet: string, row: number, column: number): boolean;
  /** The format that a cell is shown with, its own or the one that came with what it holds. */
  format(unit: string, sheet: string, row: number, column: number): string | undefined;
}

export function readingIn({ univer, api }: Grid, formats: TypedFormats, open: () => OpenInGrid): Reading {
  const numbers = univer.__getInjector().get(INumfmtService);
  const own = (unit: string, sheet: string, row: number, column: number): string | undefined =>
    numbers.getValue(unit, sheet, row, column)?.pattern;
  return {
    // Days count from 1904 in some workbooks.
    cell: (...at) => ({ date1904: open().book.date1904, isText: own(...at) === "@" }),
    isFormatted: (...at) => (own(...at) ?? "General") !== "General",
    format(unit, sheet, row, column) {
      if (this.isFormatted(unit, sheet, row, column)) return own(unit, sheet, row, column);
      const raw = api.getUniverSheet(unit)?.getSheetBySheetId(sheet)?.getSheet().getCellRaw(row, column) || undefined;
      const content = contentOfGrid(raw, raw?.f || raw?.si || undefined);
      if (content !== null && !isFormula(content)) return formats.of(sheet, row, column, content);
      return open().book.results.formats.get(place(sheet, row, column));
    },
  };
}

/** What is typed into a cell is read as an entry, and what is changed in a cell is shown as one that says the same. */
export function readTyped({ univer }: Grid, formats: TypedFormats, reading: Reading): void {
  const { writeCellInterceptor } = univer.__getInjector().get(SheetInterceptorService);
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: PRIORITY,
    handler(cell, { unitId, subUnitId, row, col }, next) {
      const typed = cell && typedText(cell);
      if (typed === undefined || typed === null) return next(cell);
      const entry = readEntry(typed, reading.cell(unitId, subUnitId, row, col));
      formats.note(subUnitId, row, col, entry);
      // Nobody reads it after this: the library would find dates in it.
      return { ...cell, ...entryCell(entry) };
    },
  });
  writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: PRIORITY,
    handler(cell, { unitId, subUnitId, row, col, worksheet }, next) {
      const raw = worksheet.getCellRaw(row, col);
      if (!raw || raw.f || raw.si || raw.p) return next(cell);
      const content = contentOfGrid(raw, undefined);
      const format = reading.format(unitId, subUnitId, row, col);
      return { ...raw, v: entryText(content, format, reading.cell(unitId, subUnitId, row, col)), t: undefined };
    },
  });
}

/** The text that was typed; undefined where it has become a formula already, or has several lines. */
function typedText({ f, si, p, v, t }: ICellData): string | undefined {
  if (f || si || p || typeof v !== "string") return undefined;
  return t === CellValueType.FORCE_STRING ? `'${v}` : v;
}

/** An entry as the grid keeps it, with nothing left of what stood there before. */
export function entryCell({ content }: Entry): ICellData {
  const empty = { v: null, f: null, si: null, p: null, t: null };
  if (isFormula(content)) return { ...empty, f: content.formula };
  const isText = typeof content === "string";
  return { ...empty, ...cellData(content), ...(isText ? { t: CellValueType.FORCE_STRING } : {}) };
}
