import type { Unit } from "../length";
import { KG_PER_LB } from "./density";
import { STANDARD_GRAVITY } from "./load";

/** A panel as published: moduli of elasticity in bending differ by maker, grade and direction of the face grain. */
export interface Panel {
  name: string;
  /** Lowest and highest published modulus, in MPa. */
  stiffness: readonly [lowest: number, highest: number];
}

/**
 * Moduli of plywood differ by a fifth, of the others by up to three quarters: a maker's own figure is better.
 * @source Wood Handbook, FPL-GTR-190 (2010), Table 12-1, static bending; from memory
 */
export const PANELS = [
  { name: "plywood", stiffness: [6960, 8550] },
  { name: "OSB", stiffness: [4410, 6280] },
  { name: "MDF", stiffness: [3590, 3590] },
  { name: "particleboard", stiffness: [2760, 4140] },
  { name: "hardboard", stiffness: [3100, 5520] },
] as const satisfies readonly Panel[];

/** Exact by definition (NIST SP 811, SP 330): pound, inch and standard gravity. */
export const MPA_PER_PSI = (KG_PER_LB * STANDARD_GRAVITY) / 25.4 ** 2;

/** That of the panel that a material's name tells, in psi or MPa; none where it tells none. */
export function stiffnessByName(material: string, unit: Unit): number | undefined {
  const named = PANELS.find(({ name }) => material.toLowerCase().includes(name.toLowerCase()));
  const panel = named ?? (/ply|baltic/i.test(material) ? PANELS[0] : undefined);
  return panel && panel.stiffness[0] / (unit === "in" ? MPA_PER_PSI : 1);
}

export type PanelName = (typeof PANELS)[number]["name"];

/** The lowest published modulus in MPa, so that a sag is rather over- than understated. */
export const panelStiffness = (name: PanelName): number => PANELS.find((panel) => panel.name === name)!.stiffness[0];
