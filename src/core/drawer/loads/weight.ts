import { multiply, toDouble, type Unit } from "../../length";
import { densityOf, KG_M3_PER_LB_FT3 } from "../../wood";
import { partsOf } from "../plan/parts";
import type { Drawer } from "../plan/plan";
import type { Densities } from "../standards";

/** What a drawer weighs empty, its front and pulls with it, in lb or kg. Slides, screws and glue are left out. */
export function boxWeight(drawer: Drawer): number {
  const { opening } = drawer;
  return partsOf(drawer)
    .filter(({ name }) => name !== "Runner")
    .map(({ quantity, length, width, thickness, material }) => {
      const volume = toDouble(multiply(multiply(length, width), thickness)) * (quantity / opening.quantity);
      return weightOf(volume, density(opening.standards.density, material, opening.unit), opening.unit);
    })
    .reduce((sum, weight) => sum + weight, 0);
}

/** The density asked for that material, or for all, else by its name; in lb/ft³ or kg/m³. */
function density(asked: Densities, material: string, unit: Unit): number {
  const own = asked.find(({ of }) => of?.toUpperCase() === material.toUpperCase()) ?? asked.find(({ of }) => !of);
  return own ? own.density : densityOf(material) / (unit === "in" ? KG_M3_PER_LB_FT3 : 1);
}

/** @param volume in cubic inches or cubic millimeters */
const weightOf = (volume: number, each: number, unit: Unit): number => (volume / (unit === "in" ? 1728 : 1e9)) * each;
