import { Fault } from "../length";

export type Scale = "F" | "C";

/**
 * The moisture content in %, of the dry wood's weight, that wood comes to in air that stays as it is.
 * @param temperature of the air, from the coldest to the hottest of the handbook's table
 * @param humidity relative humidity in %, 0 to 100
 * @throws Fault `moisture.temperature`
 * @source Wood Handbook, FPL-GTR-190 (2010), Eq. 4-5; Simpson, FPL-RN-0268 (1998)
 */
export function equilibriumMoisture(temperature: number, scale: Scale, humidity: number): number {
  const { least, most } = RANGE[scale];
  if (!(temperature >= least && temperature <= most))
    throw new Fault("moisture.temperature", { argument: "temperature", temperature, scale, least, most });
  const t = scale === "C" ? temperature : ((temperature - 32) * 5) / 9;
  const h = humidity / 100;
  const weight = 349 + 1.29 * t + 0.0135 * t ** 2;
  const kh = (0.805 + 0.000736 * t - 0.00000273 * t ** 2) * h;
  const first = (6.27 - 0.00938 * t - 0.000303 * t ** 2) * kh;
  const second = first * (1.91 + 0.0407 * t - 0.000293 * t ** 2) * kh;
  return (1800 / weight) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
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
