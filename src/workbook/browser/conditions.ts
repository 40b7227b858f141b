import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { InterceptorEffectEnum, type IStyleData } from "@univerjs/core";
import { contains } from "../address";
import type { StyleChange } from "../look/index";
import { gridChange } from "./grid-styles";
import { redraw } from "./redraw";
import type { OpenInGrid } from "./session";
import type { Grid } from "./univer";
import { place } from "./worker/results";

/** After spilled values are put in, and before fractions look at a cell's style. */
const PRIORITY = 60;

/**
 * Shows the rules about looks that a file has. The library's own part for them is not used: its rules with formulas
 * want its engine, which is left out here. The worker is asked about the cells that are looked at, after every change
 * anew; until it has answered, cells look as they did.
 */
export function showConditions(grid: Grid, open: () => OpenInGrid): void {
  let asked: Asked | undefined;
  const of = (opened: OpenInGrid): Asked => {
    if (asked?.opened !== opened) asked = new Asked(grid, opened);
    return asked;
  };
  grid.univer
    .__getInjector()
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      priority: PRIORITY,
      effect: InterceptorEffectEnum.Style,
      handler(cell, { row, col, subUnitId, workbook, unitId }, next) {
        const opened = open();
        if (unitId !== opened.unitId) return next(cell);
        const change = of(opened).look(subUnitId, row, col);
        if (!change) return next(cell);
        const style = (workbook.getStyles().get(cell?.s) ?? {}) as IStyleData;
        const changed = gridChange(change);
        return next({ ...cell, s: { ...style, ...changed, bd: { ...style.bd, ...changed.bd } } });
      },
    });
}

/** What the worker has said about the looks of one workbook's cells. */
class Asked {
  private readonly looks = new Map<string, StyleChange | undefined>();
  /** Cells that were asked about since the last change. */
  private readonly current = new Set<string>();
  private wanted = new Map<string, { row: number; column: number }[]>();
  private version = -1;

  constructor(
    private readonly grid: Grid,
    readonly opened: OpenInGrid,
  ) {}

  look(sheet: string, row: number, column: number): StyleChange | undefined {
    const { book } = this.opened;
    if (!book.sheet(sheet)?.conditions.some(({ areas }) => areas.some((area) => contains(area, row, column))))
      return undefined;
    if (this.version !== book.version) this.current.clear();
    this.version = book.version;
    const at = place(sheet, row, column);
    if (!this.current.has(at)) this.want(sheet, row, column);
    this.current.add(at);
    return this.looks.get(at);
  }

  private want(sheet: string, row: number, column: number): void {
    // All cells that are drawn together are asked about together.
    if (this.wanted.size === 0) queueMicrotask(() => this.ask());
    const cells = this.wanted.get(sheet);
    if (cells) cells.push({ row, column });
    else this.wanted.set(sheet, [{ row, column }]);
  }

  private ask(): void {
    const { wanted } = this;
    this.wanted = new Map();
    for (const [sheet, cells] of wanted) {
      this.opened.book.looks(sheet, cells).then(
        (looks) => this.take(sheet, cells, looks),
        // Where the worker was ended, the next change asks again.
        () => undefined,
      );
    }
  }

  private take(
    sheet: string,
    cells: readonly { row: number; column: number }[],
    looks: readonly (StyleChange | undefined)[],
  ): void {
    let changed = false;
    cells.forEach(({ row, column }, i) => {
      const at = place(sheet, row, column);
      changed ||= JSON.stringify(this.looks.get(at)) !== JSON.stringify(looks[i]);
      this.looks.set(at, looks[i]);
    });
    if (changed) redraw(this.grid, this.opened.unitId);
  }
}
