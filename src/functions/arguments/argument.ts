import { naming, type Unit } from "../../core/length";
import { readCell, type Cell } from "../cells";

/** One argument of a cell function: its name as the host shows it, and how what arrives becomes a value. */
export interface Argument<T> {
  name: string;
  /** `earlier` holds the arguments to the left, already read. */
  read(raw: unknown, unit: Unit, earlier: readonly unknown[]): T;
}

/** A scalar argument; `read` gets the bare cell. Its faults name the argument. */
export const scalar = <T>(
  name: string,
  read: (cell: Cell, unit: Unit, earlier: readonly unknown[]) => T,
): Argument<T> => ({
  name,
  read: (raw, unit, earlier) => naming(name, () => read(readCell(raw), unit, earlier)),
});
