import { spend } from "../budget";
import { CellError, type Matrix, type Scalar } from "../values";
import { numberKey, readAsNumber, textKey } from "./alike";

/**
 * Where the values of a range stand. Thousands of formulas count the same one, so that its places are kept with it: by
 * what all values have in common that one condition looks for.
 */
export class Placed {
  private isKnown = false;
  private places: ReadonlyMap<unknown, readonly number[]> | undefined;

  private constructor(private readonly matrix: Matrix) {}

  private static readonly known = new WeakMap<Matrix, Placed>();

  /** What is known of a range, which must not change from then on. */
  static of(matrix: Matrix): Placed {
    let found = Placed.known.get(matrix);
    if (!found) Placed.known.set(matrix, (found = new Placed(matrix)));
    return found;
  }

  /** The places of all values that have it, counted row by row; none told where going through all is sooner. */
  at(key: unknown): readonly number[] | undefined {
    const { matrix } = this;
    const size = matrix.length * matrix[0]!.length;
    if (size < FEW || !this.isKnown) {
      this.isKnown = true;
      return undefined;
    }
    if (!this.places) {
      spend(COST_OF_A_PLACE * size);
      this.places = placesOf(matrix);
    }
    spend(1);
    return this.places.get(key) ?? [];
  }
}

/** Smaller ranges are not put in order. */
const FEW = 32;
const COST_OF_A_PLACE = 4;

function placesOf(matrix: Matrix): Map<unknown, number[]> {
  const places = new Map<unknown, number[]>();
  const width = matrix[0]!.length;
  matrix.forEach((row, y) =>
    row.forEach((value, x) => {
      for (const key of keysOf(value)) {
        const known = places.get(key);
        if (known) known.push(y * width + x);
        else places.set(key, [y * width + x]);
      }
    }),
  );
  return places;
}

/** A text that reads as a number counts as that number too. */
function keysOf(value: Scalar): unknown[] {
  if (value === null) return [];
  if (typeof value === "number") return [numberKey(value)];
  if (value instanceof CellError) return [value.code];
  if (typeof value === "boolean") return [value];
  const number = readAsNumber(value);
  return number === undefined ? [textKey(value)] : [textKey(value), numberKey(number)];
}
