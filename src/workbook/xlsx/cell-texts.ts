import { firstFrom } from "../engine/first-from";
import type { CellText, RowText, SheetText } from "./sheet-text";

/** A sheet's rows and cells by their places. They stand in order, and whoever asks mostly asks for the next row. */
export class CellTexts {
  /** Where the row that was asked for last stands, or would stand. */
  private last = 0;

  constructor(private readonly sheet: SheetText) {}

  row(row: number): RowText | undefined {
    const { rows } = this.sheet;
    const { last } = this;
    const isNear = (at: number): boolean => rows[at]?.row === row;
    this.last = isNear(last)
      ? last
      : isNear(last + 1)
        ? last + 1
        : firstFrom(rows.length, (at) => rows[at]!.row >= row);
    return isNear(this.last) ? rows[this.last] : undefined;
  }

  cell(row: number, column: number): CellText | undefined {
    const cells = this.row(row)?.cells;
    const found = cells?.[firstFrom(cells.length, (at) => cells[at]!.column >= column)];
    return found?.column === column ? found : undefined;
  }
}
