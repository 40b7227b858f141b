import { groovePasses } from "../core/drawer";
import { length, unit } from "./arguments";
import { cellFunction } from "./calls";
import { lengthResult, table } from "./cells";

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Gives the passes that cut a groove wider than the kerf, each with its fence and blade height (guard and push block as the saw's manual says).
 * @customfunction
 * @group Boxes
 * @param {any} groove_width Width of the groove, at least the kerf
 * @param {any} kerf Width of the blade's cut, more than 0
 * @param {any} offset From the fence's face to the near cheek of the groove, 0 or more
 * @param {any} depth Depth of the groove, more than 0
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any[][]} A table: Pass, Fence (its face to the near side of the blade), Blade height
 * @throws #VALUE! where the groove is narrower than the kerf, or takes more than 100 passes
 * @example =DRAWER.GROOVEPASSES(0.25, 0.125, 0.375, 0.25) // => {"Pass","Fence","Blade height";1,0.375,0.25;2,0.5,0.25}
 * @source common practice: move the fence between passes, never by more than the kerf
 */
export function GROOVEPASSES(groove_width: any, kerf: any, offset: any, depth: any, unit?: Unit): any[][] {
  return call([groove_width, kerf, offset, depth, unit]);
}

const call = cellFunction(
  [length("groove_width"), length("kerf"), length("offset", "not negative"), length("depth"), unit("unit")],
  ([width, kerf, offset, depth, unit]) =>
    table(
      ["Pass", "Fence", "Blade height"],
      groovePasses(width, kerf, offset, depth).map(({ fence, bladeHeight }, i) => [
        i + 1,
        lengthResult(fence, unit),
        lengthResult(bladeHeight, unit),
      ]),
    ),
);
