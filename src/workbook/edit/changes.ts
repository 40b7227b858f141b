import { contains, type Area } from "../address";
import { CellError, cellKey, LONGEST_TEXT, type Outcome, type Result, type Scalar } from "../engine/index";
import { sameValue } from "../xlsx/cell-value";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { CellText, SheetText } from "../xlsx/sheet-text";
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
  private texts: Map<number, CellText> | undefined;
  private readonly filled = new Set<number>();

  constructor(
    private readonly opened: OpenWorkbook,
    private readonly index: number,
    private readonly sheet: SheetText | undefined,
  ) {}

  write(result: Result): void {
    const isDynamic = this.formula(result).kind === "dynamic";
    eachCell(result.area, (row, column) => {
      const value = withinLimits(result.values[row - result.area.top]![column - result.area.left]!);
      const isAnchor = row === result.row && column === result.column;
      const key = cellKey(row, column);
      this.filled.add(key);
      const change: CellChange = { row, column, value, writesValue: !this.isStored(key, value) };
      if (isAnchor && isDynamic) change.area = result.area;
      if (isAnchor || change.writesValue) this.changes.set(key, change);
    });
  }

  /** Empties what the formula filled before and nothing fills now. */
  clearAround(result: Result): void {
    const { kind, area } = this.formula(result);
    if (kind !== "dynamic") return;
    eachCell(area, (row, column) => {
      const key = cellKey(row, column);
      const text = this.text(key);
      if (contains(result.area, row, column) || this.filled.has(key) || !text || text.formula) return;
      if (text.content !== undefined) this.changes.set(key, { row, column, value: null, writesValue: true });
    });
  }

  /** How a cell stands in the file. Sheets without formulas are never asked. */
  private text(key: number): CellText | undefined {
    if (!this.texts) {
      this.texts = new Map();
      for (const { cells } of this.sheet?.rows ?? [])
        for (const cell of cells) this.texts.set(cellKey(cell.row, cell.column), cell);
    }
    return this.texts.get(key);
  }

  private formula(result: Result) {
    return this.opened.book.sheets[this.index]!.cells.get(cellKey(result.row, result.column))!.formula!;
  }

  private isStored(key: number, value: Scalar): boolean {
    const text = this.text(key);
    const stored = this.opened.book.sheets[this.index]!.cells.get(key)?.value ?? null;
    return text !== undefined && text.content !== undefined && sameValue(text, stored, value);
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
