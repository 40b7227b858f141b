import { contains, parseArea, type Area } from "../address";
import { isFormula } from "../edit/content";
import type { RangeName, Ranges, ShownBy } from "../../taskpane/host/host";
import { shownValue } from "./cell-data";
import { gridContent } from "./grid-content";
import type { OpenInGrid } from "./session";
import type { Grid } from "./univer";
import { place, valueAt } from "./worker/results";

interface Cell {
  sheet: string;
  row: number;
  column: number;
}

/** More cells than these no table has that a function of ours reads. */
const MOST = 200_000;

/** What stands in the grid's cells, for the pane. */
export class GridRanges implements Ranges {
  /** @param selected the selected cell, its sheet by its id */
  constructor(
    private readonly grid: Grid,
    private readonly open: () => OpenInGrid,
    private readonly selected: () => Cell,
  ) {}

  async shownBy(): Promise<ShownBy | undefined> {
    const { sheet, row, column } = this.selected();
    const own = this.formula({ sheet, row, column });
    if (own !== undefined) return { formula: own, sheet: this.name(sheet), row: 0, column: 0 };
    for (const spill of this.open().book.results.spills.values()) {
      if (spill.sheet !== sheet || !contains(spill.area, row, column)) continue;
      const formula = this.formula(spill);
      if (formula === undefined) return undefined;
      return { formula, sheet: this.name(sheet), row: row - spill.area.top, column: column - spill.area.left };
    }
    return undefined;
  }

  async values({ sheet: name, address, isSpilled }: RangeName & { sheet: string }): Promise<unknown[][] | undefined> {
    const { book } = this.open();
    const sheet = book.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase() && one.hasCells)?.id;
    const named = parseArea(address);
    if (sheet === undefined || !named) return undefined;
    const first = { sheet, row: named.top, column: named.left };
    const spilled = isSpilled ? book.results.spills.get(place(sheet, first.row, first.column)) : undefined;
    if (isSpilled && !spilled && this.formula(first) === undefined) return undefined;
    const area = spilled?.area ?? named;
    if ((area.bottom - area.top + 1) * (area.right - area.left + 1) > MOST) return undefined;
    return this.valuesIn(sheet, area);
  }

  /** @param sheet by its id */
  valuesIn(sheet: string, { top, left, bottom, right }: Area): unknown[][] {
    return Array.from({ length: bottom - top + 1 }, (_, y) =>
      Array.from({ length: right - left + 1 }, (_, x) => this.value({ sheet, row: top + y, column: left + x })),
    );
  }

  async select(name: string, address: string): Promise<boolean> {
    const { book, unitId } = this.open();
    const id = book.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase() && one.hasCells)?.id;
    const sheet = this.grid.api.getUniverSheet(unitId)?.getSheetBySheetId(id ?? "");
    const area = parseArea(address);
    if (!sheet || !area || sheet.isSheetHidden()) return false;
    this.grid.api.getActiveWorkbook()!.setActiveSheet(sheet);
    sheet.getRange(area.top, area.left).activate();
    sheet.scrollToCell(Math.max(0, area.top - 3), Math.max(0, area.left - 2));
    return true;
  }

  private value({ sheet, row, column }: Cell): unknown {
    const { book, unitId } = this.open();
    const content = gridContent(this.grid, unitId, sheet, row, column);
    const value = isFormula(content) || content === null ? valueAt(book.results, sheet, row, column) : content;
    return value === null ? "" : shownValue(value);
  }

  private formula({ sheet, row, column }: Cell): string | undefined {
    const content = gridContent(this.grid, this.open().unitId, sheet, row, column);
    return isFormula(content) ? content.formula : undefined;
  }

  private name(id: string): string {
    return this.open().book.sheet(id)?.name ?? "";
  }
}
