import type { BottomFit, CornerJoint, Progression } from "../../core/drawer";
import { Fault, isEmpty, readLength, type Rational } from "../../core/length";
import { scalar, type Argument } from "./argument";
import { readFactor } from "./number";
import { word } from "./word";

export const cornerJoint = (name: string): Argument<CornerJoint> =>
  word(name, ["butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"], {
    "finger joint": "box joint",
  });

export const bottomFit = (name: string): Argument<BottomFit> => word(name, ["grooved", "open back", "applied"]);

/** What graduated fronts grow by, read as the rule just before it asks: a length, a factor, or nothing. */
export const graduationAmount = (name: string): Argument<Rational | undefined> =>
  scalar(name, (cell, unit, earlier) => {
    const rule = earlier[earlier.length - 1] as Progression;
    if (rule === "arithmetic" && cell.value === 0) throw new Fault("zero.needed");
    if (isEmpty(cell.value) || rule === "equal") return undefined;
    return rule === "geometric" ? readFactor(cell, { least: 1, most: 10 }) : readLength(cell, unit, "not negative");
  });
