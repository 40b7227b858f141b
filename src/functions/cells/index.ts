export { readPercent, readPrice } from "./amount";
export { readCell, type Cell } from "./cell";
export { passErrorsOn } from "./incoming";
export { IncomingError } from "./incoming-error";
export { readFilled, readRange, type RangeRow } from "./range";
export type { CellResult } from "./cell-result";
export { column, estimate, lengthResult, table } from "./result";
export { american, findWord, sameWord } from "./find-word";
export * from "./typed";
