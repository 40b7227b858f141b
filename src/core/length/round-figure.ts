import { parseLength } from "./parse";
import type { Rational } from "./rational";
import type { Unit } from "./unit";

/**
 * A length that is a round figure in either unit, as the limits of the trade are.
 * @example roundFigure("1/16", "1.5", "mm") // 1.5
 */
export const roundFigure = (inches: string, mm: string, unit: Unit): Rational =>
  (KNOWN[`${inches}|${mm}|${unit}`] ??= parseLength(unit === "in" ? inches : mm, unit));

const KNOWN: Record<string, Rational> = {};
