import { DEFAULTS, findWord, sameWord, type Slide } from "../../core/drawer";
import { Fault, isBlank, readLength, type Rational } from "../../core/length";
import { scalar, type Argument } from "./argument";

/** Side clearance: a length per side, or the name of a slide whose clearance is common practice. */
export const sideClearance = (name: string): Argument<Rational> =>
  scalar(name, (cell, unit) => {
    const { value } = cell;
    const isWord = typeof value === "string" && /^\s*[a-z]/i.test(value);
    if (!isBlank(value) && !isWord) return readLength(cell, unit, "not negative");
    if (isWord && sameWord(value, "undermount")) throw new Fault("slide.undermount");
    return DEFAULTS[unit].sideClearance[isBlank(value) ? "side-mount" : findWord(value, SLIDES)];
  });

const SLIDES = ["side-mount", "center-mount", "wood runner"] as const satisfies Slide[];
