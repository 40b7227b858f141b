import { ratio, type Rational } from "./rational";

/** The unit that plain numbers of a call stand in. */
export type Unit = "in" | "mm";

/** A mark that a length text may carry. */
export type Mark = Unit | "ft" | "cm" | "m";

/**
 * How many of `unit` one of `mark` is, exactly.
 * @source NIST Handbook 44, Appendix C; NIST SP 811, Appendix B: 1 in = 25.4 mm, 1 ft = 12 in, exact by definition
 */
export const unitsIn = (mark: Mark, unit: Unit): Rational => FACTORS[unit][mark];

const FACTORS: Record<Unit, Record<Mark, Rational>> = {
  in: { in: ratio(1), ft: ratio(12), mm: ratio(5, 127), cm: ratio(50, 127), m: ratio(5000, 127) },
  mm: { in: ratio(127, 5), ft: ratio(1524, 5), mm: ratio(1), cm: ratio(10), m: ratio(1000) },
};
