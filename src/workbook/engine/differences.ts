import { sameArea, type Area } from "../address";
import type { CellState } from "./state";
import { CellError, type Scalar } from "./values";

/** What a formula gave. */
export type Given = Pick<CellState, "value" | "values" | "formats" | "area">;

/** The cells in which two results of one formula differ, as areas; none where they are the same. */
export function differences(before: Given, now: Given): Area[] {
  if (!sameArea(before.area, now.area)) return [before.area, now.area];
  if (!before.values && !now.values) {
    const isSame = sameScalar(before.value, now.value) && before.formats?.[0]?.[0] === now.formats?.[0]?.[0];
    return isSame ? [] : [now.area];
  }
  const { top, left, bottom, right } = now.area;
  const found: Area[] = [];
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      const [y, x] = [row - top, column - left];
      const same =
        sameScalar(valueAt(before, y, x), valueAt(now, y, x)) && before.formats?.[y]?.[x] === now.formats?.[y]?.[x];
      if (!same) found.push({ top: row, left: column, bottom: row, right: column });
    }
  }
  return found;
}

const valueAt = ({ value, values }: Given, y: number, x: number): Scalar => (values ? (values[y]?.[x] ?? null) : value);

function sameScalar(a: Scalar, b: Scalar): boolean {
  if (a instanceof CellError && b instanceof CellError) return a.code === b.code && a.message === b.message;
  return a === b;
}
