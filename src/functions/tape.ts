import { tape, TAPE_DECIMALS, TAPE_DENOMINATORS, type Rounding } from "../core/length";
import { anyLength, oneOf, scalar, unit, word } from "./arguments";
import { cellFunction } from "./calls";
import { isEmpty } from "./cells";

/** @customenum {string} */
enum TapeRounding {
  /** To the nearest mark, halves away from zero */
  nearest = "nearest",
  /** Toward zero */
  down = "down",
  /** Away from zero */
  up = "up",
}

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Writes a length as a tape reads it, such as 23 7/16" or 595 mm.
 * @customfunction
 * @group Lengths
 * @param {any} length The length
 * @param {any} [precision] In inches the denominator 2, 4, 8, 16 (default), 32 or 64; in mm the decimals 0 (default), 1 or 2
 * @param {TapeRounding} [rounding] nearest (default; halves away from zero), down (toward zero) or up (away from zero)
 * @param {Unit} [unit] Unit of a length without a mark, and of the text: in (default) or mm
 * @returns {string} The text
 * @throws #VALUE! where the length is blank or none, or the precision is not one of those listed
 * @example =DRAWER.TAPE(23.4375) // => "23 7/16"""
 * @example =DRAWER.TAPE(9.1667, 32, "down") // => "9 5/32"""
 * @example =DRAWER.TAPE("23 7/16 in", 1, "nearest", "mm") // => "595.3 mm"
 * @source common practice: tapes are divided into 16ths or 32nds of an inch, or into millimeters
 */
export function TAPE(length: any, precision?: any, rounding?: TapeRounding, unit?: Unit): string {
  return call([length, precision, rounding, unit]);
}

const call = cellFunction(
  [
    anyLength("length", true),
    scalar("precision", ({ value }, unit) => {
      const [allowed, usual] = unit === "in" ? [TAPE_DENOMINATORS, 16] : [TAPE_DECIMALS, 0];
      return isEmpty(value) ? usual : oneOf(value, allowed);
    }),
    word<Rounding>("rounding", ["nearest", "down", "up"]),
    unit("unit"),
  ],
  ([length, precision, rounding, unit]) => tape(length, precision, rounding, unit),
);
