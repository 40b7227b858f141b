import { Fault, fromDouble, less, orElse, parseLength, ratio, toDouble, type Rational } from "../../core/length";
import { type Cell, isEmpty } from "../cells";
import { scalar, type Argument } from "./argument";

/** A whole number in a range, such as a count of fronts. */
export const wholeNumber = (name: string, least: number, most: number): Argument<number> =>
  scalar(name, (cell) => {
    if (isEmpty(cell.value))
      throw new Fault("argument.blank", { wanted: `whole number from ${least} to ${most}`, received: cell.value });
    const read = orElse(
      () => toDouble(readFactor(cell)),
      () => NaN,
    );
    if (!Number.isInteger(read) || read < least || read > most) {
      throw new Fault("number.notWhole", { received: cell.value, least, most });
    }
    return read;
  });

/** One of a few numbers; the list and the default depend on nothing but the caller's unit. */
export function oneOf(value: unknown, allowed: readonly number[]): number {
  const read = typeof value === "string" && /^\d{1,3}$/.test(value.trim()) ? Number(value) : value;
  if (typeof read === "number" && allowed.includes(read)) return read;
  throw new Fault("number.notAllowed", { received: value, allowed });
}

export interface Bounds {
  least: number;
  most: number;
}

/** A plain factor as an exact number, within `bounds` where they are given. */
export function readFactor({ value }: Cell, bounds?: Bounds): Rational {
  if (typeof value === "number" && Number.isFinite(value) && Math.abs(value) <= 1e12)
    return bounded(fromDouble(value), value, bounds);
  // A text without a mark is read as a plain number: 1.2, 6/5.
  if (typeof value === "string" && /^[-\d\s./,]+$/.test(value)) return bounded(parseLength(value, "in"), value, bounds);
  throw new Fault("number.wrongType", { received: value });
}

function bounded(read: Rational, received: unknown, bounds?: Bounds): Rational {
  if (bounds && (less(read, ratio(bounds.least)) || less(ratio(bounds.most), read))) {
    throw new Fault("number.outOfRange", { received, ...bounds });
  }
  return read;
}
