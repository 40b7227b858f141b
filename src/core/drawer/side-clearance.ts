import { ratio, type Rational, type Unit } from "../length";
import type { Slide } from "./words";

/**
 * What slides take at each side of the box; undermount slides have data sheets of their own.
 * @source common practice: side-mount slides take 1/2 in (12.7 mm) a side
 */
export const SIDE_CLEARANCE: Record<Unit, Record<Exclude<Slide, "undermount">, Rational>> = {
  in: { "side-mount": ratio(1, 2), "center-mount": ratio(1, 8), "wood runner": ratio(1, 16) },
  mm: { "side-mount": ratio(127, 10), "center-mount": ratio(3), "wood runner": ratio(3, 2) },
};
