import { contains, type Area } from "../address";
import type { Node } from "../formula/nodes";
import { parseFormula } from "../formula/parse";
import { LIMITS, make, spend } from "./budget";
import { CutShort, markCut } from "./cut-short";
import { cellKey, type Book, type Cell, type Formula, type Table } from "./engine";
import type { Library } from "./kinds";
import { FormulaIndex } from "./formula-index";
import { Names } from "./names";
import { OccupiedRows } from "./occupied-rows";
import { Preparation, type Prepared } from "./prepare";
import { unproven } from "./proven";
import { shownText } from "./shown-text";
import type { CellSource } from "./source";
import { isOneCell, Spills } from "./spills";
import type { CellState } from "./state";
import { Reference, Unsupported, type Formats, type Matrix, type Scalar, type SheetArea } from "./values";

export const CIRCLE = "refers to itself in a circle";

type FormulaCell = Cell & { formula: Formula };

/** A cell in the grid's last corner makes whole columns too long to go through. */
const MOST_READ = 20_000_000;

/** A book's cells while it is worked out: what is typed, what formulas gave so far, and what spills where. */
export class Cells implements CellSource {
  readonly states: CellState[] = [];
  readonly date1904: boolean;
  readonly sheetCount: number;
  readonly index: FormulaIndex[];
  readonly spills: Spills[];
  /** Ranges are read to their ends, not as far as there are cells. */
  readsWhole = false;
  private readonly names: Names;
  private readonly occupied: OccupiedRows[];
  private readonly preparation: Preparation;
  /** Cells that the file shows as filled by an array formula elsewhere. */
  private readonly derived: Map<number, CellState>[];
  /** Numbers that were typed with a format. */
  private readonly typedFormats: Map<number, Cell>[];
  private readonly matrices = new Map<string, Matrix | undefined>();
  /** What was worked out of ranges, by who did it; a range that is asked for once has nothing kept. */
  private readonly told = new Map<object, Map<string, { value: unknown } | undefined>>();
  /** Cells of the ranges that are kept, and of the areas that the file says are filled. */
  private keptCells = 0;
  private claimed = 0;
  /** Values that will not change in this round, by sheet, column and row: most reads end here. */
  private settled: Scalar[][][] = [];
  private used: { bottom: number; right: number } = { bottom: 0, right: 0 };

  /** `settle` works out a formula that is asked for before its turn; it throws where that one waits for whoever asks. */
  constructor(
    private readonly book: Book,
    library: Library,
    private moment: Date,
    private readonly settle: (state: CellState) => void,
  ) {
    this.date1904 = book.date1904;
    this.sheetCount = book.sheets.length;
    this.names = new Names(book);
    this.spills = book.sheets.map((sheet) => new Spills(sheet));
    this.occupied = book.sheets.map(({ cells }) => new OccupiedRows(cells));
    this.derived = book.sheets.map(() => new Map());
    this.typedFormats = book.sheets.map(({ cells }) => withFormats(cells));
    this.preparation = new Preparation({ library, name: (name, sheet) => this.name(name, sheet) });
    this.index = book.sheets.map((sheet, i) => new FormulaIndex(this.statesOf(sheet.cells, i)));
    for (const state of this.states) this.claimDerived(state);
  }

  /** Reads a formula that stands in no cell. */
  prepare(text: string, sheet: number): Omit<Prepared, "rowShift" | "columnShift"> {
    return this.preparation.lookOnce(text, sheet);
  }

  /** The formula that is worked out at present: what it reads beyond what its text names is noted with it. */
  reader: CellState | undefined;

  get now(): Date {
    if (this.reader) this.reader.isRestless = true;
    return this.moment;
  }

  set now(moment: Date) {
    this.moment = moment;
  }

  /** Forgets values that are other now. */
  startUpdate(): void {
    this.matrices.clear();
    this.told.clear();
    this.keptCells = 0;
    this.settled = this.book.sheets.map(() => []);
  }

  /** Whether all that was typed has been typed where array formulas of the file fill nothing. */
  get isPlain(): boolean {
    return this.derived.every(({ size }) => size === 0);
  }

  /** Whether what the book holds in a cell now is taken in by itself: not where array formulas of older kinds fill cells. */
  canTake(sheet: number, row: number, column: number): boolean {
    const cell = this.book.sheets[sheet]!.cells.get(cellKey(row, column));
    const states = [this.index[sheet]!.at(cellKey(row, column)), this.spills[sheet]!.owner(row, column)];
    const edge = { top: row, left: column, bottom: row, right: column };
    // Without it fewer cells may be in use.
    if (this.isAtEdge(states[0]?.area ?? edge) && (!cell || (states[0] && !isOneCell(states[0].area)))) return false;
    if (states.some((state) => state?.cell.formula.kind === "fixed" && !isOneCell(state.area))) return false;
    if (cell?.formula && !isOneCell(cell.formula.area)) return false;
    return true;
  }

  /** Takes in what the book holds in a cell now. Gives the formulas that stood and stand there. */
  take(sheet: number, row: number, column: number): { before?: CellState; now?: CellState } {
    const key = cellKey(row, column);
    const cell = this.book.sheets[sheet]!.cells.get(key);
    const index = this.index[sheet]!;
    const before = index.at(key);
    if (before) {
      index.remove(before);
      this.spills[sheet]!.release(before);
      this.states.splice(this.states.indexOf(before), 1);
    }
    if (cell?.format === undefined) this.typedFormats[sheet]!.delete(key);
    else this.typedFormats[sheet]!.set(key, cell);
    if (cell) this.occupied[sheet]!.add(row);
    if (cell) this.reach(row, column);
    const now = cell?.formula && this.stateOf(cell as FormulaCell, sheet);
    if (now) index.add(now);
    return { before, now };
  }

  /** Whether a formula still stands where it stood. */
  holds(state: CellState): boolean {
    return this.index[state.sheet]!.at(cellKey(state.cell.row, state.cell.column)) === state;
  }

  /** Whether an area is among those that say how far cells are in use. */
  isAtEdge(area: Area): boolean {
    return area.bottom === this.used.bottom || area.right === this.used.right;
  }

  /** The last row and column in use, as one word. */
  get extent(): string {
    return `${this.used.bottom} ${this.used.right}`;
  }

  /** Forgets what the last round gave. */
  startRound(): void {
    this.startUpdate();
    this.measure();
    for (const state of this.states) {
      state.kept = state.prepared.obstacle;
      if (!state.kept) state.progress = "waiting";
    }
  }

  read(sheet: number, row: number, column: number): Scalar {
    this.noteCell(sheet, row, column);
    return this.valueAt(sheet, row, column);
  }

  private valueAt(sheet: number, row: number, column: number): Scalar {
    const settled = this.settled[sheet]?.[column]?.[row];
    if (settled !== undefined) return settled;
    const key = cellKey(row, column);
    const state = this.index[sheet]?.at(key);
    if (state) {
      if (state.progress !== "done") this.settle(state);
      return this.remember(sheet, row, column, state.value);
    }
    const stored = this.derived[sheet]?.get(key);
    if (stored?.progress === "waiting") this.settle(stored);
    const owner = this.spills[sheet]?.owner(row, column);
    if (owner?.progress === "waiting") this.settle(owner);
    if (owner?.values && owner.progress === "done")
      return owner.values[row - owner.area.top]?.[column - owner.area.left] ?? null;
    if (stored && !stored.kept) return null;
    const typed = this.book.sheets[sheet]?.cells.get(key)?.value ?? null;
    return typed === null || stored ? typed : this.remember(sheet, row, column, typed);
  }

  private remember(sheet: number, row: number, column: number, value: Scalar): Scalar {
    const columns = this.settled[sheet]!;
    (columns[column] ??= [])[row] = value;
    return value;
  }

  each(whole: SheetArea, visit: (value: Scalar) => void): void {
    const area = this.clip(whole);
    const rows = this.sparseRows(area);
    const width = area.right - area.left + 1;
    if (rows) {
      readableSize(rows.length * width);
      spend(rows.length * width);
      for (const row of rows)
        for (let column = area.left; column <= area.right; column++) visit(this.valueAt(area.sheet, row, column));
      return;
    }
    const size = readableSize(sizeOf(area));
    spend(size);
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) visit(this.valueAt(area.sheet, row, column));
    }
  }

  once<T>(whole: SheetArea, who: object, work: () => T): T {
    if (sizeOf(whole) < LONG) return work();
    let told = this.told.get(who);
    if (!told) this.told.set(who, (told = new Map<string, { value: unknown } | undefined>()));
    const key = areaKey(whole);
    const known = told.get(key);
    if (known) {
      this.note(this.clip(whole));
      spend(1);
      return known.value as T;
    }
    const isAgain = told.has(key);
    const value = work();
    told.set(key, isAgain ? { value } : undefined);
    return value;
  }

  sparseRows(area: SheetArea): number[] | undefined {
    this.note(area);
    const height = area.bottom - area.top + 1;
    const occupied = this.occupied[area.sheet]?.between(area.top, area.bottom);
    if (!occupied || height < LONG || occupied.count > height / 4) return undefined;
    // All that may fill a row is worked out before the rows are looked at.
    for (const state of this.index[area.sheet]!.within(area)) if (state.progress !== "done") this.settle(state);
    const spills = this.spills[area.sheet]!.reachingInto(area);
    for (const state of spills) if (state.progress === "waiting") this.settle(state);
    const rows = occupied.rows();
    const filled = this.spills[area.sheet]!.reachingInto(area).map((state) => state.area);
    if (filled.length === 0) return rows;
    const all = new Set(rows);
    for (const { top, bottom } of filled)
      for (let row = Math.max(top, area.top); row <= Math.min(bottom, area.bottom); row++) all.add(row);
    return all.size > height / 4 ? undefined : [...all].sort((a, b) => a - b);
  }

  /** A range that is asked for a second time is kept: lookups in one table want it thousands of times. */
  matrix(whole: SheetArea): Matrix {
    const area = this.readsWhole ? whole : this.readable(whole);
    this.note(area);
    const key = areaKey(area);
    const known = this.matrices.get(key);
    if (known) return known;
    const size = sizeOf(area);
    const height = area.bottom - area.top + 1;
    const width = area.right - area.left + 1;
    const sparse = this.sparseRows(area);
    // Blank rows are one and the same.
    make(sparse && size <= 2 * LIMITS.arrayCells ? height + sparse.length * width : size);
    const isCut = size < sizeOf(whole);
    const matrix: Matrix = [];
    if (sparse) {
      const blank = Array.from({ length: width }, () => null);
      for (let row = 0; row < height; row++) matrix.push(blank);
      for (const row of sparse) matrix[row - area.top] = this.rowAt(row, area);
    } else for (let row = area.top; row <= area.bottom; row++) matrix.push(this.rowAt(row, area));
    if (isCut) markCut(matrix);
    const keeps = this.matrices.has(key) && this.keptCells + size <= LIMITS.arrayCells;
    if (keeps) this.keptCells += size;
    this.matrices.set(key, keeps ? matrix : undefined);
    return matrix;
  }

  private rowAt(row: number, { sheet, left, right }: SheetArea): Scalar[] {
    const values = [this.valueAt(sheet, row, left)];
    for (let column = left + 1; column <= right; column++) values.push(this.valueAt(sheet, row, column));
    return values;
  }

  /** Laid out only where there is one, for most ranges have none. */
  formats(whole: SheetArea): Formats | undefined {
    const area = this.readsWhole ? whole : this.clip(whole);
    this.note(area);
    let formats: (string | undefined)[][] | undefined;
    const set = (row: number, column: number, format: string | undefined): void => {
      if (format === undefined || !contains(area, row, column)) return;
      formats ??= Array.from({ length: area.bottom - area.top + 1 }, () =>
        Array.from({ length: area.right - area.left + 1 }, () => undefined),
      );
      formats[row - area.top]![column - area.left] = format;
    };
    for (const { row, column, format } of this.typedFormats[area.sheet]?.values() ?? []) set(row, column, format);
    for (const states of [this.index[area.sheet]?.within(area), this.spills[area.sheet]?.reachingInto(area)]) {
      for (const state of states ?? []) {
        state.formats?.forEach((row, y) =>
          row.forEach((format, x) => set(state.area.top + y, state.area.left + x, format)),
        );
      }
    }
    return formats;
  }

  placed(area: SheetArea): SheetArea {
    if (!this.readsWhole && sizeOf(this.clip(area)) < sizeOf(area)) throw new CutShort();
    return area;
  }

  clip(area: SheetArea): SheetArea {
    if (this.reader && (area.bottom > this.used.bottom || area.right > this.used.right)) this.reader.isCut = true;
    return {
      ...area,
      bottom: Math.max(area.top, Math.min(area.bottom, this.used.bottom)),
      right: Math.max(area.left, Math.min(area.right, this.used.right)),
    };
  }

  private readable(whole: SheetArea): SheetArea {
    const area = this.clip(whole);
    readableSize(sizeOf(area));
    return area;
  }

  spill(sheet: number, row: number, column: number): Reference | undefined {
    this.noteCell(sheet, row, column);
    const state = this.index[sheet]?.at(cellKey(row, column));
    if (!state || state.cell.formula.kind !== "dynamic") return undefined;
    const value = this.read(sheet, row, column);
    if (typeof value === "object" && value?.code === "#SPILL!") return undefined;
    return Reference.single(sheet, state.area);
  }

  formula(sheet: number, row: number, column: number): Node | undefined {
    this.noteCell(sheet, row, column);
    return this.index[sheet]?.at(cellKey(row, column))?.prepared.node;
  }

  text(sheet: number, row: number, column: number): string | undefined {
    this.noteCell(sheet, row, column);
    const key = cellKey(row, column);
    const formula = this.index[sheet]?.at(key)?.cell.formula;
    if (!formula && (this.derived[sheet]?.get(key) || this.spills[sheet]?.owner(row, column)))
      throw unproven("FORMULATEXT", "a cell that another's array fills");
    return formula && shownText(formula);
  }

  private noteCell(sheet: number, row: number, column: number): void {
    if (this.reader) note(this.reader, sheet, row, column, row, column);
  }

  private note({ sheet, top, left, bottom, right }: SheetArea): void {
    if (this.reader) note(this.reader, sheet, top, left, bottom, right);
  }

  hidden(sheet: number, row: number, byHand: boolean): boolean {
    const { hiddenRows, filters } = this.book.sheets[sheet]!;
    if (!hiddenRows.has(row)) return false;
    return byHand || filters.some((filter) => row > filter.top && row <= filter.bottom);
  }

  isOpaque(sheet: number): boolean {
    return this.book.sheets[sheet]!.opaque === true;
  }

  sheetIndex(name: string): number | undefined {
    return this.names.sheet(name);
  }

  name(name: string, sheet: number): Node | undefined {
    return this.names.name(name, sheet);
  }

  table(name: string): Table | undefined {
    return this.names.table(name);
  }

  parse(text: string): Node | undefined {
    try {
      return parseFormula(text);
    } catch {
      return undefined;
    }
  }

  /** Something that was typed there: not what this or another array formula left. */
  isLiteral(state: CellState, row: number, column: number): boolean {
    const key = cellKey(row, column);
    if (this.index[state.sheet]!.at(key)) return true;
    const cell = this.book.sheets[state.sheet]!.cells.get(key);
    if (!cell || cell.value === null) return false;
    const owner = this.derived[state.sheet]!.get(key);
    return owner === undefined || (owner !== state && owner.kept !== undefined);
  }

  /** In the order of their cells: which of two that would fill one cell comes first must not hang on what was typed first. */
  private statesOf(cells: Map<number, Cell>, sheet: number): CellState[] {
    const formulas: FormulaCell[] = [];
    for (const cell of cells.values()) if (cell.formula) formulas.push(cell as FormulaCell);
    // Files hold their cells in order, and sorting looks at those in order once.
    return formulas.sort((a, b) => a.row - b.row || a.column - b.column).map((cell) => this.stateOf(cell, sheet));
  }

  private stateOf(cell: FormulaCell, sheet: number): CellState {
    const prepared = this.preparation.prepare(cell.formula, sheet, cell);
    const state: CellState = {
      sheet,
      cell,
      prepared,
      progress: prepared.obstacle ? "done" : "waiting",
      kept: prepared.obstacle,
      value: cell.value,
      // Every field at once: objects that grow take half as much again, and longer.
      values: undefined,
      formats: undefined,
      area: cell.formula.area,
      result: undefined,
      reads: undefined,
      found: [],
      isRestless: false,
      isCut: false,
    };
    this.states.push(state);
    return state;
  }

  private claimDerived(state: CellState): void {
    const { area, kind } = state.cell.formula;
    if (kind === "plain" || state.kept || isOneCell(area)) return;
    if ((this.claimed += sizeOf(area)) > LIMITS.filledCells) {
      const reason = `fills cells beyond the ${LIMITS.filledCells} that array formulas fill here in all`;
      Object.assign(state, { progress: "done", kept: new Unsupported(reason) });
      state.prepared = { ...state.prepared, obstacle: state.kept };
      return;
    }
    this.spills[state.sheet]!.occupy(state, area);
    const { cells } = this.book.sheets[state.sheet]!;
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        const cell = cells.get(cellKey(row, column));
        if (cell && !cell.formula) this.derived[state.sheet]!.set(cellKey(row, column), state);
      }
    }
  }

  private measure(): void {
    for (const sheet of this.book.sheets) {
      for (const cell of sheet.cells.values()) this.reach(cell.row, cell.column);
    }
    for (const state of this.states) this.reach(state.area.bottom, state.area.right);
  }

  /** Cells are in use as far as that. */
  reach(row: number, column: number): void {
    if (row > this.used.bottom) this.used.bottom = row;
    if (column > this.used.right) this.used.right = column;
  }
}

function withFormats(cells: ReadonlyMap<number, Cell>): Map<number, Cell> {
  const found = new Map<number, Cell>();
  for (const [key, cell] of cells) if (cell.format !== undefined) found.set(key, cell);
  return found;
}

function readableSize(size: number): number {
  if (size > MOST_READ) throw new Unsupported(`reads ${size} cells at once; at most ${MOST_READ} are read here`);
  return size;
}

/** Notes what a formula reads, unless its text names it. */
function note(reader: CellState, sheet: number, top: number, left: number, bottom: number, right: number): void {
  const covers = (area: SheetArea): boolean =>
    area.sheet === sheet && area.top <= top && area.left <= left && area.bottom >= bottom && area.right >= right;
  const { reads = [], found } = reader;
  for (let i = 0; i < reads.length; i++) if (covers(reads[i]!)) return;
  for (let i = found.length - 1; i >= 0 && i >= found.length - 8; i--) if (covers(found[i]!)) return;
  if (found.length >= MOST_NOTED) reader.isRestless = true;
  else found.push({ sheet, top, left, bottom, right });
}

/** What a formula that reads more than so many ranges of its own choice hangs on is not remembered. */
const MOST_NOTED = 1_000;

/** Shorter ranges are read cell by cell, whatever they hold, and every time. */
const LONG = 256;

function sizeOf(area: Area): number {
  return (area.bottom - area.top + 1) * (area.right - area.left + 1);
}

export function areaKey(area: SheetArea): string {
  return `${area.sheet} ${area.top} ${area.left} ${area.bottom} ${area.right}`;
}
