import { Fault, isZero, writeLength, type Rational, type Unit, type Sign } from "../../core/length";
import { isBlank, isEmpty, mayBeDate, readLengthOrNone, type Cell } from "../cells";
import { scalar, type Argument } from "./argument";

/** A length that must be given. */
export const length = (name: string, sign: Sign = "positive"): Argument<Rational> =>
  scalar(name, (cell, unit) => readLengthOrNone(given(cell, sign), unit, sign));

/** A length with a default, given for each unit. */
export const optionalLength = (
  name: string,
  fallback: (unit: Unit) => Rational,
  sign: Sign = "not negative",
): Argument<Rational> =>
  scalar(name, (cell, unit) => {
    if (!isEmpty(cell.value)) return readLengthOrNone(cell, unit, sign);
    const usual = fallback(unit);
    if (cell.value === 0 && sign !== "positive" && !isZero(usual))
      throw new Fault("zero.doubtful", { usual: writeLength(usual, unit) });
    return usual;
  });

/** A length that only some words of another argument ask for. */
export const lengthIfGiven = (name: string, sign: Sign = "positive"): Argument<Rational | undefined> =>
  scalar(name, (cell, unit) => (isEmpty(cell.value) ? undefined : readLengthOrNone(cell, unit, sign)));

/**
 * A length of any sign and of nearly any size, for reading and writing alone: totals are longer than parts.
 * @param shown whether the length is only shown, so that a 0 is seen for what it is
 */
export const anyLength = (name: string, shown = false): Argument<Rational> =>
  scalar(name, (cell, unit) => {
    if (mayBeDate(cell.value)) throw new Fault("length.mayBeDate", { received: cell.value });
    return readLengthOrNone(shown ? notBlank(cell) : given(cell, "any"), unit, "any", 1e9);
  });

/** @throws Fault where nothing is given, or a number 0, which an empty cell may give as well */
function given(cell: Cell, sign: Sign): Cell {
  if (cell.value !== 0) return notBlank(cell);
  throw sign === "positive" ? blank(cell) : new Fault("zero.needed", {});
}

function notBlank(cell: Cell): Cell {
  if (isBlank(cell.value)) throw blank(cell);
  return cell;
}

const blank = ({ value }: Cell): Fault => new Fault("argument.blank", { wanted: "length", received: value });
