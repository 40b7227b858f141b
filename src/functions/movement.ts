import { toDouble } from "../core/length";
import { movement } from "../core/wood";
import { cut, lengthAsTyped, moisture, species } from "./arguments";
import { cellFunction } from "./calls";

/** @customenum {string} */
enum SawnCut {
  /** Flat sawn: moves most */
  flat = "flat",
  /** Quarter sawn */
  quarter = "quarter",
}

/**
 * Estimates how much wider or narrower a solid board becomes as its moisture content changes (boards of one species differ, so leave more room than that; local codes, the maker's data and licensed practice decide).
 * @customfunction
 * @group Wood and loads
 * @param {any} width Width across the grain, more than 0, in any unit; a text in feet gives inches, one in cm or m millimeters
 * @param {any} species The wood, such as cherry, hard maple or "Oak, black"; panels have no coefficient
 * @param {any} from_moisture Moisture content now in %, 0 to 30 (0 is written as none or 0 %); EMC estimates it
 * @param {any} to_moisture Moisture content later in %, 0 to 30; coefficients are meant for 6 to 14
 * @param {SawnCut} [cut] flat (default) or quarter sawn
 * @returns {number} Change of the width, in the unit of the width; below 0 where the board shrinks
 * @throws #VALUE! for a wood that is not known, with the nearest names, and for moisture above fiber saturation, about 30 %
 * @example =DRAWER.MOVEMENT(12, "cherry", 8, 12) // => 0.11904
 * @example =DRAWER.MOVEMENT("232 mm", "white fir", 8, 11) // => 1.7052
 * @example =DRAWER.MOVEMENT(20, "white oak", 10, 6, "quarter") // => -0.144
 * @source Wood Handbook, FPL-GTR-190 (2010), Table 13-5 and Eq. 13-2; conifers, yellow-poplar and black willow from memory of the same table
 */
export function MOVEMENT(width: any, species: any, from_moisture: any, to_moisture: any, cut?: SawnCut): number {
  return call([width, species, from_moisture, to_moisture, cut]);
}

const call = cellFunction(
  [lengthAsTyped("width"), species("species"), moisture("from_moisture"), moisture("to_moisture"), cut("cut")],
  ([{ size }, wood, from, to, sawn]) => toDouble(movement(size, wood, from, to, sawn)),
);
