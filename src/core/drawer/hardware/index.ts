import { once } from "../once";
import { isZero, keyOf, times, total, type Rational } from "../../length";
import { groupsOf } from "../groups";
import { throughBox } from "../plan/pull-holes";
import { within, type Drawer, type PlannedOpening } from "../plan/plan";
import type { Standards } from "../standards";
import { bottomItems, cornerItems, glueItems, railItems } from "./box";
import { falseFrontItems, frontItems, pullGlue, pullItems } from "./fronts";
import { isScrew, isSlide, ITEMS, PURPOSES, type Item } from "./item";
import { packsFor } from "./packs";
import { slideItems } from "./slides";

export { bought, isScrew, isSlide, type Item, type ItemName, type Purpose } from "./item";

/** Everything to buy for a plan besides its sheets, equal items together, in the order of `ITEMS` and of what they are for. */
export const hardwareOf = once((plans: readonly PlannedOpening[]): readonly Item[] => {
  const all = plans.flatMap(({ opening, falseFronts, drawers }) =>
    within(opening, () => {
      const ofEqual = (count: number, items: readonly Item[]): Item[] =>
        items.map((item) => ({
          ...item,
          ...packOf(item, opening.standards),
          quantity: times(count * opening.quantity, item.quantity),
        }));
      return [
        ...falseFronts.flatMap((hung) => ofEqual(1, falseFrontItems(hung))),
        ...alike(drawers).flatMap((equal) => ofEqual(equal.length, itemsOf(equal[0]!))),
      ];
    }),
  );
  const merged = together(all);
  return [...merged, ...packsFor(merged)].sort((a, b) => rank(a) - rank(b));
});

const rank = ({ name, purpose }: Item): number => ITEMS.indexOf(name) * PURPOSES.length + PURPOSES.indexOf(purpose);

/** What one drawer needs, in one copy. */
export const itemsOf = once((drawer: Drawer): readonly Item[] => [
  ...slideItems(drawer),
  ...cornerItems(drawer),
  ...bottomItems(drawer),
  ...frontItems(drawer),
  ...pullItems(drawer),
  ...railItems(drawer),
  ...glueItems(drawer, pullGlue(drawer)),
]);

/** Drawers of one opening that need the same, for most of them do: equal boxes behind equal fronts. */
const alike = (drawers: readonly Drawer[]): Drawer[][] =>
  groupsOf(drawers, (drawer) => {
    const { sideHeight, backHeight, front, opening, place } = drawer;
    const sizes = [sideHeight, backHeight, front.width, front.height].map(({ value }) => keyOf(value));
    // Loads of their own ask for ratings of their own, files for rails, and dividers for bands.
    const { load: loads, "hanging files": files, dividers } = opening.standards;
    const own = [loads, files, dividers].some(({ length }) => length > 1) ? place : "";
    return [...sizes, own, ...throughBox(drawer)].join(" ");
  });

const together = (items: readonly Item[]): Item[] =>
  groupsOf(
    items.filter(({ quantity }) => !isZero(quantity)),
    ({ name, unit, purpose, size, detail, width, stock, rating, wood, pack }) =>
      [name, unit, purpose, ...[size, detail, width, stock].map(sizeKey), rating, wood, pack].join("|"),
  ).map((same) => ({ ...same[0]!, quantity: total(same.map(({ quantity }) => quantity)) }));

const sizeKey = (size: Rational | undefined): string => (size ? keyOf(size) : "");

/** How many of it are sold together, where that was said. */
function packOf({ name }: Item, s: Standards): { pack?: number } {
  const pack = isSlide(name) ? s["slide pack"] : isScrew(name) ? s["fastener pack"] : undefined;
  return pack ? { pack } : {};
}
