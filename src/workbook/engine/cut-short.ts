import { Unsupported, type Matrix, type Scalar } from "./values";

/**
 * Ranges are read as far as the workbook has cells: the rest is blank, and most often comes to nothing. Where it does
 * not, as in `A1:A1000=""` or `ROW(A1:A1000)`, this is thrown, and the formula is worked out once more with whole ranges.
 */
export class CutShort extends Unsupported {
  constructor() {
    super("goes through cells beyond those in use");
  }
}

const cut = new WeakSet<Matrix>();

export function markCut(matrix: Matrix): Matrix {
  cut.add(matrix);
  return matrix;
}

/**
 * Whether what comes of these values is cut short too, as it is where blanks come to nothing.
 * @throws CutShort where they come to something
 */
export function staysCut(values: readonly (Scalar | Matrix)[], combine: (scalars: Scalar[]) => Scalar): boolean {
  if (!values.some((value) => Array.isArray(value) && cut.has(value))) return false;
  if (values.some((value) => Array.isArray(value) && !cut.has(value))) throw new CutShort();
  const blank = combine(values.map((value) => (Array.isArray(value) ? null : value)));
  if (blank !== null && blank !== 0 && blank !== false && blank !== "") throw new CutShort();
  return true;
}
