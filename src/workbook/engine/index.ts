import { Calculation } from "./calculation";
import type { Book, Engine, Outcome } from "./engine";
import type { CustomFunction, Dimensions } from "./functions/custom";
import { provideHost } from "./host";
import { createLibrary } from "./library";
import { Unsupported } from "./values";

export interface EngineOptions {
  /** Custom functions by their names without the namespace. */
  functions: Record<string, CustomFunction>;
  /** The namespace that their names stand in, DRAWER where none is given. */
  namespace?: string;
  /** Which of their arguments are tables, from the functions' metadata. */
  dimensions?: Dimensions;
  /** The moment that TODAY and NOW give. */
  now?: Date;
}

/** Spilled ranges that still change after so many rounds never settle. */
const MOST_ROUNDS = 20;

/** The engine: our evaluator and order of calculation, with Univer's library of functions beneath it. */
export function createEngine(options: EngineOptions): Engine {
  provideHost();
  const library = createLibrary(options.functions, options.namespace ?? "DRAWER", options.dimensions);
  return {
    calculate(book: Book): Outcome {
      const calculation = new Calculation(book, library, options.now ?? new Date());
      let rounds = 1;
      while (calculation.round() && rounds < MOST_ROUNDS) rounds++;
      if (rounds === MOST_ROUNDS) keepRestless(calculation);
      return outcome(calculation, rounds);
    },
  };
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

function outcome(calculation: Calculation, rounds: number): Outcome {
  const result: Outcome = { results: [], kept: [], rounds, ask: (question) => calculation.ask(question) };
  for (const state of calculation.states) {
    const { row, column } = state.cell;
    const place = { sheet: state.sheet, row, column };
    if (state.kept) {
      result.kept.push({ ...place, reason: state.kept.message, functions: state.kept.functions });
    } else {
      const values = state.values ?? [[state.value]];
      const formats = state.formats && { formats: state.formats };
      result.results.push({ ...place, values, ...formats, area: state.area, custom: state.prepared.custom });
    }
  }
  return result;
}

export type { Book, Cell, Engine, Outcome, Result } from "./engine";
export { cellKey } from "./engine";
export { firstRowOf, type CustomFunction } from "./functions/custom";
export { CellError, type Scalar } from "./values";
export { LONGEST_TEXT } from "./budget";
export { isNewFunction } from "./univer/new-functions";
export { signatureOf } from "./library";
