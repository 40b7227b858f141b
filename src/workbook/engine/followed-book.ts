import { sameArea, type Area } from "../address";
import { Calculation } from "./calculation";
import { Dependents } from "./dependents";
import type { Book, Followed, Outcome, Result } from "./engine";
import type { Library } from "./kinds";
import { differences, type Given } from "./differences";
import type { CellState } from "./state";
import { CellError, Unsupported, type Scalar } from "./values";

/** Spilled ranges that still change after so many rounds never settle. */
const MOST_ROUNDS = 20;

/**
 * A book that is worked out, and worked out further where its cells change. A change is followed from formula to formula
 * for as long as values come out other than they were. That is done where nothing but values can decide what comes of
 * it; where the order of the formulas could (a circle, a spilled range that is blocked, a budget that runs short, fewer
 * cells in use) all is worked out anew.
 */
export class FollowedBook implements Followed {
  private calculation!: Calculation;
  private rounds = 0;
  /** Who reads what; made for the first change. */
  private dependents: Dependents | undefined;
  private isPlain = false;

  constructor(
    private readonly book: Book,
    private readonly library: Library,
    private readonly now: Date | undefined,
  ) {}

  calculate(): Outcome {
    const calculation = (this.calculation = new Calculation(this.book, this.library, this.now ?? new Date()));
    this.dependents = undefined;
    this.rounds = 1;
    while (calculation.round() && this.rounds < MOST_ROUNDS) this.rounds++;
    if (this.rounds === MOST_ROUNDS) keepRestless(calculation);
    const { cells, states } = calculation;
    this.isPlain = this.rounds < MOST_ROUNDS && cells.isPlain && states.every(isPlain);
    return this.outcome();
  }

  update(changed: Iterable<{ sheet: number; row: number; column: number }>): Outcome {
    return this.isPlain && this.calculation.isAmple && this.follow([...changed]) ? this.outcome() : this.calculate();
  }

  /** @returns false where all must be worked out anew */
  private follow(changed: readonly { sheet: number; row: number; column: number }[]): boolean {
    const { calculation } = this;
    const { cells } = calculation;
    if (!changed.every(({ sheet, row, column }) => cells.canTake(sheet, row, column))) return false;
    const dependents = (this.dependents ??= dependentsOf(calculation.states));
    cells.now = this.now ?? new Date();
    let touched = new Set<CellState>();
    const touch = (sheet: number, area: Area): void => {
      dependents.each(sheet, area, (state) => touched.add(state));
    };
    const { extent } = cells;
    // Where nothing hangs on a cell, a question about it still may.
    cells.startUpdate();
    for (const { sheet, row, column } of changed) {
      const filling = cells.spills[sheet]!.owner(row, column);
      if (filling) touched.add(filling);
      const { before, now } = cells.take(sheet, row, column);
      if (before) {
        dependents.unlink(before);
        touch(sheet, before.area);
        touched.delete(before);
      }
      if (now && !now.kept) touched.add(now);
      touch(sheet, { top: row, left: column, bottom: row, right: column });
    }
    // A formula that was touched first and put in another's place afterwards is no more.
    for (const state of touched) if (!cells.holds(state)) touched.delete(state);
    const isLarger = extent !== cells.extent;
    for (const state of calculation.states) if (state.isRestless || (isLarger && state.isCut)) touched.add(state);
    for (let round = 0; touched.size > 0; round++) {
      if (round === MOST_ROUNDS) return false;
      touched = this.round(touched, dependents);
      if (!this.isPlain) return false;
    }
    return true;
  }

  /** @returns the formulas that were worked out too soon: what they read has come out otherwise since */
  private round(touched: Set<CellState>, dependents: Dependents): Set<CellState> {
    const { cells } = this.calculation;
    const again = new Set<CellState>();
    const { extent } = cells;
    const touch = (sheet: number, area: Area): void => {
      dependents.each(sheet, area, (state) => {
        if (state.kept) return;
        if (state.progress === "waiting" || state.progress === "ordering") touched.add(state);
        else again.add(state);
      });
    };
    this.calculation.workOut(leadingFrom(touched, dependents), {
      isTouched: (state) => touched.has(state),
      onKept: () => (this.isPlain = false),
      onDone: (state, before: Given) => {
        dependents.link(state);
        const isSmaller = cells.isAtEdge(before.area) && !sameArea(before.area, state.area);
        if (isSmaller || !isPlain(state)) this.isPlain = false;
        cells.reach(state.area.bottom, state.area.right);
        for (const area of differences(before, state)) touch(state.sheet, area);
      },
    });
    if (extent !== cells.extent) for (const state of this.calculation.states) if (state.isCut) again.add(state);
    return again;
  }

  private outcome(): Outcome {
    const { calculation } = this;
    const outcome: Outcome = {
      results: [],
      kept: [],
      rounds: this.rounds,
      ask: (question) => calculation.ask(question),
    };
    for (const state of calculation.states) {
      if (!state.kept) outcome.results.push((state.result ??= resultOf(state)));
      else {
        const { row, column } = state.cell;
        const { message: reason, functions } = state.kept;
        outcome.kept.push({ sheet: state.sheet, row, column, reason, functions });
      }
    }
    return outcome;
  }
}

/** After the last round, what would change once more keeps its stored value. */
function keepRestless(calculation: Calculation): void {
  const before = calculation.states.map((state) => JSON.stringify([state.area, state.value]));
  calculation.round();
  calculation.states.forEach((state, i) => {
    if (state.kept || JSON.stringify([state.area, state.value]) === before[i]) return;
    calculation.keep(state, new Unsupported(`does not settle in ${MOST_ROUNDS} rounds`));
  });
}

/** Whether nothing but values decided what came of a formula. */
function isPlain({ kept, prepared, value }: CellState): boolean {
  return kept === prepared.obstacle && !(value instanceof CellError && value.code === "#SPILL!");
}

function dependentsOf(states: readonly CellState[]): Dependents {
  const dependents = new Dependents();
  for (const state of states) dependents.link(state);
  return dependents;
}

/** The formulas and all that may hang on what comes of them. */
function leadingFrom(first: ReadonlySet<CellState>, dependents: Dependents): Set<CellState> {
  const found = new Set(first);
  // A set hands out what is added to it while it is gone through.
  for (const state of found) {
    dependents.each(state.sheet, state.area, (next) => {
      if (!next.kept) found.add(next);
    });
  }
  return found;
}

function resultOf({ sheet, cell, area, value, values, formats, prepared }: CellState): Result {
  const { row, column } = cell;
  const { custom } = prepared;
  if (!values && !formats) return new OneValue(sheet, row, column, area, custom, value);
  const result: Result = { sheet, row, column, values: values ?? [[value]], area, custom };
  if (formats) result.formats = formats;
  return result;
}

/** Most results are one value, and stand by their thousands: its row and column are made when they are asked for. */
class OneValue implements Result {
  constructor(
    readonly sheet: number,
    readonly row: number,
    readonly column: number,
    readonly area: Area,
    readonly custom: boolean,
    private readonly value: Scalar,
  ) {}

  get values(): Scalar[][] {
    return [[this.value]];
  }
}
