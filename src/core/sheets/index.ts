export type { Effort } from "./algorithms";
export * from "./cuts";
export { lengthOf, type Exact } from "./exact";
export * from "./layout";
export { Meter } from "./meter";
export type { Part, Problem, Stock } from "./problem";
export * from "./solution";
export { solve } from "./solve";
export { flaws } from "./verify";
