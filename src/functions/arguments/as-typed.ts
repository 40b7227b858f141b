import { equal, Fault, isPositive, type Rational, type Unit } from "../../core/length";
import { isEmpty, readLengthOrNone, type Cell } from "../cells";
import { scalar, type Argument } from "./argument";

/** A length of a call without a unit: that of its own mark, where it has one that counts. */
export interface AsTyped {
  /** A plain number as it is; in inches or millimeters where the text has a mark of feet and inches, or a metric one. */
  size: Rational;
  mark?: Unit;
}

/** A length more than 0, whichever unit it is in. */
export const lengthAsTyped = (name: string): Argument<AsTyped> =>
  scalar(name, (cell) => {
    if (isEmpty(cell.value)) throw new Fault("argument.blank", { wanted: "length", received: cell.value });
    const typed = readAsTyped(cell);
    if (!isPositive(typed.size)) throw new Fault("measure.notPositive", { received: cell.value });
    return typed;
  });

/** A text with a mark is another number in millimeters than in inches; one without, and zero, is the same. */
export function readAsTyped(cell: Cell): AsTyped {
  const inches = readLengthOrNone(cell, "in", "any");
  const millimeters = readLengthOrNone(cell, "mm", "any", LARGEST_MM);
  if (equal(inches, millimeters)) return { size: inches };
  return METRIC.test(String(cell.value).normalize("NFKC"))
    ? { size: millimeters, mark: "mm" }
    : { size: inches, mark: "in" };
}

/** The largest length in inches is more than this in no unit. */
const LARGEST_MM = 1e6;
/** Millimeters, centimeters and meters have an m; feet and inches have none. */
const METRIC = /m/i;
