import type { PlannedOpening } from "../drawer";
import { Fault, isZero, share, times, type Rational } from "../length";
import { charged, words, type Line } from "./line";
import { needed, type Rates } from "./rates";

const WORK = [
  ["box minutes", "boxes"],
  ["front minutes", "fronts"],
  ["fitting minutes", "fitting"],
] as const;

/**
 * Hours by box, front and fitting, as many as there are drawers; none where no minutes are given.
 * @throws Fault `rates.missing` for minutes without a rate, `rates.minutesMissing` for a rate without minutes
 */
export function labourLines(drawers: number, rates: Rates): Line[] {
  const lines = WORK.flatMap(([name, which]) => {
    const minutes = rates[name];
    return minutes ? [labour(hours(drawers, minutes), which, rates)] : [];
  });
  if (lines.length === 0 && rates["labour rate"] && !isZero(rates["labour rate"]))
    throw new Fault("rates.minutesMissing");
  return lines;
}

const labour = (quantity: Rational, which: (typeof WORK)[number][1], rates: Rates): Line =>
  charged("Labour", words(which), quantity, "hour", needed(rates, "labour rate"), rates["currency decimals"]);

const hours = (drawers: number, minutes: Rational): Rational => share(times(drawers, minutes), 60);

/** All drawers of a plan, in all copies. */
export const drawerCount = (plan: readonly PlannedOpening[]): number =>
  plan.reduce((sum, { opening, drawers }) => sum + opening.quantity * drawers.length, 0);
