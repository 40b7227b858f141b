import { fromDouble, orElse, type Rational } from "../../length";
import { equilibriumMoisture, findSpecies, movement, type Species } from "../../wood";
import { isSolidWood } from "../material";
import type { Standards } from "../standards";

/** How a solid piece moves across its grain, flat sawn, over a year as the standards have it: an estimate. */
export interface Moving {
  wood: string;
  /** From the driest air to the dampest. */
  range: Rational;
  /** From the middle of both, in which it was made, to the dampest. */
  swelling: Rational;
  low: number;
  middle: number;
  high: number;
}

/** None for a sheet, or a wood without a published coefficient. */
export function movingOf(material: string, across: Rational, s: Standards): Moving | undefined {
  const wood = isSolidWood(material) ? (s.species ?? speciesNamed(material)) : undefined;
  if (!wood) return undefined;
  const humidities = [s["humidity low"], s["humidity high"]];
  const [low, high] = [Math.min(...humidities), Math.max(...humidities)];
  const middle = (low + high) / 2;
  const moisture = (humidity: number): Rational => fromDouble(equilibriumMoisture(s.temperature.celsius, humidity));
  const from = (humidity: number): Rational => movement(across, wood, moisture(humidity), moisture(high), "flat");
  return { wood: wood.name, range: from(low), swelling: from(middle), low, middle, high };
}

const speciesNamed = (material: string): Species | undefined =>
  orElse(
    () => findSpecies(material),
    () => undefined,
  );
