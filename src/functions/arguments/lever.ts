import { splitList } from "../../core/drawer";
import { Fault, isZero, multiply, naming, toDouble, unitsIn } from "../../core/length";
import { isEmpty, readCell, readMeasure, WEIGHT, type Cell, type Measure } from "../cells";
import { scalar, type Argument } from "./argument";
import { readAsTyped } from "./as-typed";

/** A weight or a distance of a call without a unit, in pounds or inches where it has a unit of its own. */
export interface Quantity {
  size: number;
  /** Whether it has a unit of its own; zero is zero in any. */
  marked?: boolean;
}

/** What stands in each place of a range or of a text that lists; blanks, and zeros that may be blanks, are not there. */
export type Places = readonly (Quantity | undefined)[];

export const someWeight = (name: string): Argument<Quantity> => positive(name, "weight", weight);
export const someDistance = (name: string): Argument<Quantity> => positive(name, "length", distance);

const positive = (name: string, wanted: string, read: (cell: Cell) => Quantity): Argument<Quantity> =>
  scalar(name, (cell) => {
    if (isEmpty(cell.value)) throw new Fault("argument.blank", { wanted, received: cell.value });
    const quantity = read(cell);
    if (!(quantity.size > 0)) throw new Fault("measure.notPositive", { received: cell.value });
    return quantity;
  });

export const weights = (name: string): Argument<Places> => places(name, weight);
export const reaches = (name: string): Argument<Places> => places(name, distance);

const places = (name: string, read: (cell: Cell) => Quantity): Argument<Places> => ({
  name,
  read: (raw) =>
    naming(name, () => {
      const found = items(raw).map((cell, i) =>
        isEmpty(cell.value) ? undefined : naming(`item ${i + 1}`, () => read(cell)),
      );
      if (found.every((quantity) => !quantity)) throw new Fault("places.none", {});
      return found;
    }),
});

function items(raw: unknown): Cell[] {
  const cells = (Array.isArray(raw) ? raw.flat() : [raw]).map(readCell);
  const lone = cells.length === 1 ? cells[0]!.value : undefined;
  return typeof lone === "string" ? splitList(lone).map((value) => ({ value })) : cells;
}

function weight(cell: Cell): Quantity {
  const { size, marked } = readMeasure(cell, ANY_WEIGHT, "in");
  return size === 0 ? { size } : { size, marked };
}

function distance(cell: Cell): Quantity {
  const { size, mark } = readAsTyped(cell);
  if (isZero(size)) return { size: 0 };
  return { size: toDouble(mark ? multiply(size, unitsIn(mark, "in")) : size), marked: mark !== undefined };
}

/** Bounds count for pounds; what a plain number is in is not said. */
const ANY_WEIGHT: Measure = { ...WEIGHT, unsaid: true };
