import { naming, type Unit } from "../../core/length";
import { readCell, type Cell } from "../cells";

/** One argument of a cell function: its name as the host shows it, and how what arrives becomes a value. */
export interface Argument<T> {
  name: string;
  read(raw: unknown, call: Call): T;
  /** Tells the unit of a call before anything is read, where this argument alone decides it. */
  unitFirst?(raw: unknown): Unit;
}

/** A call whose arguments are being read, from left to right. */
export interface Call {
  /** The unit of plain numbers. A table of standards names it once it is read; until then it is inches. */
  unit: Unit;
  /** All arguments as they came. */
  raw: readonly unknown[];
  /** The arguments to the left, already read. */
  earlier: unknown[];
}

/** A scalar argument; `read` gets the bare cell. Its faults name the argument. */
export const scalar = <T>(
  name: string,
  read: (cell: Cell, unit: Unit, earlier: readonly unknown[]) => T,
): Argument<T> => ({
  name,
  read: (raw, { unit, earlier }) => naming(name, () => read(readCell(raw), unit, earlier)),
});
