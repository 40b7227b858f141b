import type { Node, NodeOf } from "../formula/nodes";
import type { CellSource } from "./source";
import type { Matrix, Scalar, Scope, Shown, Value } from "./values";

/** What works formulas out, as the functions that it calls see it. */
export interface Evaluator {
  readonly cells: CellSource;
  readonly library: Library;
  evaluate(node: Node, scope: Scope): Value;
  /** A formula's own result. Where its last step takes away all but a rounding error, that is nothing. */
  result(node: Node, scope: Scope): Value;
  /** One value: a range is intersected with the formula's own row or column, an array gives its first item. */
  scalar(node: Node, scope: Scope): Scalar;
  single(value: Value, scope: Scope): Scalar;
  /** What an operator works on. */
  operand(node: Node, scope: Scope): Scalar | Matrix;
  /** A range's values, a single cell's value; anything else as it is. */
  contents(value: Value): Scalar | Matrix;
  matrix(value: Value): Matrix;
  call(name: string, args: Node[], scope: Scope): Value;
  /** The variable or the defined name that a call calls, if it is none of the library's. */
  callee(name: string, scope: Scope): { value: Value } | undefined;
  /** A function's arguments as it takes them. */
  given(called: Ordinary, args: Node[], scope: Scope): Value[];
  /** Whether an array is given where a single value is wanted. */
  isLifted(called: Ordinary, args: Value[]): boolean;
  /** Calls a function whose arguments are worked out, item by item where a single value is wanted and an array given. */
  ordinary(called: Ordinary, args: Value[], scope: Scope): Value;
  invoke(callee: Value, args: Value[]): Value;
  variable(name: string, scope: Scope): Shown | undefined;
  /** What a defined name stands for, and where that is worked out. */
  named(node: NodeOf<"name">, scope: Scope): { body: Node; scope: Scope } | undefined;
  /** `A1#`: what the formula in that cell fills at present. */
  spilled(value: Value): Value;
}

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
