import { Fault, less, ratio, type Rational } from "../../core/length";
import { FIBER_SATURATION } from "../../core/wood";
import { isBlank, readPercent, type Cell } from "../cells";
import { scalar, type Argument } from "./argument";

/** Relative humidity in percent. */
export const humidity = (name: string): Argument<Rational> =>
  scalar(name, (cell) => readPercent(given(cell, "relative humidity in %, such as 45"), 100));

/** Moisture in wood in percent, up to where it moves no more. */
export const moisture = (name: string): Argument<Rational> =>
  scalar(name, (cell) => {
    const read = readPercent(given(cell, "moisture content in %, such as 8"));
    if (less(ratio(FIBER_SATURATION), read))
      throw new Fault("moisture.free", { received: cell.value, most: FIBER_SATURATION });
    return read;
  });

function given(cell: Cell, wanted: string): Cell {
  if (cell.value === 0) throw new Fault("zero.needed", { mark: "%" });
  if (isBlank(cell.value)) throw new Fault("argument.blank", { wanted });
  return cell;
}
