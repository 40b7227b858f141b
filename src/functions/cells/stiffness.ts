import type { Unit } from "../../core/length";
import { PANELS, panelStiffness, type PanelName } from "../../core/wood";
import type { Cell } from "./cell";
import { findWord } from "./find-word";
import { readMeasure, STIFFNESS } from "./measure";

/**
 * A modulus of elasticity in psi or MPa; that of a panel is the lowest that is published.
 * @throws Fault `measure.unreadable`, `measure.outOfRange`, `word.unknown`
 */
export function readStiffness(cell: Cell, unit: Unit): number {
  const { value } = cell;
  if (typeof value !== "string" || !/^\s*[a-z]/i.test(value)) return readMeasure(cell, STIFFNESS, unit).size;
  const panel = findWord<PanelName>(value, NAMES, SYNONYMS);
  return readMeasure({ value: `${panelStiffness(panel)} MPa` }, STIFFNESS, unit).size;
}

const NAMES = PANELS.map(({ name }) => name);
const SYNONYMS: Record<string, PanelName> = { chipboard: "particleboard", "oriented strand board": "OSB" };
