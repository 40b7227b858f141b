import { sameArea, type Area } from "../address";
import { Budget, make, spend } from "./budget";
import { CutShort } from "./cut-short";
import { areaKey, Cells, CIRCLE } from "./cells";
import { cellKey, type Book, type Question } from "./engine";
import { FormulaEvaluator } from "./evaluator";
import type { Library } from "./kinds";
import { ShownResults } from "./formats/shown-results";
import { readings } from "./readings";
import { areaFrom, isOneCell } from "./spills";
import type { CellState } from "./state";
import { fail, Unsupported, type Formats, type Matrix, type Scalar, type Scope, type SheetArea } from "./values";

/** Works a workbook out: orders the formulas and runs them, as often as spilled ranges still change. */
export class Calculation {
  readonly cells: Cells;
  private readonly evaluator: FormulaEvaluator;
  private readonly shown: ShownResults;
  private readonly finished = new Set<string>();
  private nested = 0;
  /** The way from formula to formula that is gone at present: each reads the next, or asks for it as it runs. */
  private readonly way: CellState[] = [];
  /** Formulas that were found to lead back to themselves as they ran. */
  private readonly circular = new Set<CellState>();
  private readonly budget = new Budget();
  /** What happens in an update; none while all is worked out. */
  private update: Update | undefined;
  private readonly askBudget = new Budget();

  constructor(book: Book, library: Library, now: Date) {
    this.cells = new Cells(book, library, now, (state) => this.settle(state));
    this.evaluator = new FormulaEvaluator(this.cells, library);
    this.shown = new ShownResults(this.evaluator);
  }

  get states(): readonly CellState[] {
    return this.cells.states;
  }

  /** Runs every formula once. True where a spilled range came out in another size than it had before. */
  round(): boolean {
    this.finished.clear();
    this.circular.clear();
    this.budget.startRound();
    this.cells.startRound();
    const before = this.states.map((state) => state.area);
    for (const state of this.states) this.settleWhole(state);
    return this.states.some((state, i) => !sameArea(state.area, before[i]!));
  }

  /** Whether a good part of what may be spent is left. */
  get isAmple(): boolean {
    return this.budget.isAmple;
  }

  /** Works out those of the waiting formulas that are touched by then; what they read is worked out before them. */
  workOut(waiting: ReadonlySet<CellState>, update: Update): void {
    this.finished.clear();
    this.circular.clear();
    this.cells.startUpdate();
    for (const state of waiting) state.progress = "waiting";
    this.update = update;
    try {
      for (const state of waiting) this.settleWhole(state);
    } finally {
      this.update = undefined;
    }
  }

  /** Once all is worked out. Functions that were handed in are not called: the host calls none of them there. */
  ask({ formula, sheet, row, column, rowShift, columnShift }: Question): Scalar {
    const { node, custom } = this.cells.prepare(formula, sheet);
    if (!node || custom) return fail("#NAME?");
    const scope = { sheet, row, column, rowShift, columnShift, arrays: true };
    try {
      const answer = () => filled(this.evaluator.single(this.evaluator.evaluate(node, scope), scope));
      return this.worked(this.askBudget, () => this.evaluator.run(answer, undefined), undefined);
    } catch {
      return fail("#VALUE!");
    }
  }

  keep(state: CellState, reason: Unsupported): void {
    this.cells.spills[state.sheet]!.release(state);
    state.kept = reason;
    state.result = undefined;
    this.update?.onKept();
    state.value = state.cell.value;
    state.values = undefined;
    state.formats = undefined;
    state.area = state.cell.formula.area;
    // Whoever reads what it fills reads it in the next round too.
    if (state.cell.formula.kind !== "plain") this.cells.spills[state.sheet]!.occupy(state, state.area);
    state.progress = "done";
  }

  private settleWhole(first: CellState): void {
    const late = first.progress === "done" ? undefined : this.attempt(first);
    if (late) this.settleInPieces(first, late);
  }

  /** Gives which formula must come before it, if another one must. */
  private attempt(state: CellState): NotYet | undefined {
    try {
      this.settle(state);
      return undefined;
    } catch (error) {
      if (error instanceof NotYet) return error;
      throw error;
    }
  }

  /** A chain of formulas that find one another as they run (INDIRECT) is gone down in pieces, for it may be long. */
  private settleInPieces(first: CellState, found: NotYet): void {
    const waiting = [first];
    const ways = new Map<CellState, readonly CellState[]>([[first, []]]);
    let late: NotYet | undefined = found;
    for (let state = waiting.at(-1); state; state = waiting.at(-1)) {
      late ??= state.progress === "waiting" ? this.attempt(state) : undefined;
      if (!late) {
        waiting.pop();
        ways.delete(state);
        continue;
      }
      ways.set(state, late.way);
      const before: CellState = late.state;
      late = undefined;
      if (ways.has(before)) {
        const circle = waiting.slice(waiting.lastIndexOf(before));
        for (const one of circle.flatMap((from) => [from, ...ways.get(from)!]))
          if (one.progress !== "done") this.keep(one, new Unsupported(CIRCLE));
      } else {
        waiting.push(before);
        ways.set(before, []);
      }
    }
  }

  /**
   * Works out everything that the formula reads, then the formula; without recursion, for chains may be long.
   * Formulas that read one another in a circle come out together, as in Tarjan's search for strong components.
   */
  private settle(first: CellState): void {
    if (first.progress === "done") return;
    if (first.progress !== "waiting") throw this.circleFrom(first);
    if (this.nested >= MOST_NESTED) throw new NotYet(first);
    const sources = this.sourcesOf(first);
    this.nested++;
    try {
      if (sources === NONE) this.settleAlone(first);
      else this.goThrough(first, sources);
    } finally {
      this.nested--;
    }
  }

  /** A formula that reads nothing which still waits has no way to be gone down. */
  private settleAlone(state: CellState): void {
    const before = this.way.push(state) - 1;
    try {
      this.takeTurn(state, false);
    } catch (error) {
      if (error instanceof NotYet) error.way.push(state);
      if (!isDone(state)) state.progress = "waiting";
      throw error;
    } finally {
      this.way.length = before;
    }
  }

  private goThrough(first: CellState, sources: Sources): void {
    const open: Open = { frames: [], of: new Map() };
    const before = this.way.length;
    const path = [this.enter(first, sources, open)];
    try {
      this.goAlong(path, open);
    } catch (error) {
      if (error instanceof NotYet) for (const { state } of path) error.way.push(state);
      for (const { state } of open.frames) if (!isDone(state)) state.progress = "waiting";
      throw error;
    } finally {
      this.way.length = before;
    }
  }

  /** All from the formula on to the one that reads it now are one circle. */
  private circleFrom(first: CellState): Unsupported {
    for (let at = this.way.length - 1; at >= 0; at--) {
      this.circular.add(this.way[at]!);
      if (this.way[at] === first) break;
    }
    return new Unsupported(CIRCLE);
  }

  private goAlong(path: Frame[], open: Open): void {
    while (path.length > 0) {
      const frame = path.at(-1)!;
      const next = frame.sources.next().value;
      if (!next) {
        const below = path.at(-2);
        if (below) below.low = Math.min(below.low, frame.low);
        // It stays on the path while it runs, for what it finds then may lead back to it.
        if (frame.low === frame.order) this.leave(frame, open);
        path.pop();
        this.way.pop();
      } else if (next.progress === "waiting") path.push(this.enter(next, this.sourcesOf(next), open));
      else {
        const other = open.of.get(next);
        if (other) frame.low = Math.min(frame.low, other.order);
        if (other === frame) frame.readsItself = true;
        // What it reads is being worked out itself, and led here by another way than its text.
        if (!other && next.progress !== "done") frame.isAmidst = true;
      }
    }
  }

  /** Begins with a formula: gives what must come before it. */
  private sourcesOf(state: CellState): Sources {
    state.progress = "ordering";
    state.reads ??= readings(state.prepared, this.scope(state), this.cells);
    return this.sources(this.update && state.found.length > 0 ? [...state.reads, ...state.found] : state.reads);
  }

  private enter(state: CellState, sources: Sources, open: Open): Frame {
    const order = open.frames.length;
    const frame = { state, sources, order, low: order, readsItself: false, isAmidst: false };
    this.way.push(state);
    open.frames.push(frame);
    open.of.set(state, frame);
    return frame;
  }

  /** All that was entered since the frame and is still open is one circle with it; alone it is no circle. */
  private leave(frame: Frame, open: Open): void {
    if (open.frames.at(-1) === frame && !frame.readsItself) {
      this.takeTurn(frame.state, frame.isAmidst);
      open.frames.pop();
      open.of.delete(frame.state);
      return;
    }
    const circle = open.frames.splice(frame.order);
    for (const { state } of circle) open.of.delete(state);
    for (const { state } of circle) this.keep(state, new Unsupported(CIRCLE));
  }

  /** The formulas that stand in the ranges or spill into them and are not done. */
  private sources(reads: readonly SheetArea[]): Sources {
    let from = 0;
    while (from < reads.length && this.isWorkedOut(reads[from]!) && this.budget.take(1)) from++;
    return from === reads.length ? NONE : this.sourcesFrom(reads, from);
  }

  /** Whether a range is one cell which is worked out; told only where nothing spills. */
  private isWorkedOut(area: SheetArea): boolean {
    if (!isOneCell(area) || this.cells.spills[area.sheet]!.count > 0) return false;
    const state = this.cells.index[area.sheet]!.at(cellKey(area.top, area.left));
    return !state || state.progress === "done";
  }

  /** A range whose formulas are all done is done with. */
  private *sourcesFrom(reads: readonly SheetArea[], from: number): Generator<CellState, void> {
    for (const whole of from === 0 ? reads : reads.slice(from)) {
      const { count } = this.cells.spills[whole.sheet]!;
      if (!this.budget.take(1 + count)) return;
      const area = this.cells.clip(whole);
      // Most references are to one cell, and most cells are filled by nothing from elsewhere.
      if (count === 0 && isOneCell(area)) {
        const state = this.cells.index[area.sheet]?.at(cellKey(area.top, area.left));
        if (!state || state.progress === "done") continue;
        if (!this.budget.take(1)) return;
        yield state;
        continue;
      }
      const key = areaKey(area);
      if (this.finished.has(key)) continue;
      let done = true;
      for (const states of [
        this.cells.index[area.sheet]?.within(area),
        this.cells.spills[area.sheet]?.reachingInto(area),
      ]) {
        for (const state of states ?? []) {
          if (!this.budget.take(1)) return;
          if (state.progress === "done") continue;
          yield state;
          done &&= (state.progress as string) === "done";
        }
      }
      if (done) this.finished.add(key);
    }
  }

  /** In an update only what is touched is worked out anew. */
  private takeTurn(state: CellState, isAmidst: boolean): void {
    if (!this.update) return this.run(state);
    if (!isAmidst && !this.update.isTouched(state)) return void (state.progress = "done");
    const { value, values, formats, area } = state;
    this.run(state);
    this.update.onDone(state, { value, values, formats, area });
  }

  private run(state: CellState): void {
    if (this.circular.has(state)) return this.keep(state, new Unsupported(CIRCLE));
    state.progress = "running";
    state.kept = undefined;
    state.result = undefined;
    state.found = [];
    state.isRestless = state.isCut = false;
    const { reader } = this.cells;
    this.cells.reader = state;
    try {
      this.worked(this.budget, this.stored, state);
    } catch (error) {
      if (error instanceof NotYet) throw error;
      // The stack was short because of those that wait for this one; it is worked out once more, before them.
      if (error instanceof RangeError && this.nested > 1) throw new NotYet(state);
      if (error instanceof Unsupported) this.keep(state, error);
      else if (error instanceof RangeError) this.keep(state, new Unsupported("asks for more than there is room for"));
      else this.keep(state, new Unsupported(`cannot be worked out (${(error as Error).message})`));
    } finally {
      this.cells.reader = reader;
    }
    if (this.circular.has(state) && !state.kept) this.keep(state, new Unsupported(CIRCLE));
    state.progress = "done";
  }

  /** Ranges are first read as far as there are cells. */
  private worked<A, T>(budget: Budget, work: (on: A) => T, on: A): T {
    const { readsWhole } = this.cells;
    try {
      this.cells.readsWhole = false;
      return budget.run(work, on);
    } catch (error) {
      if (!(error instanceof CutShort)) throw error;
      this.cells.readsWhole = true;
      return budget.run(work, on);
    } finally {
      this.cells.readsWhole = readsWhole;
    }
  }

  private readonly stored = (state: CellState): void => this.evaluator.run(this.store, state);

  private readonly store = (state: CellState): void => {
    const scope = this.scope(state);
    const { cell } = state;
    const { kind, area } = cell.formula;
    const shown = this.shown.result(state.prepared.node!, scope);
    if (kind === "plain") {
      const { value, format } = this.shown.single(shown, scope);
      state.value = filled(value);
      state.formats = format === undefined ? undefined : [[format]];
      return;
    }
    const given = this.evaluator.matrix(shown.value);
    const matrix = given.every((row) => row.every(isFilled)) ? given : given.map((row) => row.map(filled));
    const formats = this.shown.formats(shown);
    if (kind === "fixed") {
      make(area.bottom - area.top + 1, area.right - area.left + 1);
      return this.fill(state, area, fitted(matrix, area, fail("#N/A")), formats && fitted(formats, area, undefined));
    }
    const target = areaFrom(cell.row, cell.column, matrix.length, matrix[0]!.length);
    const spills = this.cells.spills[state.sheet]!;
    spills.release(state);
    const cells = matrix.length * matrix[0]!.length;
    spend(cells);
    const free =
      isOneCell(target) || spills.isFree(state, target, (row, column) => this.cells.isLiteral(state, row, column));
    if (free) this.fill(state, target, matrix, formats);
    else this.fill(state, areaFrom(cell.row, cell.column, 1, 1), [[fail("#SPILL!")]]);
  };

  private fill(state: CellState, area: Area, values: Matrix, formats?: Formats): void {
    if (!isOneCell(area)) this.budget.fill((area.bottom - area.top + 1) * (area.right - area.left + 1));
    state.area = area;
    state.values = values;
    state.formats = formats;
    state.value = values[0]![0]!;
    this.cells.spills[state.sheet]!.occupy(state, area);
  }

  private scope(state: CellState): Scope {
    const { cell, prepared } = state;
    return {
      sheet: state.sheet,
      row: cell.row,
      column: cell.column,
      rowShift: prepared.rowShift,
      columnShift: prepared.columnShift,
      arrays: cell.formula.kind !== "plain",
    };
  }
}

/** What is to be worked out anew, and who hears of it. */
interface Update {
  isTouched(state: CellState): boolean;
  onKept(): void;
  onDone(state: CellState, before: Pick<CellState, "value" | "values" | "formats" | "area">): void;
}

type Sources = Iterator<CellState, void>;

/** Hands nothing out. */
const NONE: Sources = { next: () => ({ done: true, value: undefined }) };

/** Where so many formulas wait for one another, another one is not worked out on the spot: all are left, and it comes first. */
const MOST_NESTED = 20;

class NotYet extends Error {
  /** The formulas on the way to it. */
  readonly way: CellState[] = [];

  constructor(readonly state: CellState) {
    super();
  }
}

/** A formula on the way down to what it reads. `low` is the earliest open one that it leads back to. */
interface Frame {
  state: CellState;
  sources: Sources;
  order: number;
  low: number;
  readsItself: boolean;
  isAmidst: boolean;
}

/** The frames that are not left yet, in the order entered, and by their formulas. */
interface Open {
  frames: Frame[];
  of: Map<CellState, Frame>;
}

const isDone = ({ progress }: CellState): boolean => progress === "done";

/** A formula that gives a blank shows 0, and no cell holds what is no number. */
function filled(value: Scalar): Scalar {
  if (typeof value === "number") return Number.isFinite(value) ? value + 0 : fail("#NUM!");
  return value ?? 0;
}

const isFilled = (value: Scalar): boolean => Object.is(filled(value), value);

/** An older array formula's area is fixed: a single row, column or value repeats, what is missing is #N/A. */
function fitted<T>(matrix: readonly (readonly T[])[], area: Area, missing: T): T[][] {
  return Array.from({ length: area.bottom - area.top + 1 }, (_, row) =>
    Array.from({ length: area.right - area.left + 1 }, (_, column) => {
      const line = matrix.length === 1 ? matrix[0]! : matrix[row];
      return (line && (line.length === 1 ? line[0] : line[column])) ?? missing;
    }),
  );
}
