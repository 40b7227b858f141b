import {
  BOTTOM_FITS,
  BOTTOM_FITS_READ,
  CORNER_JOINTS,
  CORNER_JOINTS_READ,
  type BottomFit,
  type CornerJoint,
  type Progression,
} from "../../core/drawer";
import { Fault, type Rational } from "../../core/length";
import { scalar, type Argument } from "./argument";
import { readFactor } from "./number";
import { word } from "./word";
import { isEmpty, readLength } from "../cells";

export const cornerJoint = (name: string): Argument<CornerJoint> => word(name, CORNER_JOINTS, CORNER_JOINTS_READ);

export const bottomFit = (name: string): Argument<BottomFit> => word(name, BOTTOM_FITS, BOTTOM_FITS_READ);

/** What graduated fronts grow by, read as the rule just before it asks: a length, a factor, or nothing. */
export const graduationAmount = (name: string): Argument<Rational | undefined> =>
  scalar(name, (cell, unit, earlier) => {
    const rule = earlier[earlier.length - 1] as Progression;
    if (rule === "arithmetic" && cell.value === 0) throw new Fault("zero.needed", {});
    if (isEmpty(cell.value) || rule === "equal") return undefined;
    return rule === "geometric" ? readFactor(cell, { least: 1, most: 10 }) : readLength(cell, unit, "not negative");
  });
