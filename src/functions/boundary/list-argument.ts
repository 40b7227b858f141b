import { fromDouble, Fault, type Rational, type Unit } from "../../core/length";
import { readDrawers, splitList, type DrawerAsked, type DrawersItem } from "../../core/drawer";
import { named, type Argument } from "./argument";
import { isBlank, readCell, type Cell } from "./cell";
import { checked, readItem, readLength } from "./length-argument";

/** A range of lengths, or a text that lists them; left out, the default for the unit. */
export const lengthList = (
  name: string,
  fallback: (unit: Unit) => readonly Rational[],
): Argument<readonly Rational[]> => ({
  name,
  read: (raw, unit) =>
    named(name, () => {
      const cells = readCells(raw);
      if (cells.length === 0) {
        if (cellCount(raw) > 1) throw new Fault("list.empty");
        return fallback(unit);
      }
      const items = cells.flatMap<Cell>((cell) =>
        typeof cell.value === "string" ? splitList(cell.value).map((value) => ({ value })) : [cell],
      );
      if (items.length === 0) throw new Fault("list.empty");
      return items.map((item, i) => readItem(name, i + 1, item, unit));
    }),
});

/** How a face is divided: a count, or a list of fixed heights and parts. */
export const drawers = (name: string): Argument<DrawerAsked[]> => ({
  name,
  read: (raw, unit) =>
    named(name, () =>
      readDrawers(
        readCells(raw).map((cell) => drawersItem(cell, unit)),
        unit,
      ),
    ),
});

/**
 * A lone number may be a count, which has no largest length; any number that is one of several is a length, and so
 * is any that is not whole.
 */
function drawersItem(cell: Cell, unit: Unit): DrawersItem {
  if (typeof cell.value === "string") return cell.value;
  if (typeof cell.value === "number" && Number.isInteger(cell.value)) return fromDouble(readableNumber(cell, unit));
  return checked(readLength(cell, unit), "positive");
}

/** Runs the checks that a length has to pass, and gives the number itself. */
function readableNumber(cell: Cell, unit: Unit): number {
  readLength(cell, unit);
  return cell.value as number;
}

/**
 * The cells of a range that are not blank, row by row. Hosts that pass an empty cell as 0 make a numeric 0 blank
 * in a list; a text zero is zero.
 */
function readCells(raw: unknown): Cell[] {
  const rows = Array.isArray(raw) ? raw.flat() : [raw];
  return rows.map(readCell).filter(({ value }) => !isBlank(value) && value !== 0);
}

const cellCount = (raw: unknown): number => (Array.isArray(raw) ? raw.flat().length : 1);
