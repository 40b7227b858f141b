import { splitList } from "../../core/drawer";
import { Fault, naming, type Rational, type Sign, type Unit } from "../../core/length";
import { findWord, readLength, readLengthOrNone, sameWord, type Typed } from "../cells";

/** How one cell of a table is read; blanks never come here. Faults do not name their place yet. */
export type Kind<T> = (typed: Typed, unit: Unit) => T;

/** A length; `none` is zero. */
export const length =
  (sign: Sign): Kind<Rational> =>
  (typed, unit) =>
    readLengthOrNone(typed, unit, sign);

/** A length, or one of a few words that stand for something else; `none` is zero where it is not one of them. */
export function lengthOr<const W extends string>(sign: Sign, ...words: W[]): Kind<Rational | W> {
  const other = length(sign);
  return (typed, unit) => words.find((word) => sameWord(typed.value, word)) ?? other(typed, unit);
}

/** What stands in no table by default: `none` says so. */
export const orNone =
  <T>(read: Kind<T>): Kind<T | undefined> =>
  (typed, unit) =>
    sameWord(typed.value, "none") ? undefined : read(typed, unit);

/** One of a few words; the first is the default. */
export const word =
  <const W extends string>(words: readonly W[], synonyms: Record<string, NoInfer<W>> = {}): Kind<W> =>
  ({ value }) =>
    findWord(value, words, synonyms);

/** Several of a kind in one cell, separated as lengths are. */
export const each =
  <T>(kind: Kind<T>): Kind<T[]> =>
  (typed, unit) => {
    const items = typeof typed.value === "string" ? splitList(typed.value) : [typed.value];
    if (items.length === 0) throw new Fault("list.empty", {});
    return items.map((value, i) => {
      const read = (): T => kind({ ...typed, value }, unit);
      return items.length === 1 ? read() : naming(`item ${i + 1}`, read);
    });
  };

/** Several lengths in one cell, separated by semicolons or line breaks. */
export const lengths = (sign: Sign = "positive"): Kind<Rational[]> =>
  each((typed, unit) => readLength(typed, unit, sign));

/** Any text, or a number as its digits. */
export const textCell: Kind<string> = ({ value }) => {
  if (typeof value === "string" && value.trim() !== "") return value.trim();
  if (typeof value === "number" && Number.isFinite(value)) return String(value);
  throw new Fault("text.wrongType", { received: value });
};

/** A plain number within bounds, whole or not. */
export const numberCell =
  (least: number, most: number, whole = false): Kind<number> =>
  ({ value }) => {
    // `none` is zero, here as everywhere.
    const read = sameWord(value, "none")
      ? 0
      : typeof value === "string" && /^\s*\d+(\.\d+)?\s*$/.test(value)
        ? Number(value)
        : value;
    const isNumber = typeof read === "number" && (whole ? Number.isInteger(read) : Number.isFinite(read));
    if (isNumber && read >= least && read <= most) return read;
    const code = whole ? "number.notWhole" : isNumber ? "number.outOfRange" : "number.wrongType";
    throw new Fault(code, { received: value, least, most });
  };
