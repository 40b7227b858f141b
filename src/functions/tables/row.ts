import type { Typed } from "../cells";
import type { Heading } from "./heading";

/** A row of a table as typed: its place in the range, the header being row 1, and its cells that are not blank. */
export interface Row<N extends string> {
  number: number;
  cells: ReadonlyMap<N, Typed>;
}

/** A table whose headings have been read. */
export interface Table<N extends string> {
  rows: readonly Row<N>[];
  /** Its headings in their order, those that say nothing to us among them. */
  headings: readonly Heading<N>[];
  /** Headings that say nothing to us, as typed. */
  unread: readonly string[];
  /** Numeric zeros that were read as blanks. */
  zeros: readonly { row: number; heading: N }[];
}

/** Where a cell stands, for messages. */
export const placeOf = (table: string, { number }: Row<string>, heading: string): string =>
  `${table}, row ${number}, ${heading[0]!.toUpperCase()}${heading.slice(1)}`;
