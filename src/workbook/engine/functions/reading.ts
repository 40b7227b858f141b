import { toNumber, toText } from "../coercion";
import type { Ordinary } from "../kinds";
import { CellError, fail, isScalar, type Scalar, type Value } from "../values";

/** One value, as a function gets it whose argument wants one; what was left out is a blank. */
export function scalarOf(value: Value): Scalar {
  return isScalar(value) ? value : null;
}

/** A function of numbers: what is given in their place is read as arithmetic reads it, from left to right. */
export function ofNumbers(of: (...numbers: number[]) => Scalar): Ordinary {
  return {
    signature: "V",
    call(args) {
      const numbers: number[] = [];
      for (const arg of args) {
        const number = toNumber(scalarOf(arg));
        if (number instanceof CellError) return number;
        numbers.push(number);
      }
      return of(...numbers);
    },
  };
}

/** The same for the functions that once came with an add-in: a truth value is an error, and so is an argument left out. */
export function ofStrictNumbers(of: (...numbers: number[]) => Scalar): Ordinary {
  return {
    signature: "V",
    call(args) {
      const numbers: number[] = [];
      for (const arg of args) {
        const number = strictNumber(arg);
        if (number instanceof CellError) return number;
        numbers.push(number);
      }
      return of(...numbers);
    },
  };
}

export function strictNumber(arg: Value): number | CellError {
  if (arg === undefined) return fail("#N/A");
  if (typeof arg === "boolean") return fail("#VALUE!");
  return toNumber(scalarOf(arg));
}

/** A function of texts and numbers: each letter says how an argument is read, `t` as a text, `n` as a number. */
export function ofTexts(kinds: string, of: (...values: never[]) => Scalar): Ordinary {
  return {
    signature: "V",
    call(args) {
      const read: (string | number)[] = [];
      for (const [i, arg] of args.entries()) {
        const value = scalarOf(arg);
        const found = kinds[Math.min(i, kinds.length - 1)] === "t" ? toText(value) : toNumber(value);
        if (found instanceof CellError) return found;
        read.push(found);
      }
      return (of as (...values: (string | number)[]) => Scalar)(...read);
    },
  };
}
