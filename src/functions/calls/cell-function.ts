import { Fault, orElse, type Unit } from "../../core/length";
import type { Argument, Call } from "../arguments";
import { passErrorsOn } from "../cells";
import { cellError } from "./cell-error";

/** What arguments give once they are read. */
export type Read<A extends readonly Argument<unknown>[]> = {
  [K in keyof A]: A[K] extends Argument<infer T> ? T : never;
};

/**
 * Declares a cell function: its arguments and tables in order, and the body that gets them read and checked. Faults come
 * in the order of the contract: errors that came in, arguments from left to right, then what the body finds.
 * @param body gets the values and the unit of the call; may throw Fault
 */
export function cellFunction<const A extends readonly Argument<unknown>[], R>(
  args: A,
  body: (values: Read<A>, unit: Unit) => R,
): (raw: readonly unknown[]) => R {
  return (raw) => {
    const values: unknown[] = [];
    const call: Call = { unit: unitFirst(args, raw), raw, earlier: values };
    try {
      passErrorsOn(raw);
      args.forEach((argument, i) => values.push(argument.read(raw[i], call)));
      return body(values as Read<A>, call.unit);
    } catch (thrown) {
      throw cellError(thrown, call.unit);
    }
  };
}

function unitFirst(args: readonly Argument<unknown>[], raw: readonly unknown[]): Unit {
  const place = args.findIndex((argument) => argument.unitFirst);
  return place < 0 ? "in" : args[place]!.unitFirst!(raw[place]);
}

/** An argument whose fault is no end of the call, but what the body is told. */
export const orFault = <T>({ name, read }: Argument<T>): Argument<T | Fault> => ({
  name,
  read: (raw, call) =>
    orElse(
      () => read(raw, call),
      (fault) => fault,
    ),
});
