import type { Engine } from "./engine";
import { FollowedBook } from "./followed-book";
import type { CustomFunction, Dimensions } from "./functions/custom";
import { provideHost } from "./host";
import { createLibrary } from "./library";

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

/** The engine: our evaluator and order of calculation, with Univer's library of functions beneath it. */
export function createEngine(options: EngineOptions): Engine {
  provideHost();
  const library = createLibrary(options.functions, options.namespace ?? "DRAWER", options.dimensions);
  return {
    calculate: (book) => new FollowedBook(book, library, options.now).calculate(),
    follow: (book) => new FollowedBook(book, library, options.now),
  };
}

export type { Book, Cell, Engine, Followed, Outcome, Result } from "./engine";
export { cellKey } from "./engine";
export { firstRowOf, type CustomFunction } from "./functions/custom";
export { CellError, type Scalar } from "./values";
export { LONGEST_TEXT } from "./budget";
export { isNewFunction } from "./univer/new-functions";
export { formulaKind } from "./formula-kind";
