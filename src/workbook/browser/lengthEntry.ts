import { CellValueType } from "@univerjs/core";
import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, INumfmtService, SheetInterceptorService } from "@univerjs/sheets";
import { fraction, fractionText } from "./fractionText";
import type { Grid } from "./univer";

/** Before the library looks for dates in what was typed. */
const PRIORITY = 1_000;

/** What was typed as a fraction, by sheet and cell. */
export interface TypedFractions {
  has(sheet: string, row: number, column: number, value: unknown): boolean;
}

/**
 * What is typed as a fraction is a length here, never a date: 7/16 is 0.4375 and not the sixteenth of July. And what
 * is shown as a fraction is edited as one, unless that would change it.
 */
export function readFractions({ univer }: Grid): TypedFractions {
  const typed = new Map<string, number>();
  const injector = univer.__getInjector();
  const { writeCellInterceptor } = injector.get(SheetInterceptorService);
  const formats = injector.get(INumfmtService);
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: PRIORITY,
    handler(cell, { subUnitId, row, col }, next) {
      const number = fraction(cell?.p?.body?.dataStream ?? (typeof cell?.v === "string" ? cell.v : ""));
      if (number === undefined) return next(cell);
      typed.set(`${subUnitId} ${row} ${col}`, number);
      return next({ ...cell, p: undefined, v: number, t: CellValueType.NUMBER });
    },
  });
  writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: PRIORITY,
    handler(cell, { unitId, subUnitId, row, col, worksheet }, next) {
      const raw = worksheet.getCellRaw(row, col);
      const pattern = formats.getValue(unitId, subUnitId, row, col)?.pattern ?? "";
      const isTyped = typed.get(`${subUnitId} ${row} ${col}`) === raw?.v;
      if (!raw || raw.f || raw.si || typeof raw.v !== "number" || !(isTyped || pattern.includes("?/")))
        return next(cell);
      return { ...raw, v: fractionText(raw.v) ?? String(raw.v) };
    },
  });
  return { has: (sheet, row, column, value) => typed.get(`${sheet} ${row} ${column}`) === value };
}
