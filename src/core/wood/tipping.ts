import { Fault } from "../length";

export interface OpenDrawer {
  /** With what is in it; in the unit of the cabinet's weight. */
  weight: number;
  /** From the tipping line forward to its center of weight; below 0 where that lies behind. */
  reach: number;
}

/**
 * The moment that holds a cabinet over the moment that tips it: at 1 or less it tips. The tipping line runs along the
 * front feet, or the toe kick.
 * @param weight of the cabinet without the open drawers
 * @param balance from the tipping line back to the cabinet's center of weight, in the unit of the reaches
 * @throws Fault `tipping.none`
 * @source Archimedes, On the Equilibrium of Planes, book I: the law of the lever
 */
export function tipping(weight: number, balance: number, drawers: readonly OpenDrawer[]): number {
  let [holding, tips] = [weight * balance, 0];
  for (const { weight: carried, reach } of drawers) {
    if (reach > 0) tips += carried * reach;
    else holding -= carried * reach;
  }
  if (tips === 0) throw new Fault("tipping.none");
  return holding / tips;
}
