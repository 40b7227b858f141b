import { CellValueType, InterceptorEffectEnum, type IStyleData } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { isDateFormat } from "numfmt";
import { DAYS_TO_1904 } from "./entry";
import type { OpenInGrid } from "./session";
import type { Grid } from "./univer";

/** Before the numbers are formatted, and after the formats that come with them are put in. */
const PRIORITY = 40;

/** The library counts days from 1900 alone: in a workbook that counts from 1904 it is handed the day that is meant. */
export function showDatesFrom1904({ univer }: Grid, open: () => OpenInGrid): void {
  univer
    .__getInjector()
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      priority: PRIORITY,
      effect: InterceptorEffectEnum.Value,
      handler(cell, { unitId, workbook }, next) {
        const { unitId: opened, book } = open();
        if (!book.date1904 || unitId !== opened || !cell || cell.t !== CellValueType.NUMBER) return next(cell);
        const { n } = (workbook.getStyles().get(cell.s) ?? {}) as IStyleData;
        return next(n && isDay(n.pattern) ? { ...cell, v: Number(cell.v) + DAYS_TO_1904 } : cell);
      },
    });
}

/** Hours and minutes that go on beyond a day are a span of time. */
const isDay = (pattern: string): boolean => isDateFormat(pattern) && !/\[[hms]+\]/i.test(pattern);
