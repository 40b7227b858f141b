import type { Unit } from "../../core/length";
import { word, type Argument } from "../arguments";
import { passErrorsOn } from "../cells";
import { cellError } from "./cell-error";

type Read<A extends readonly Argument<unknown>[]> = { [K in keyof A]: A[K] extends Argument<infer T> ? T : never };

/** A cell function's arguments, declared, and the body that gets them read and checked. */
export interface CellFunction<R> {
  (raw: readonly unknown[]): R;
}

/**
 * Declares a cell function whose last argument is `unit`. Faults come in the order of the contract: errors that
 * came in, arguments from left to right, then geometry.
 * @param args all arguments but the unit, in order
 * @param body gets the arguments' values and the unit; may throw Fault
 */
export function withUnit<const A extends readonly Argument<unknown>[], R>(
  args: A,
  body: (values: Read<A>, unit: Unit) => R,
): CellFunction<R> {
  return (raw) => {
    const unit = unitOf(raw[args.length]);
    try {
      passErrorsOn(raw);
      const values = readAll(args, raw, unit);
      unitArgument.read(raw[args.length], unit, values);
      return body(values as Read<A>, unit);
    } catch (thrown) {
      throw cellError(thrown, unit);
    }
  };
}

/** Lengths are read before the unit is checked, for faults go from left to right: until then a bad unit is inches. */
function unitOf(raw: unknown): Unit {
  try {
    return unitArgument.read(raw, "in", []);
  } catch {
    return "in";
  }
}

const unitArgument = word<Unit>("unit", ["in", "mm"]);

function readAll(args: readonly Argument<unknown>[], raw: readonly unknown[], unit: Unit): unknown[] {
  const values: unknown[] = [];
  for (const [i, argument] of args.entries()) values.push(argument.read(raw[i], unit, values));
  return values;
}
