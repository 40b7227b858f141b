import { Fault, isBlank, readLength, type Rational, type Sign, type Unit } from "../../core/length";
import { scalar, type Argument } from "./argument";
import type { Cell } from "./cell";

/** A length that must be given. */
export const length = (name: string, sign: Sign = "positive"): Argument<Rational> =>
  scalar(name, (cell, unit) => readLength(given(cell), unit, sign));

/** A length with a default, given for each unit. */
export const optionalLength = (
  name: string,
  fallback: (unit: Unit) => Rational,
  sign: Sign = "not negative",
): Argument<Rational> =>
  scalar(name, (cell, unit) => (isBlank(cell.value) ? fallback(unit) : readLength(cell, unit, sign)));

/** A length that only some words of another argument ask for. */
export const lengthIfGiven = (name: string, sign: Sign = "positive"): Argument<Rational | undefined> =>
  scalar(name, (cell, unit) => (isBlank(cell.value) ? undefined : readLength(cell, unit, sign)));

/** A length of any sign and of nearly any size, for reading and writing alone: totals are longer than parts. */
export const anyLength = (name: string): Argument<Rational> =>
  scalar(name, (cell, unit) => readLength(given(cell), unit, "any", 1e9));

function given(cell: Cell): Cell {
  if (isBlank(cell.value)) throw new Fault("argument.blank", { wanted: "length" });
  return cell;
}
