import {
  abs,
  isWhole,
  less,
  lesserOf,
  ratio,
  roundFigure,
  subtract,
  times,
  ZERO,
  type Rational,
  type Unit,
} from "../length";

interface Thick {
  thickness?: Rational;
}

/** The rows as thick as a part, to within what is off by accident. */
export function nearest<S extends Thick>(rows: readonly S[], thickness: Rational | undefined, unit: Unit): S[] {
  const off = (row: S): Rational => (row.thickness && thickness ? abs(subtract(row.thickness, thickness)) : ZERO);
  const least = rows.map(off).reduce(lesserOf, roundFigure("1/32", "0.8", unit));
  return rows.filter((row) => !less(least, off(row)));
}

/**
 * The thinnest of rough rows that a part is planed from.
 * @param least what they are to be thicker by
 * @source common practice: what is more than 3/8 in (10 mm) thicker is not planed away
 */
export function yielding<S extends Thick>(
  rows: readonly S[],
  thickness: Rational | undefined,
  least: Rational,
  unit: Unit,
): S[] {
  if (!thickness) return [];
  const most = roundFigure("3/8", "10", unit);
  const able = rows.flatMap((row) => {
    const over = row.thickness && subtract(row.thickness, thickness);
    return over && !less(over, least) && !less(most, over) ? [{ row, over }] : [];
  });
  const thinnest = able.map(({ over }) => over).reduce(lesserOf, most);
  return able.filter(({ over }) => !less(thinnest, over)).map(({ row }) => row);
}

/**
 * What rough boards lose until they are flat: 4/4 ends at 13/16 in.
 * @source National Hardwood Lumber Association, Rules for the Measurement and Inspection of Hardwood and Cypress:
 * thickness of surfaced lumber; from memory
 */
export const planing = (unit: Unit): Rational => roundFigure("3/16", "4", unit);

/** A thickness by which rough boards are sold: 4/4, 5/4 and on. Others are sold planed, or measured. */
export const isQuarter = (thickness: Rational | undefined, unit: Unit): boolean =>
  thickness !== undefined && unit === "in" && !less(thickness, ratio(1)) && isWhole(times(4, thickness));
