import { CellValueType, InterceptorEffectEnum, type IStyleData } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { TypedFormats } from "./typed-formats";
import type { Grid } from "./univer";

/** Before the numbers are formatted. */
const PRIORITY = 50;

/** Shows numbers in the format that they were typed or pasted in, where the cell has none of its own. */
export function showTypedFormats({ univer }: Grid, formats: TypedFormats): void {
  univer
    .__getInjector()
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      priority: PRIORITY,
      effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
      handler(cell, { row, col, subUnitId, workbook }, next) {
        if (!cell || cell.f || cell.si || cell.t !== CellValueType.NUMBER) return next(cell);
        const pattern = formats.of(subUnitId, row, col, Number(cell.v));
        const style = (workbook.getStyles().get(cell.s) ?? {}) as IStyleData;
        if (pattern === undefined || style.n) return next(cell);
        return next({ ...cell, s: { ...style, n: { pattern } } });
      },
    });
}
