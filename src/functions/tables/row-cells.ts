import { Fault, naming, ZERO, type Rational, type Unit } from "../../core/length";
import { findWord, readLength, sameWord, type Typed, readPercent, readPrice } from "../cells";
import { numberCell, textCell } from "./kinds";
import { placeOf, type Row } from "./row";

/** More equal pieces than these are no job for one shop. */
const MOST_PIECES = 10_000;

/** Reads the cells of one row, each fault with its place. */
export function cellsOf<N extends string>(table: string, row: Row<N>, unit: Unit) {
  const at = <T>(heading: N, read: (typed: Typed) => T): T | undefined => {
    const typed = row.cells.get(heading);
    return typed && naming(placeOf(table, row, heading), () => read(typed));
  };
  return {
    length: (heading: N): Rational | undefined => at(heading, (typed) => readLength(typed, unit, "positive")),
    /** How far from an edge: a blank is the edge itself. */
    place: (heading: N): Rational => at(heading, (typed) => readLength(typed, unit, "not negative")) ?? ZERO,
    yes: (heading: N): boolean =>
      at(heading, ({ value }) =>
        typeof value === "boolean" ? value : sameWord(value, "yes") || sameWord(value, "true"),
      ) ?? false,
    text: (heading: N): string => at(heading, (typed) => textCell(typed, unit)) ?? "",
    count: (heading: N, least = 1): number | undefined =>
      at(heading, (typed) => numberCell(least, MOST_PIECES, true)(typed, unit)),
    /** A plain number, whatever the lengths' unit. */
    price: (heading: N): Rational | undefined => at(heading, (typed) => readPrice(typed)),
    percent: (heading: N): Rational | undefined => at(heading, (typed) => readPercent(typed)),
    word: <const W extends string>(heading: N, words: readonly W[], synonyms: Record<string, NoInfer<W>> = {}): W =>
      at(heading, ({ value }) => findWord(value, words, synonyms)) ?? words[0]!,
  };
}

/** A property that is there only where it has a value. */
export const given = <K extends string, V>(key: K, value: V | undefined): { [P in K]?: V } =>
  (value === undefined ? {} : { [key]: value }) as { [P in K]?: V };

/** @throws Fault for a cell that must be filled in */
export function missing(table: string, row: Row<string>, heading: string): never {
  throw new Fault("argument.blank", {
    argument: placeOf(table, row, heading),
    wanted: heading === "qty" ? `whole number from 1 to ${MOST_PIECES}` : "length",
  });
}
