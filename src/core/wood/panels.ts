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

export type PanelName = (typeof PANELS)[number]["name"];

/** The lowest published modulus in MPa, so that a sag is rather over- than understated. */
export const panelStiffness = (name: PanelName): number => PANELS.find((panel) => panel.name === name)!.stiffness[0];
