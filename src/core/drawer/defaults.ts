import { ratio, ZERO, type Rational, type Unit } from "../length";
import type { Slide } from "./words";

/** What a shop does where it says nothing else. Inches and millimetres each have round values of their own. */
export interface Defaults {
  sideClearance: Record<Exclude<Slide, "undermount">, Rational>;
  slideLengths: readonly Rational[];
  rearClearance: Rational;
  frontSetback: Rational;
  spaceBelow: Rational;
  spaceAbove: Rational;
  bottomPlay: Rational;
  frontGap: Rational;
}

/**
 * @source common practice: side-mount slides take 1/2 in (12.7 mm) a side, lengths go by 2 in (50 mm),
 * applied fronts stand 1/8 in (3 mm) apart
 */
export const DEFAULTS: Record<Unit, Defaults> = {
  in: {
    sideClearance: { "side-mount": ratio(1, 2), "center-mount": ratio(1, 8), "wood runner": ratio(1, 16) },
    slideLengths: every(10, 28, 2),
    rearClearance: ratio(1, 2),
    frontSetback: ZERO,
    spaceBelow: ratio(1, 2),
    spaceAbove: ratio(1, 4),
    bottomPlay: ratio(1, 16),
    frontGap: ratio(1, 8),
  },
  mm: {
    sideClearance: { "side-mount": ratio(127, 10), "center-mount": ratio(3), "wood runner": ratio(3, 2) },
    slideLengths: every(250, 700, 50),
    rearClearance: ratio(12),
    frontSetback: ZERO,
    spaceBelow: ratio(12),
    spaceAbove: ratio(6),
    bottomPlay: ratio(3, 2),
    frontGap: ratio(3),
  },
};

function every(first: number, last: number, step: number): Rational[] {
  return Array.from({ length: (last - first) / step + 1 }, (_, i) => ratio(first + i * step));
}
