import { contains, MAX_COLUMNS, sameArea, type Area } from "../address";
import {
  cellKey,
  CellError,
  formulaKind,
  type Book,
  type Cell,
  type Engine,
  type Followed,
  type Outcome,
} from "../engine/index";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { CellEdit } from "./cell-edit";
import { contentOf, valueOf } from "./cell-content";
import { isFormula, type Content } from "./content";
import { toStored } from "./formula-text";

/**
 * What stands in a workbook's cells, as the engine reads it: what the file holds, and what was typed over it. What an
 * array formula of the file fills is empty here, so that whoever types into it is seen to. Sheets count in their order.
 */
export class Contents {
  private readonly book: Book;
  private readonly arrays: readonly ArrayFormula[][];
  /** The same by their own cells, and by those that they have filled. */
  private readonly anchored: ReadonlyMap<number, ArrayFormula>[];
  private readonly filling: ReadonlyMap<number, readonly ArrayFormula[]>[];
  private readonly typed: Map<number, Typed>[];
  private outcome: Outcome | undefined;
  private readonly followed: Followed;
  private isWorkedOut = false;
  /** The cells that hold something else since the workbook was worked out. */
  private readonly changed = new Map<string, { sheet: number; row: number; column: number }>();

  constructor(
    private readonly opened: OpenWorkbook,
    engine: Engine,
  ) {
    const { book } = opened;
    this.book = { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, cells: new Map(sheet.cells) })) };
    this.followed = engine.follow(this.book);
    this.typed = book.sheets.map(() => new Map());
    this.arrays = book.sheets.map(({ cells }) => arraysOf(cells));
    this.anchored = this.arrays.map((arrays) => new Map(arrays.map((array) => [array.key, array])));
    this.filling = this.arrays.map(byFilled);
    this.arrays.forEach((arrays, sheet) => arrays.forEach((array) => this.refreshArray(sheet, array)));
    // What is not worked out keeps what it fills.
    this.calculate();
  }

  cells(sheet: number): Iterable<Cell> {
    return this.book.sheets[sheet]!.cells.values();
  }

  cell(sheet: number, row: number, column: number): Cell | undefined {
    return this.book.sheets[sheet]!.cells.get(cellKey(row, column));
  }

  /** What a cell holds where nothing was typed into it. */
  untyped(sheet: number, row: number, column: number): Content {
    return contentOf(this.fromFile(sheet, cellKey(row, column)));
  }

  /** Puts something into a cell; nothing given, what the file holds there. */
  put(sheet: number, row: number, column: number, typed?: Typed): void {
    const key = cellKey(row, column);
    if (typed) this.typed[sheet]!.set(key, typed);
    else this.typed[sheet]!.delete(key);
    this.refresh(sheet, key);
    for (const array of this.arrays[sheet]!) if (contains(array.area, row, column)) this.refreshArray(sheet, array);
    this.outcome = undefined;
  }

  /** Works the workbook out, where something has changed. */
  calculate(): Outcome {
    if (this.outcome) return this.outcome;
    this.arrays.forEach((arrays, sheet) => arrays.forEach((array) => array.isKept && this.keep(sheet, array, false)));
    for (;;) {
      const outcome = this.isWorkedOut ? this.followed.update(this.changed.values()) : this.followed.calculate();
      this.isWorkedOut = true;
      this.changed.clear();
      let isSettled = true;
      for (const { sheet, row, column } of outcome.kept) {
        const array = this.anchored[sheet]!.get(cellKey(row, column));
        if (!array || array.isKept || this.typed[sheet]!.has(array.key)) continue;
        this.keep(sheet, array, true);
        isSettled = false;
      }
      if (isSettled) return (this.outcome = outcome);
    }
  }

  /** Whether an array formula of the file is not worked out, and keeps all that it has filled. */
  isKept(sheet: number, row: number, column: number): boolean {
    return this.anchored[sheet]!.get(cellKey(row, column))?.isKept ?? false;
  }

  /** The cells that such an array formula has filled and still fills, with what the file holds in them. */
  *keptCells(sheet: number): Generator<Cell, void> {
    for (const { key, isKept, filled } of this.arrays[sheet]!) {
      if (!isKept || this.typed[sheet]!.has(key)) continue;
      for (const at of filled) {
        const cell = this.typed[sheet]!.has(at) ? undefined : this.book.sheets[sheet]!.cells.get(at);
        if (cell) yield cell;
      }
    }
  }

  /** Whether what stands in a cell was put there by such an array formula, and by nobody else. */
  isKeptFilled(sheet: number, row: number, column: number): boolean {
    const key = cellKey(row, column);
    if (this.typed[sheet]!.has(key)) return false;
    const arrays = this.filling[sheet]!.get(key) ?? [];
    return arrays.some(({ isKept, key: own }) => isKept && !this.typed[sheet]!.has(own));
  }

  private keep(sheet: number, array: ArrayFormula, isKept: boolean): void {
    array.isKept = isKept;
    this.refreshArray(sheet, array);
  }

  private refreshArray(sheet: number, array: ArrayFormula): void {
    this.refresh(sheet, array.key);
    for (const key of array.filled) this.refresh(sheet, key);
  }

  private refresh(sheet: number, key: number): void {
    const { cells } = this.book.sheets[sheet]!;
    const typed = this.typed[sheet]!.get(key);
    const cell = typed ? cellOf(key, typed) : this.fromFile(sheet, key);
    if (sameCell(cells.get(key), cell)) return;
    if (cell) cells.set(key, cell);
    else cells.delete(key);
    this.changed.set(`${sheet} ${key}`, { sheet, row: rowOf(key), column: columnOf(key) });
  }

  private fromFile(sheet: number, key: number): Cell | undefined {
    const cell = this.opened.book.sheets[sheet]!.cells.get(key);
    const array = this.anchored[sheet]!.get(key);
    if (cell && array) return this.arrayCell(sheet, cell, array);
    const isFilled = this.filling[sheet]!.get(key)?.some(({ isKept }) => !isKept);
    return isFilled ? undefined : cell;
  }

  /** Where something was typed into what an array formula fills, that formula starts anew from its own cell. */
  private arrayCell(sheet: number, cell: Cell, { area, isKept }: ArrayFormula): Cell {
    if (isKept) return cell;
    for (const key of this.typed[sheet]!.keys()) {
      if (contains(area, rowOf(key), columnOf(key)))
        return { ...cell, formula: { ...cell.formula!, area: oneCell(cell.row, cell.column) } };
    }
    return cell;
  }
}

/** What a person put into a cell. */
type Typed = Pick<CellEdit, "content" | "format">;

/** A formula of the file that fills more than its own cell. */
interface ArrayFormula {
  key: number;
  area: Area;
  /** The cells that hold what it gave. */
  filled: ReadonlySet<number>;
  isKept: boolean;
}

function arraysOf(cells: ReadonlyMap<number, Cell>): ArrayFormula[] {
  const found: ArrayFormula[] = [];
  for (const [key, { row, column, formula }] of cells) {
    if (!formula || formula.kind === "plain" || sameArea(formula.area, oneCell(row, column))) continue;
    const { area } = formula;
    const inside = cellsIn(area, cells).filter((cell) => !cell.formula);
    const filled = new Set(inside.map((cell) => cellKey(cell.row, cell.column)));
    found.push({ key, area, filled, isKept: false });
  }
  return found;
}

/** Looked up one by one where the area is small, for a sheet may hold many cells and many such formulas. */
function cellsIn(area: Area, cells: ReadonlyMap<number, Cell>): Cell[] {
  const { top, left, bottom, right } = area;
  if ((bottom - top + 1) * (right - left + 1) > cells.size)
    return [...cells.values()].filter(({ row, column }) => contains(area, row, column));
  const found: Cell[] = [];
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++) {
      const cell = cells.get(cellKey(row, column));
      if (cell) found.push(cell);
    }
  return found;
}

function byFilled(arrays: readonly ArrayFormula[]): Map<number, ArrayFormula[]> {
  const filling = new Map<number, ArrayFormula[]>();
  for (const array of arrays)
    for (const key of array.filled) {
      const known = filling.get(key);
      if (known) known.push(array);
      else filling.set(key, [array]);
    }
  return filling;
}

function cellOf(key: number, { content, format }: Typed): Cell | undefined {
  const [row, column] = [rowOf(key), columnOf(key)];
  if (content === null) return undefined;
  if (!isFormula(content)) return { row, column, value: valueOf(content), ...(format === undefined ? {} : { format }) };
  const text = toStored(content.formula);
  return {
    row,
    column,
    // Until it is worked out, and for good where it calls what nobody knows.
    value: new CellError("#NAME?"),
    formula: { text, rowShift: 0, columnShift: 0, kind: formulaKind(text), area: oneCell(row, column) },
  };
}

/** Whether the engine makes the same of both. */
function sameCell(a: Cell | undefined, b: Cell | undefined): boolean {
  if (a === b || !a || !b) return a === b;
  const isValueSame =
    a.value instanceof CellError && b.value instanceof CellError ? a.value.code === b.value.code : a.value === b.value;
  if (!isValueSame || a.format !== b.format || !a.formula || !b.formula)
    return isValueSame && a.format === b.format && a.formula === b.formula;
  const { area, ...formula } = a.formula;
  const { area: otherArea, ...other } = b.formula;
  return sameArea(area, otherArea) && JSON.stringify(formula) === JSON.stringify(other);
}

const rowOf = (key: number): number => Math.floor(key / MAX_COLUMNS);
const columnOf = (key: number): number => key % MAX_COLUMNS;
const oneCell = (row: number, column: number): Area => ({ top: row, left: column, bottom: row, right: column });
