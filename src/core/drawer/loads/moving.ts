import { fromDouble, orElse, ratio, subtract, type Rational } from "../../length";
import { equilibriumMoisture, findSpecies, movement, SPECIES, type Species } from "../../wood";
import { isSolidWood } from "../material";
import type { Front } from "../plan/front-plan";
import type { Standards } from "../standards";

/** How a solid piece moves across its grain, flat sawn, over a year as the standards have it: an estimate. */
export interface Moving {
  wood: string;
  /** The share of its width that a percent of moisture moves it by. */
  share: Rational;
  /** By how many percent its moisture differs, from the driest air to the dampest. */
  moisture: Rational;
  /** From the driest air to the dampest. */
  range: Rational;
  /** From the middle of both, in which it was made, to the dampest. */
  swelling: Rational;
  /** From the middle to the driest. */
  shrinking: Rational;
  low: number;
  middle: number;
  high: number;
}

/**
 * None for a sheet.
 * @param unnamed stands for a wood that its name does not tell, or that has no published coefficient; none where it is left out
 */
export function movingOf(material: string, across: Rational, s: Standards, unnamed?: Species): Moving | undefined {
  const wood = isSolidWood(material) ? (s.species ?? speciesNamed(material) ?? unnamed) : undefined;
  if (!wood) return undefined;
  const humidities = [s["humidity low"], s["humidity high"]];
  const [low, high] = [Math.min(...humidities), Math.max(...humidities)];
  const middle = (low + high) / 2;
  const moisture = (humidity: number): Rational => fromDouble(equilibriumMoisture(s.temperature.celsius, humidity));
  const between = (from: number, to: number): Rational => movement(across, wood, moisture(from), moisture(to), "flat");
  return {
    wood: wood.name,
    share: ratio(wood.tangential, 100_000),
    moisture: subtract(moisture(high), moisture(low)),
    range: between(low, high),
    swelling: between(middle, high),
    shrinking: between(low, middle),
    low,
    middle,
    high,
  };
}

/** Across the grain of a front. */
export const acrossFront = ({ front, standards: s }: { front: Front; standards: Standards }): Rational =>
  s["front grain"] === "vertical" ? front.width.value : front.height.value;

/** Stands for wood that nobody named: what is left for it is rather too much than too little. */
export const MOST_MOVING: Species = {
  ...SPECIES.reduce((most, one) => (one.tangential > most.tangential ? one : most)),
  name: "a wood not known by name, reckoned as one that moves most",
};

const speciesNamed = (material: string): Species | undefined =>
  orElse(
    () => findSpecies(material),
    () => undefined,
  );
