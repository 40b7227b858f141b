import { InterceptorEffectEnum, CellValueType, type IStyleData } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { OpenInGrid } from "./session";
import type { Grid } from "./univer";
import { place } from "./worker/results";

/** Before the numbers are formatted, and after spilled values are put in. */
const PRIORITY = 50;

/**
 * Shows results in the number format that they bring with them, in cells that have no number format of their own, as the
 * spreadsheet program does.
 */
export function showFractions({ univer }: Grid, open: () => OpenInGrid): void {
  const injector = univer.__getInjector();
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: PRIORITY,
    effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
    handler(cell, location, next) {
      if (!cell || cell.t !== CellValueType.NUMBER) return next(cell);
      const { row, col, subUnitId, workbook } = location;
      const { book, unitId } = open();
      if (location.unitId !== unitId) return next(cell);
      const pattern = book.results.formats.get(place(subUnitId, row, col));
      if (pattern === undefined) return next(cell);
      const style = (workbook.getStyles().get(cell.s) ?? {}) as IStyleData;
      if (style.n) return next(cell);
      return next({ ...cell, s: { ...style, n: { pattern } } });
    },
  });
}
