import { evenLoad } from "../core/wood";
import { length, loadRate, unit } from "./arguments";
import { cellFunction } from "./calls";
import { estimate } from "./cells";

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Estimates what a drawer carries at an even design rate (weigh what is heavier, anchor tall cabinets, open one drawer at a time, keep children off; local codes, the maker's data and licensed practice decide).
 * @customfunction
 * @group Wood and loads
 * @param {any} inside_width Clear width inside the box, more than 0
 * @param {any} inside_depth Clear depth inside the box, more than 0
 * @param {any} [rate] Even load: 15 lb/ft², 718 Pa (default); plain numbers are in lb/ft², in Pa with mm, others as 73 kg/m²
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {number} Load in lb, or in kg where the unit is mm, without the box's own weight
 * @throws #VALUE! where a size is no length more than 0, or the rate is none that a drawer bears
 * @example =DRAWER.DRAWERLOAD(16, 20) // => 33.3333333333
 * @example =DRAWER.DRAWERLOAD(400, 500, "73 kg/m²", "mm") // => 14.6
 * @source ANSI/KCMA A161.1, clause 7.1: 15 lb/ft² (718 Pa)
 */
export function DRAWERLOAD(inside_width: any, inside_depth: any, rate?: any, unit?: Unit): number {
  return call([inside_width, inside_depth, rate, unit]);
}

const call = cellFunction(
  [length("inside_width"), length("inside_depth"), loadRate("rate"), unit("unit")],
  ([width, depth, rate, unit]) => estimate(evenLoad(width, depth, rate, unit)),
);
