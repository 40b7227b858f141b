import { contains, MAX_COLUMNS, MAX_ROWS, overlaps, wrapped, type Area } from "../address";
import type { Corner } from "../formula/nodes";
import type { CellSource } from "./source";
import { fail, Reference, type CellError, type Scalar, type Scope, type SheetArea } from "./values";

/** The one cell of a range that is in the formula's own row or column. */
export function intersect(cells: CellSource, reference: Reference, scope: Scope): Scalar {
  const cell = intersected(reference, scope);
  return cell ? cells.read(cell.sheet, cell.top, cell.left) : fail("#VALUE!");
}

/** Where that cell is. */
export function intersected(reference: Reference, scope: Scope): SheetArea | undefined {
  const area = reference.areas[0];
  if (!area || reference.areas.length > 1) return undefined;
  const row = area.top === area.bottom ? area.top : scope.row;
  const column = area.left === area.right ? area.left : scope.column;
  const cell = { sheet: area.sheet, top: row, left: column, bottom: row, right: column };
  return contains(area, row, column) ? cell : undefined;
}

export function joinReferences(left: Reference, right: Reference): Reference {
  return new Reference([...left.areas, ...right.areas]);
}

/** `A1:B2`, also of two ranges that functions gave: the smallest rectangle round both. */
export function spanReferences(left: Reference, right: Reference): Reference | CellError {
  const all = [...left.areas, ...right.areas];
  if (all.some((area) => area.sheet !== all[0]!.sheet)) return fail("#VALUE!");
  return Reference.single(all[0]!.sheet, {
    top: Math.min(...all.map((area) => area.top)),
    left: Math.min(...all.map((area) => area.left)),
    bottom: Math.max(...all.map((area) => area.bottom)),
    right: Math.max(...all.map((area) => area.right)),
  });
}

/** The space between two ranges: the cells that they share. */
export function overlap(left: Reference, right: Reference): Reference | CellError {
  const shared = left.areas.flatMap((a) =>
    right.areas.flatMap((b) =>
      a.sheet === b.sheet && overlaps(a, b)
        ? {
            sheet: a.sheet,
            top: Math.max(a.top, b.top),
            left: Math.max(a.left, b.left),
            bottom: Math.min(a.bottom, b.bottom),
            right: Math.min(a.right, b.right),
          }
        : [],
    ),
  );
  return shared.length > 0 ? new Reference(shared) : fail("#NULL!");
}

/** Where a written reference points from this formula's cell; beyond the grid's edge it comes in again on the other side. */
export function shiftedArea(from: Corner, to: Corner, shift: { rowShift: number; columnShift: number }): Area {
  const [above, left] = [rowOf(from, shift), columnOf(from, shift)];
  // Most references are to one cell.
  if (to === from) return { top: above, left, bottom: above, right: left };
  const [below, right] = [rowOf(to, shift), columnOf(to, shift)];
  return {
    top: Math.min(above, below),
    left: Math.min(left, right),
    bottom: Math.max(above, below),
    right: Math.max(left, right),
  };
}

export const rowOf = ({ row, rowAbsolute }: Corner, { rowShift }: { rowShift: number }): number =>
  rowAbsolute ? row : wrapped(row + rowShift, MAX_ROWS);

export const columnOf = ({ column, columnAbsolute }: Corner, { columnShift }: { columnShift: number }): number =>
  columnAbsolute ? column : wrapped(column + columnShift, MAX_COLUMNS);
