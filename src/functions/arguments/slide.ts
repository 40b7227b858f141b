import { SIDE_CLEARANCE, type Slide } from "../../core/drawer";
import { Fault, ZERO, type Rational } from "../../core/length";
import { scalar, type Argument } from "./argument";
import { findWord, sameWord, isBlank, readLength } from "../cells";

/** Side clearance: a length per side, or the name of a slide whose clearance is common practice. */
export const sideClearance = (name: string): Argument<Rational> =>
  scalar(name, (cell, unit) => {
    const { value } = cell;
    if (value === 0) throw new Fault("zero.doubtful", { usual: "side-mount" });
    if (isBlank(value)) return SIDE_CLEARANCE[unit]["side-mount"];
    if (sameWord(value, "none")) return ZERO;
    if (typeof value !== "string" || !/^\s*[a-z]/i.test(value)) return readLength(cell, unit, "not negative");
    if (sameWord(value, "undermount")) throw new Fault("slide.undermount", {});
    return SIDE_CLEARANCE[unit][findWord(value, KNOWN)];
  });

const KNOWN = ["side-mount", "center-mount", "wood runner"] as const satisfies Slide[];
