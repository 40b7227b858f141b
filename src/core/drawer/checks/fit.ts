import { equal, isPositive } from "../../length";
import { fitOf, hasOwnPlay, verdictOf } from "../plan/fit";
import type { PlannedOpening } from "../plan/plan";
import type { Opening } from "../opening";
import { defaultStandards } from "../standards";
import { doubtful, wrong, type Found } from "./finding";

/**
 * Boxes that will likely not fit their slides. The default tolerances are a guess at any shop, and with them every
 * box may fall short by a hair, since slides allow nothing below the nominal: a finding that stands under every job
 * warns of none. So the fit is raised once a tolerance is the shop's own; `fitOf` tells it in any case.
 */
export function checkFit(planned: PlannedOpening): Found[] {
  const fit = fitOf(planned);
  if (!isPositive(fit.nominal)) return [wrong("box.noSideSpace", { space: fit.nominal })];
  const verdict = verdictOf(fit);
  if (verdict.kind === "always" || verdict.kind === "likely" || isGuess(planned.opening)) return [];
  return [doubtful("fit.unlikely", { ...verdict, slide: planned.opening.standards.slide })];
}

const TOLERANCES = [
  "opening tolerance",
  "thickness tolerance",
  "cut tolerance",
  "slide tolerance low",
  "slide tolerance high",
] as const;

/** Play of its own is no guess. */
const isGuess = ({ standards, unit }: Opening): boolean =>
  !hasOwnPlay(standards) && TOLERANCES.every((name) => equal(standards[name], defaultStandards(unit)[name]));
