import { DEFAULTS, findWord, sameWord, type Slide } from "../../core/drawer";
import { Fault, isBlank, readLength, ZERO, type Rational } from "../../core/length";
import { scalar, type Argument } from "./argument";

/** Side clearance: a length per side, or the name of a slide whose clearance is common practice. */
export const sideClearance = (name: string): Argument<Rational> =>
  scalar(name, (cell, unit) => {
    const { value } = cell;
    if (value === 0) throw new Fault("zero.doubtful", { usual: "side-mount" });
    if (isBlank(value)) return DEFAULTS[unit].sideClearance["side-mount"];
    if (sameWord(value, "none")) return ZERO;
    if (typeof value !== "string" || !/^\s*[a-z]/i.test(value)) return readLength(cell, unit, "not negative");
    if (sameWord(value, "undermount")) throw new Fault("slide.undermount");
    return DEFAULTS[unit].sideClearance[findWord(value, SLIDES)];
  });

const SLIDES = ["side-mount", "center-mount", "wood runner"] as const satisfies Slide[];
