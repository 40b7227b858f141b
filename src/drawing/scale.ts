import { toDouble, type Rational, type Unit } from "../core/length";

/** A drawing's scale: how many millimeters of paper a length takes. */
export interface Scale {
  /** As 1:10. */
  name: string;
  of(length: Rational): number;
}

/**
 * Reductions that ISO 5455 recommends, and those of an architect's scale, as 1 in to the foot (both from memory). 1:15 stands
 * between, for sheets of 2.5 m go on letter paper no larger.
 */
const REDUCTIONS: Record<Unit, readonly number[]> = {
  in: [1, 2, 4, 8, 12, 16, 24, 32, 48, 96, 192, 384, 768, 1536, 3072, 6144, 12_288, 98_304],
  mm: [1, 2, 5, 10, 15, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 100_000],
};

/**
 * The largest scale at which lengths go into their rooms on the paper.
 * @param lengths each with the millimeters that it may take
 */
export function scaleFor(lengths: readonly [length: Rational, room: number][], unit: Unit): Scale {
  const fits = (reduction: number): boolean =>
    lengths.every(([length, room]) => inMillimeters(length, unit) / reduction <= room);
  const reduction = REDUCTIONS[unit].find(fits) ?? REDUCTIONS[unit][REDUCTIONS[unit].length - 1]!;
  return { name: `1:${reduction}`, of: (length) => inMillimeters(length, unit) / reduction };
}

/** As large as it is: what is laid on the work. */
export const fullSize = (unit: Unit): Scale => ({ name: "1:1", of: (length) => inMillimeters(length, unit) });

/** On paper doubles do: no line is finer than a millionth of a millimeter. */
const inMillimeters = (length: Rational, unit: Unit): number => toDouble(length) * (unit === "in" ? 25.4 : 1);
