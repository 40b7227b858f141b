import { InterceptorEffectEnum, CellValueType, type IStyleData } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { OpenInGrid } from "./session";
import { sheetIndex } from "./snapshot";
import type { Grid } from "./univer";

/** The format that our lengths in inches bring with them. */
const FRACTION = "# ??/??";

/** Before the numbers are formatted, and after spilled values are put in. */
const PRIORITY = 50;

/**
 * Shows lengths in inches, and what was typed as a fraction, as fractions in cells that have no number format of their
 * own, as the spreadsheet program does.
 */
export function showFractions({ univer }: Grid, open: () => OpenInGrid): void {
  const injector = univer.__getInjector();
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: PRIORITY,
    effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
    handler(cell, location, next) {
      if (!cell || cell.t !== CellValueType.NUMBER) return next(cell);
      const { row, col, subUnitId, workbook } = location;
      const { workbook: edited, calculation, unitId } = open();
      const sheet = sheetIndex(subUnitId);
      const isFraction = calculation.results.isInchLength(sheet, row, col) || edited.isFraction(sheet, row, col);
      if (location.unitId !== unitId || !isFraction) return next(cell);
      const style = (workbook.getStyles().get(cell.s) ?? {}) as IStyleData;
      if (style.n) return next(cell);
      return next({ ...cell, s: { ...style, n: { pattern: FRACTION } } });
    },
  });
}
