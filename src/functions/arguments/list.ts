import { Fault, naming, type Rational, type Unit } from "../../core/length";
import { readDrawers, splitList, type DrawerAsked, type DrawersItem } from "../../core/drawer";
import { readCell, type Cell, isBlank, readLength } from "../cells";
import type { Argument } from "./argument";

/** A range of lengths, or a text that lists them; left out, the default for the unit. */
export const lengthList = (
  name: string,
  fallback: (unit: Unit) => readonly Rational[],
): Argument<readonly Rational[]> => ({
  name,
  read: (raw, { unit }) =>
    naming(name, () => {
      const cells = readCells(raw);
      if (cells.length === 0) {
        if (cellCount(raw) > 1) throw new Fault("list.empty", {});
        return fallback(unit);
      }
      const items = cells.flatMap<Cell>((cell) =>
        typeof cell.value === "string" ? splitList(cell.value).map((value) => ({ value })) : [cell],
      );
      if (items.length === 0) throw new Fault("list.empty", {});
      return items.map((item, i) => naming(`item ${i + 1}`, () => readLength(item, unit, "positive")));
    }),
});

/** How a face is divided: a count, or a list of fixed heights and parts. */
export const drawers = (name: string): Argument<DrawerAsked[]> => ({
  name,
  read: (raw, { unit }) =>
    naming(name, () =>
      readDrawers(
        readCells(raw).map((cell) => drawersItem(cell, unit)),
        unit,
      ),
    ),
});

/** A number is checked as a length even where it stands alone and is a count: neither may be a date. */
const drawersItem = (cell: Cell, unit: Unit): DrawersItem =>
  typeof cell.value === "string" ? cell.value : readLength(cell, unit);

/**
 * The cells of a range that are not blank, row by row. Hosts that pass an empty cell as 0 make a numeric 0 blank
 * in a list; a text zero is zero.
 */
function readCells(raw: unknown): Cell[] {
  const rows = Array.isArray(raw) ? raw.flat() : [raw];
  return rows.map(readCell).filter(({ value }) => !isBlank(value) && value !== 0);
}

const cellCount = (raw: unknown): number => (Array.isArray(raw) ? raw.flat().length : 1);
