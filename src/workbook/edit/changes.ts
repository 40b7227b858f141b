import { contains, type Area } from "../address";
import { CellError, cellKey, LONGEST_TEXT, type Outcome, type Result, type Scalar } from "../engine/index";
import { sameValue } from "../xlsx/cell-value";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import { CellTexts } from "../xlsx/cell-texts";
import type { SheetText } from "../xlsx/sheet-text";
import type { CellChange } from "../xlsx/write-sheet";

/** For each sheet the cells to write: results that differ, and spilled cells that nothing fills any longer. */
export function changesOf(opened: OpenWorkbook, outcome: Outcome): CellChange[][] {
  const sheets = opened.sheets.map((sheet, i) => new SheetChanges(opened, i, sheet));
  for (const result of outcome.results) sheets[result.sheet]!.write(result);
  for (const result of outcome.results) sheets[result.sheet]!.clearAround(result);
  return sheets.map((sheet) => [...sheet.changes.values()].filter((change) => change.writesValue || change.area));
}

class SheetChanges {
  readonly changes = new Map<number, CellChange>();
  private readonly texts: CellTexts | undefined;
  private readonly results: Result[] = [];
  /** Every cell that a result stands in. */
  private filled: Set<number> | undefined;

  constructor(
    private readonly opened: OpenWorkbook,
    private readonly index: number,
    sheet: SheetText | undefined,
  ) {
    this.texts = sheet && new CellTexts(sheet);
  }

  write(result: Result): void {
    this.results.push(result);
    const isDynamic = this.formula(result).kind === "dynamic";
    eachCell(result.area, (row, column) => {
      const value = withinLimits(result.values[row - result.area.top]![column - result.area.left]!);
      const isAnchor = row === result.row && column === result.column;
      const writesValue = !this.isStored(row, column, value);
      if (!isAnchor && !writesValue) return;
      const area = isAnchor && isDynamic ? result.area : undefined;
      this.changes.set(cellKey(row, column), { row, column, value, writesValue, area });
    });
  }

  /** Empties what the formula filled before and nothing fills now. */
  clearAround(result: Result): void {
    const { kind, area } = this.formula(result);
    if (kind !== "dynamic") return;
    eachCell(area, (row, column) => {
      const text = contains(result.area, row, column) ? undefined : this.texts?.cell(row, column);
      if (text?.content === undefined || text.formula || this.isFilled(row, column)) return;
      this.changes.set(cellKey(row, column), { row, column, value: null, writesValue: true });
    });
  }

  /** Few ask, and those of few cells. */
  private isFilled(row: number, column: number): boolean {
    if (!this.filled) {
      const filled = (this.filled = new Set());
      for (const { area } of this.results) eachCell(area, (y, x) => filled.add(cellKey(y, x)));
    }
    return this.filled.has(cellKey(row, column));
  }

  private formula(result: Result) {
    return this.opened.book.sheets[this.index]!.cells.get(cellKey(result.row, result.column))!.formula!;
  }

  private isStored(row: number, column: number, value: Scalar): boolean {
    const text = this.texts?.cell(row, column);
    if (text?.content === undefined) return false;
    const stored = this.opened.book.sheets[this.index]!.cells.get(cellKey(row, column))?.value ?? null;
    return sameValue(text, stored, value);
  }
}

/** A cell holds no more text than that. */
function withinLimits(value: Scalar): Scalar {
  if (typeof value !== "string" || value.length <= LONGEST_TEXT) return value;
  return new CellError("#VALUE!", "The text is longer than a cell holds.");
}

function eachCell(area: Area, visit: (row: number, column: number) => void): void {
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++) visit(row, column);
  }
}
