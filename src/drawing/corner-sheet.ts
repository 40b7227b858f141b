import type { Rational } from "../core/length";
import type { Dimension } from "./dimensions";
import type { Paper } from "./paper";
import type { Scale } from "./scale";

/** What a corner is drawn on at full size, and how its sizes are told. */
export interface CornerSheet {
  paper: Paper;
  scale: Scale;
  size(from: number, to: number, length: Rational, of: string, name?: string): Dimension;
}

/** How much of the pieces is seen past their corner, in millimeters. */
export const SEEN = 36;
