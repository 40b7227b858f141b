import { Unsupported } from "./values";

/**
 * What a formula and a workbook may cost, counted and never timed, so that the same file comes out the same
 * everywhere. What asks for more keeps its stored value and is listed.
 */
export interface Limits {
  /** Cells and items that one formula goes through. */
  formulaSteps: number;
  /** The same for all formulas of a workbook together, in all rounds. */
  bookSteps: number;
  /** Cells of one array. */
  arrayCells: number;
  /** Cells of all arrays that one formula makes on its way. */
  formulaCells: number;
  /** Cells that all array formulas of a workbook fill. */
  filledCells: number;
}

export const LIMITS: Limits = {
  formulaSteps: 50_000_000,
  bookSteps: 300_000_000,
  arrayCells: 2_000_000,
  formulaCells: 30_000_000,
  filledCells: 500_000,
};

/** A cell holds no longer text, and a formula makes none. */
export const LONGEST_TEXT = 32_767;

/** What is left to the formula that is being worked out. One is worked out at a time, so that one place will do. */
let steps = Infinity;
let bookSteps = Infinity;
let cells = Infinity;
let limits = LIMITS;

/** Takes steps off what is left. */
export function spend(count: number): void {
  steps -= count;
  bookSteps -= count;
  if (steps >= 0 && bookSteps >= 0) return;
  // What is too much is not done, and so costs the other formulas nothing.
  bookSteps += count;
  throw steps < 0 ? tooManySteps() : bookIsSpent();
}

/** Asks for an array before it is made. */
export function make(rows: number, columns = 1): void {
  const count = rows * columns;
  if (count > limits.arrayCells) {
    throw new Unsupported(`makes an array of ${count} cells; at most ${limits.arrayCells} are made here`);
  }
  cells -= count;
  if (cells < 0) {
    throw new Unsupported(`makes arrays of more than ${limits.formulaCells} cells in all, which is not done here`);
  }
  spend(count);
}

/** One workbook's budget. */
export class Budget {
  private left: number;
  private filled = 0;

  constructor(private readonly own: Limits = LIMITS) {
    this.left = own.bookSteps;
  }

  /** Works one formula out, which may work out others on its way. */
  run<A, T>(work: (on: A) => T, on: A): T {
    const [outerSteps, outerCells, outerLimits] = [steps, cells, limits];
    const nested = bookSteps !== Infinity;
    limits = this.own;
    steps = limits.formulaSteps;
    cells = limits.formulaCells;
    if (!nested) bookSteps = this.left;
    try {
      if (bookSteps <= 0) throw bookIsSpent();
      return work(on);
    } finally {
      this.left = bookSteps;
      steps = outerSteps;
      cells = outerCells;
      limits = outerLimits;
      if (!nested) bookSteps = Infinity;
    }
  }

  /** Steps outside of any formula. False where none are left. */
  take(count: number): boolean {
    if (bookSteps !== Infinity) bookSteps -= count;
    else this.left -= count;
    return (bookSteps === Infinity ? this.left : bookSteps) > 0;
  }

  /** Whether a good part is left, so that nobody will ask in what order it was spent. */
  get isAmple(): boolean {
    return this.left > 0.75 * this.own.bookSteps;
  }

  /** Before an array formula fills an area. */
  fill(count: number): void {
    if (this.filled + count > this.own.filledCells) {
      throw new Unsupported(`fills cells beyond the ${this.own.filledCells} that array formulas fill here in all`);
    }
    this.filled += count;
  }

  /** Nothing is filled yet. */
  startRound(): void {
    this.filled = 0;
  }
}

function tooManySteps(): Unsupported {
  return new Unsupported(`takes more than the ${limits.formulaSteps} steps that one formula may take here`);
}

function bookIsSpent(): Unsupported {
  return new Unsupported(`comes after the ${limits.bookSteps} steps that all formulas of a workbook may take here`);
}
