import fc from "fast-check";
import { ratio, toDouble } from "../../src/core/length";
import { stockUses, type Part, type Problem, type Solution } from "../../src/core/sheets";
import type { Plain } from "../core/sheets/exhaustive";

/** Small sheets, and parts of which a few fill one: kerf, turning and the choice of stock matter in most problems. */
export const [LENGTH, WIDTH] = [12, 8];

const size = fc.integer({ min: 1, max: 8 });
export const plain: fc.Arbitrary<Plain> = fc.record({ length: size, width: size, turns: fc.boolean() });
export const many = fc.array(plain, { minLength: 1, maxLength: 24 });
export const kerf = fc.constantFrom(0, 1 / 8, 1);

/** A whole number, or so many eighths. */
export const exactly = (value: number) => ratio(Math.round(value * 8), 8);

export const partOf = ({ length, width, turns }: Plain, name: number, more: Partial<Part> = {}): Part => ({
  name: `${name}`,
  quantity: 1,
  length: exactly(length),
  width: exactly(width),
  grain: turns ? "any" : "length",
  ...more,
});

export const sheet = (more: Partial<Problem["stock"][number]> = {}): Problem["stock"][number] => ({
  name: "sheet",
  length: ratio(LENGTH),
  width: ratio(WIDTH),
  ...more,
});

export const problem = (parts: readonly Plain[], k: number, more: Partial<Problem> = {}): Problem => ({
  parts: parts.map((part, i) => partOf(part, i + 1)),
  stock: [sheet()],
  kerf: exactly(k),
  trim: ratio(0),
  ...more,
});

export const least = (solution: Solution): number => toDouble(solution.least.value);
export const cost = (solution: Solution): number =>
  stockUses(solution).reduce((sum, use) => sum + toDouble(use.cost), 0);
