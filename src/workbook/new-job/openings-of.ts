import type { Choices } from "./choices";
import { typedTable } from "./job-sheet";

/** The table of openings as formulas name it: as typed, or derived from the cabinets. */
export const openingsOf = (choices: Choices): string =>
  choices.from === "cabinets" ? "Openings!$A$5#" : typedTable(choices);
