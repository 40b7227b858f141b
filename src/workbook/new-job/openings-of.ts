import type { Choices } from "./choices";
import { jobPlaces } from "./job-places";

/** The table of openings as formulas name it: as typed, or derived from the cabinets. */
export const openingsOf = (choices: Choices): string =>
  choices.from === "cabinets" ? "Openings!$A$5#" : jobPlaces(choices).typed;
