import { equilibriumMoisture } from "../core/wood";
import { toDouble } from "../core/length";
import { humidity, scale, temperature } from "./arguments";
import { cellFunction } from "./calls";
import { estimate } from "./cells";

/** @customenum {string} */
enum TemperatureScale {
  /** Fahrenheit */
  fahrenheit = "F",
  /** Celsius */
  celsius = "C",
}

/**
 * Estimates the moisture content that wood comes to, after weeks, in air of one temperature and relative humidity (measure your own wood; local codes, the maker's data and licensed practice decide).
 * @customfunction
 * @group Wood and loads
 * @param {any} temperature Temperature of the air, 30 to 270 °F, -1.1 to 132.2 °C; a text may name its scale, as 21 C
 * @param {any} humidity Relative humidity in %, 0 to 100 (0 is written as none or 0 %)
 * @param {TemperatureScale} [scale] Scale of plain temperatures: F (default) or C
 * @returns {number} Moisture content in % of the dry wood's weight; another than the 8 % or so of dry lumber means that it will move
 * @throws #VALUE! where the humidity is no percentage from 0 to 100, or the temperature lies outside of what was published
 * @example =DRAWER.EMC(70, 45) // => 8.45914236873
 * @example =DRAWER.EMC(21.11, 30, "C") // => 6.16958223989
 * @source Wood Handbook, FPL-GTR-190 (2010), Eq. 4-5; Simpson, FPL-RN-0268 (1998)
 */
export function EMC(temperature: any, humidity: any, scale?: TemperatureScale): number {
  return call([temperature, humidity, scale]);
}

const SCALE = 2;
const call = cellFunction(
  [temperature("temperature", SCALE), humidity("humidity"), scale("scale")],
  ([celsius, percent]) => estimate(equilibriumMoisture(celsius, toDouble(percent))),
);
