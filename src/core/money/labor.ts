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
 * Hours by box, front and fitting, as many as there are drawers, and fronts without one; none where no minutes are given.
 * @throws Fault `rates.missing` for minutes without a rate, `rates.minutesMissing` for a rate without minutes
 */
export function laborLines(plan: readonly PlannedOpening[], rates: Rates): Line[] {
  const lines = WORK.flatMap(([name, which]) => {
    const minutes = rates[name];
    return minutes
      ? [labor(hours(which === "fronts" ? frontCount(plan) : drawerCount(plan), minutes), which, rates)]
      : [];
  });
  if (lines.length === 0 && rates["labor rate"] && !isZero(rates["labor rate"]))
    throw new Fault("rates.minutesMissing", {});
  return lines;
}

const labor = (quantity: Rational, which: (typeof WORK)[number][1], rates: Rates): Line =>
  charged("Labor", words(which), quantity, "hour", needed(rates, "labor rate"), rates["currency decimals"]);

const hours = (count: number, minutes: Rational): Rational => share(times(count, minutes), 60);

const frontCount = (plan: readonly PlannedOpening[]): number =>
  plan.reduce((sum, { opening, fronts }) => sum + opening.quantity * fronts.fronts.length, 0);

/** All drawers of a plan, in all copies. */
export const drawerCount = (plan: readonly PlannedOpening[]): number =>
  plan.reduce((sum, { opening, drawers }) => sum + opening.quantity * drawers.length, 0);
