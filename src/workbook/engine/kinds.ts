import type { Node } from "../formula/nodes";
import type { Evaluator } from "./evaluator";
import type { Scope, Shown, Value } from "./values";

/** A function that looks at its arguments before they are worked out: IF, LET, ROW and their like. */
export type Special = (evaluator: Evaluator, args: Node[], scope: Scope) => Value;

/**
 * A function of values. Each letter of `signature` is an argument, the last one repeats:
 * V one value (an array is gone through item by item), R a range as it stands, A an array even in an older formula.
 */
export interface Ordinary {
  signature: string;
  call(args: Value[], evaluator: Evaluator, scope: Scope): Value;
  /** The same with the number formats of its result, where it gives any. */
  shown?(args: Value[], evaluator: Evaluator): Shown;
}

/** Every function there is. */
export interface Library {
  special(name: string): Special | undefined;
  ordinary(name: string): Ordinary | undefined;
  /** How many arguments a function takes, where that is known. */
  argumentCounts(name: string): [least: number, most: number] | undefined;
  /** A function that exists and is not worked out, for nothing shows that it would come out right. */
  isUnproven(name: string): boolean;
}
