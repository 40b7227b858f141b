import { Fault } from "../core/length";
import { tipping, type Body } from "../core/wood";
import { reaches, someDistance, someWeight, weights, type Places, type Quantity } from "./arguments";
import { cellFunction } from "./calls";
import { estimate } from "./cells";

/**
 * Estimates the moment that holds a cabinet over the moment that tips it: at 1 or less it tips (anchor tall cabinets, open one drawer at a time, keep children off; local codes, the maker's data and licensed practice decide).
 * @customfunction
 * @group Wood and loads
 * @param {any} cabinet_weight Weight of the cabinet and its closed drawers, more than 0; all weights are in one unit
 * @param {any} balance_depth From the tipping line (front feet or toe kick) back to its center of weight, more than 0; all lengths are in one unit
 * @param {any[][]} drawer_weights Weight of each open drawer with what is in it, a range or a text that lists: 40; 35
 * @param {any[][]} drawer_reaches From the tipping line forward to the center of weight of each, in the same order, below 0 behind it
 * @returns {number} Moment that holds over moment that tips: 1 or less tips, and little more leaves nothing for a child who leans on a drawer
 * @throws #VALUE! where a weight has no reach, or only some have a unit of their own; #N/A where no drawer reaches in front of the line
 * @example =DRAWER.TIPPING(120, 11, {40;40}, {14;14}) // => 1.17857142857
 * @example =DRAWER.TIPPING("60 kg", "280 mm", "20 kg; 20 kg", "360 mm; 360 mm") // => 1.16666666667
 * @source Archimedes, On the Equilibrium of Planes, book I: the law of the lever
 */
export function TIPPING(
  cabinet_weight: any,
  balance_depth: any,
  drawer_weights: any[][],
  drawer_reaches: any[][],
): number {
  return call([cabinet_weight, balance_depth, drawer_weights, drawer_reaches]);
}

const call = cellFunction(
  [someWeight("cabinet_weight"), someDistance("balance_depth"), weights("drawer_weights"), reaches("drawer_reaches")],
  ([weight, balance, drawerWeights, drawerReaches]) => {
    const drawers = paired(drawerWeights, drawerReaches);
    inOneUnit("weights", ["cabinet_weight", weight], ["drawer_weights", drawerWeights]);
    inOneUnit("lengths", ["balance_depth", balance], ["drawer_reaches", drawerReaches]);
    return estimate(tipping(weight.size, balance.size, drawers));
  },
);

/** @throws Fault `places.unequal` where a weight has no reach, or a reach no weight */
function paired(weights: Places, reaches: Places): Body[] {
  const drawers: Body[] = [];
  for (let i = 0; i < Math.max(weights.length, reaches.length); i++) {
    const [weight, reach] = [weights[i], reaches[i]];
    if (!weight !== !reach) throw new Fault("places.unequal", { place: i + 1 });
    if (weight && reach) drawers.push({ weight: weight.size, reach: reach.size });
  }
  return drawers;
}

/** @throws Fault `units.mixed` where some have a unit of their own and some have none, so that none can be told */
function inOneUnit(what: string, [first, one]: [string, Quantity], [second, others]: [string, Places]): void {
  for (const other of others)
    if (other?.marked !== undefined && other.marked !== one.marked) {
      const [own, none] = one.marked ? [first, second] : [second, first];
      throw new Fault("units.mixed", { what, own, none });
    }
}
