import { ARRAY_FORMULAS } from "./array-formulas";
import { HOSTILE_CHAINS } from "./chains";
import type { HostileCase } from "./hostile-case";
import { LONG_FORMULAS } from "./long-formulas";
import { NUMBER_FORMULAS } from "./number-formulas";
import { PLACE_FORMULAS } from "./place-formulas";
import { TEXT_FORMULAS } from "./text-formulas";

/** Formulas, alone in their workbooks or in chains of cells and names. */
export const HOSTILE_FORMULAS: HostileCase[] = [
  ...ARRAY_FORMULAS,
  ...NUMBER_FORMULAS,
  ...TEXT_FORMULAS,
  ...LONG_FORMULAS,
  ...PLACE_FORMULAS,
  ...HOSTILE_CHAINS,
];
