import { Fault } from "../../core/length";
import { DESIGN_RATE } from "../../core/wood";
import { isBlank, isEmpty, RATE, readMeasure, readStiffness, STIFFNESS, WEIGHT } from "../cells";
import { scalar, type Argument } from "./argument";

/** What rests on a whole bottom, in lb or kg. Nothing is a load as well; it is written. */
export const load = (name: string): Argument<number> =>
  scalar(name, (cell, unit) => {
    const plain = WEIGHT.plain[unit];
    if (cell.value === 0) throw new Fault("zero.needed", { mark: plain });
    if (isBlank(cell.value)) throw new Fault("argument.blank", { wanted: `load in ${plain}` });
    return readMeasure(cell, WEIGHT, unit).size;
  });

/** An even load in lb/ft² or Pa: the design rate where nothing is typed. */
export const loadRate = (name: string): Argument<number> =>
  scalar(name, (cell, unit) => (isEmpty(cell.value) ? DESIGN_RATE[unit] : readMeasure(cell, RATE, unit).size));

/** A modulus of elasticity in psi or MPa; that of a panel is the lowest that is published. */
export const stiffness = (name: string): Argument<number> =>
  scalar(name, (cell, unit) => {
    const { value } = cell;
    const wanted = `modulus of elasticity in ${STIFFNESS.plain[unit]}, or a panel such as plywood`;
    if (isEmpty(value)) throw new Fault("argument.blank", { wanted, received: value });
    return readStiffness(cell, unit);
  });
