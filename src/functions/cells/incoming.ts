import { errorText } from "./cell";
import { IncomingError } from "./incoming-error";

/** Throws the first error that came in with the arguments, from left to right, then down the rows. */
export function passErrorsOn(raw: readonly unknown[]): void {
  for (const value of raw) {
    for (const cell of Array.isArray(value) ? value.flat() : [value]) {
      const error = errorText(cell);
      if (error) throw new IncomingError(error);
    }
  }
}
