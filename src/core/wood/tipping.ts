import { Fault } from "../length";

export interface Body {
  /** All in one unit; a drawer's with what is in it. */
  weight: number;
  /** From the tipping line forward to its center of weight; below 0 where that lies behind. */
  reach: number;
}

/**
 * The moments about a tipping line, in the unit of the weights times that of the reaches.
 * @source Archimedes, On the Equilibrium of Planes, book I: the law of the lever
 */
export function moments(bodies: readonly Body[]): { holds: number; tips: number } {
  let [holds, tips] = [0, 0];
  for (const { weight, reach } of bodies) {
    if (reach > 0) tips += weight * reach;
    else holds -= weight * reach;
  }
  return { holds, tips };
}

/**
 * The moment that holds a cabinet over the moment that tips it: at 1 or less it tips. The tipping line runs along the
 * front feet, or the toe kick.
 * @param weight of the cabinet without the open drawers
 * @param balance from the tipping line back to the cabinet's center of weight, in the unit of the reaches
 * @throws Fault `tipping.none`
 */
export function tipping(weight: number, balance: number, drawers: readonly Body[]): number {
  const { holds, tips } = moments([{ weight, reach: -balance }, ...drawers]);
  if (tips === 0) throw new Fault("tipping.none", {});
  return holds / tips;
}
