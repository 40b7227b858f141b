import { hookHoleOf, isHoleWithinBack, notchOf } from "../plan/box-back";
import { within, type Drawer, type PlannedOpening } from "../plan/plan";
import type { StandardName } from "../standards";
import { OF_THE_BACK, unstated } from "../undermount";
import { after, together, type Need, type SetUp, type Setting, type Step } from "./setup";

/** What undermount slides want of the backs, before the box is glued; first, what nobody has said of that. */
export function backs(plans: readonly PlannedOpening[]): Step[] {
  const needs = plans.flatMap(({ opening, drawers }) => within(opening, () => drawers.flatMap(needsOf)));
  const names = OF_THE_BACK.filter((name) => plans.some(({ opening }) => lacks(opening.standards, name)));
  return [
    ...(names.length > 0 ? [{ caution: "unstated", names } as const] : []),
    ...after("notch", inOrder(needs, ["notchEnd", "notchUp"])),
    ...after("hook", inOrder(needs, ["bit", "depth", "hookUp", "hookEnd"])),
  ];
}

const lacks = (s: PlannedOpening["opening"]["standards"], name: StandardName): boolean =>
  unstated(s, [name]).length > 0;

const inOrder = (needs: readonly Need[], settings: readonly Setting[]): SetUp[] =>
  settings.flatMap((setting) => together(needs.filter((need) => need.setting === setting)));

function needsOf(drawer: Drawer): Need[] {
  const { opening, label } = drawer;
  const common = { pieces: opening.quantity, name: "Box back", drawers: [label] } as const;
  const [notch, hole] = [notchOf(drawer), hookHoleOf(drawer)];
  const notched = { operation: "back notch", ...common } as const;
  const holed = { operation: "hook hole", ...common } as const;
  return [
    ...(notch
      ? [
          { ...notched, setting: "notchEnd", value: notch.fromEnd.value } as const,
          { ...notched, setting: "notchUp", value: notch.height } as const,
        ]
      : []),
    // One that misses the back is found, and cannot be set up.
    ...(hole && isHoleWithinBack(hole, drawer)
      ? [
          { ...holed, setting: "bit", value: hole.diameter } as const,
          ...(hole.depth ? [{ ...holed, setting: "depth", value: hole.depth } as const] : []),
          { ...holed, setting: "hookUp", value: hole.up.value } as const,
          { ...holed, setting: "hookEnd", value: hole.fromEnd.value } as const,
        ]
      : []),
  ];
}
