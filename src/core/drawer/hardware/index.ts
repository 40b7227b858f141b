import { add, isZero, keyOf, multiply, ratio, type Rational } from "../../length";
import { within, type Drawer, type PlannedOpening } from "../plan/plan";
import { bottomItems, cornerItems, glueItems } from "./box";
import { frontItems, pullGlue, pullItems } from "./fronts";
import { ITEMS, PURPOSES, type Item } from "./item";
import { slideItems } from "./slides";

export { ITEMS, type Item, type ItemName, type Purpose } from "./item";
export { fasteningOf } from "./box";
export { blockingOf } from "./slides";
export { pocketScrew } from "./screws";

/** Everything to buy for a plan besides its sheets, equal items together, in the order of `ITEMS` and of what they are for. */
export function hardwareOf(plans: readonly PlannedOpening[]): Item[] {
  const all = plans.flatMap(({ opening, drawers }) =>
    within(opening, () =>
      alike(drawers).flatMap(({ drawer, count }) =>
        itemsOf(drawer).map((item) => copied(item, count * opening.quantity)),
      ),
    ),
  );
  const merged = together(all);
  return merged.sort((a, b) => rank(a) - rank(b));
}

const rank = ({ name, purpose }: Item): number => ITEMS.indexOf(name) * PURPOSES.length + PURPOSES.indexOf(purpose);

/** What one drawer needs, in one copy. */
export const itemsOf = (drawer: Drawer): Item[] => [
  ...slideItems(drawer),
  ...cornerItems(drawer),
  ...bottomItems(drawer),
  ...frontItems(drawer),
  ...pullItems(drawer),
  ...glueItems(drawer, pullGlue(drawer)),
];

/** Drawers of one opening that need the same, for most of them do: equal boxes behind equal fronts. */
function alike(drawers: readonly Drawer[]): { drawer: Drawer; count: number }[] {
  const kinds = new Map<string, { drawer: Drawer; count: number }>();
  for (const drawer of drawers) {
    const { sideHeight, backHeight, front } = drawer;
    const key = [sideHeight, backHeight, front.width, front.height].map(({ value }) => keyOf(value)).join(" ");
    const kind = kinds.get(key);
    if (kind) kind.count++;
    else kinds.set(key, { drawer, count: 1 });
  }
  return [...kinds.values()];
}

const copied = (item: Item, copies: number): Item => ({ ...item, quantity: multiply(item.quantity, ratio(copies)) });

function together(items: readonly Item[]): Item[] {
  const merged = new Map<string, Item>();
  for (const item of items) {
    if (isZero(item.quantity)) continue;
    const key = [item.name, item.unit, item.purpose, sizeKey(item.size), sizeKey(item.detail)].join("|");
    const like = merged.get(key);
    merged.set(key, like ? { ...like, quantity: add(like.quantity, item.quantity) } : item);
  }
  return [...merged.values()];
}

const sizeKey = (size: Rational | undefined): string => (size ? keyOf(size) : "");
