import { Fault } from "../length";

export type Scale = "F" | "C";

/**
 * The moisture content in %, of the dry wood's weight, that wood comes to in air that stays as it is.
 * @param t temperature of the air in °C
 * @param humidity relative humidity in %, 0 to 100
 * @source Wood Handbook, FPL-GTR-190 (2010), Eq. 4-5; Simpson, FPL-RN-0268 (1998)
 */
export function equilibriumMoisture(t: number, humidity: number): number {
  const weight = 349 + 1.29 * t + 0.0135 * t * t;
  const kh = ((0.805 + 0.000736 * t - 0.00000273 * t * t) * humidity) / 100;
  const first = (6.27 - 0.00938 * t - 0.000303 * t * t) * kh;
  const second = first * (1.91 + 0.0407 * t - 0.000293 * t * t) * kh;
  return (1800 / weight) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
}

/**
 * The temperature of air in °C, where the handbook's equation holds.
 * @throws Fault `moisture.temperature`
 */
export function airTemperature(degrees: number, scale: Scale): number {
  const { least, most } = RANGE[scale];
  if (!(degrees >= least && degrees <= most)) throw new Fault("moisture.temperature", { degrees, scale, least, most });
  return scale === "C" ? degrees : ((degrees - 32) * 5) / 9;
}

/** What the handbook's Table 4-2 was worked out for. */
const RANGE: Record<Scale, { least: number; most: number }> = {
  F: { least: 30, most: 270 },
  C: { least: -1.1, most: 132.2 },
};

/**
 * The moisture content in % above which water is only added between the fibers, and wood neither shrinks nor swells.
 * @source Wood Handbook, FPL-GTR-190 (2010), chapter 4: about 30 % on average
 */
export const FIBER_SATURATION = 30;
