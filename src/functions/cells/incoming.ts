import { errorText } from "./cell";
import { IncomingError } from "./incoming-error";

/** Throws the first error that came in with the arguments, from left to right, then down the rows. */
export function passErrorsOn(raw: readonly unknown[]): void {
  for (const value of raw) {
    if (Array.isArray(value)) passErrorsOn(value);
    else {
      const error = errorText(value);
      if (error) throw new IncomingError(error);
    }
  }
}
