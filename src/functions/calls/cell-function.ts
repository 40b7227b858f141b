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
    const call = begun(args, raw);
    try {
      return body(readAll(args, call), call.unit);
    } catch (thrown) {
      throw cellError(thrown, call.unit);
    }
  };
}

/** A call of which nothing is read yet. */
export const begun = (args: readonly Argument<unknown>[], raw: readonly unknown[]): Call => ({
  unit: unitFirst(args, raw),
  raw,
  earlier: [],
});

/**
 * Reads the arguments of a call from left to right; its unit is then known.
 * @throws Fault of the first that cannot be read, IncomingError
 */
export function readAll<const A extends readonly Argument<unknown>[]>(args: A, call: Call): Read<A> {
  passErrorsOn(call.raw);
  args.forEach((argument, i) => call.earlier.push(argument.read(call.raw[i], call)));
  return call.earlier as Read<A>;
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
