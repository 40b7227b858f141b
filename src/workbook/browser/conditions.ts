import { InterceptorEffectEnum, type IStyleData } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { isFormula } from "../edit/index";
import { conditionalLook, type Looked } from "../look/index";
import { gridChange } from "./gridStyles";
import type { Results } from "./results";
import type { OpenInGrid } from "./session";
import { sheetIndex } from "./snapshot";
import type { Grid } from "./univer";

/** After spilled values are put in, and before fractions look at a cell's style. */
const PRIORITY = 60;

/**
 * Shows the rules about looks that a file has. The library's own part for them is not used: its rules with formulas
 * want its engine, which is left out here.
 */
export function showConditions({ univer }: Grid, open: () => OpenInGrid): void {
  const injector = univer.__getInjector();
  let shown: Results | undefined;
  let looks: Looked[] = [];
  const lookOf = (sheet: number): Looked | undefined => {
    const opened = open();
    if (shown !== opened.calculation.results) looks = [];
    shown = opened.calculation.results;
    return (looks[sheet] ??= looked(opened, sheet));
  };
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: PRIORITY,
    effect: InterceptorEffectEnum.Style,
    handler(cell, { row, col, subUnitId, workbook, unitId }, next) {
      if (unitId !== open().unitId) return next(cell);
      const change = lookOf(sheetIndex(subUnitId))?.(row, col);
      if (!change) return next(cell);
      const style = (workbook.getStyles().get(cell?.s) ?? {}) as IStyleData;
      const changed = gridChange(change);
      return next({ ...cell, s: { ...style, ...changed, bd: { ...style.bd, ...changed.bd } } });
    },
  });
}

function looked({ workbook, look, calculation: { results } }: OpenInGrid, sheet: number): Looked {
  return conditionalLook(look.conditions[sheet] ?? [], {
    value: (row, column) => {
      const content = workbook.content(sheet, row, column);
      return isFormula(content) || content === null ? results.at(sheet, row, column) : content;
    },
    formula: (formula, row, column, rowShift, columnShift) =>
      results.ask({ formula, sheet, row, column, rowShift, columnShift }),
  });
}
