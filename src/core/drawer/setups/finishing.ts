import { equal, isZero, subtract, type Rational } from "../../length";
import { bandsOf, isMilled } from "../bands";
import { slotOf } from "../loads";
import { partsOf } from "../plan/parts";
import { frontsIn, within, type Drawer, type Hung, type PlannedOpening } from "../plan/plan";
import { pullHeightOf, pullHolesOf } from "../plan/pulls";
import type { Opening } from "../opening";
import { after, together, type Need, type Setting, type SetUp, type Step } from "./setup";

/** Applied bottoms trimmed flush, solid ones slotted, fronts milled and banded, and the holes of the pulls. */
export function finishing(plans: readonly PlannedOpening[]): Step[] {
  const needs = (of: (drawer: Drawer) => Need[]): Need[] =>
    plans.flatMap(({ opening, drawers }) => within(opening, () => drawers.flatMap(of)));
  return [
    ...(plans.some(({ opening }) => isApplied(opening)) ? [{ caution: "nailing" } as const] : []),
    ...after("trim", together(needs(trimmed))),
    ...after("slot", bySetting(needs(slots), ["slotWidth", "slotLength", "slotEnd"])),
    ...after(
      "mill",
      together(
        plans.flatMap((planned) => [...frontsIn(planned).flatMap(milledFront), ...planned.drawers.flatMap(milledBox)]),
      ),
    ),
    // What is drilled is measured on the finished front.
    ...(plans.some(({ opening }) => bandsOf("Front", opening.standards).length > 0)
      ? [{ caution: "band" } as const]
      : []),
    ...after("drill", bySetting(needs(pullHoles), ["top", "end", "left"])),
  ];
}

const bySetting = (needs: readonly Need[], order: readonly Setting[]): SetUp[] =>
  order.flatMap((setting) => together(needs.filter((need) => need.setting === setting)));

const isApplied = ({ standards }: Opening): boolean => standards["bottom fit"] === "applied";

function trimmed({ opening, label }: Drawer): Need[] {
  const overhang = opening.standards["bottom overhang"];
  if (!isApplied(opening) || isZero(overhang)) return [];
  const common = { pieces: opening.quantity, name: "Bottom", drawers: [label] } as const;
  return [{ operation: "trim", setting: "overhang", value: overhang, ...common }];
}

/** Slots for the screws of a solid bottom, which moves under the back. */
function slots(drawer: Drawer): Need[] {
  const slot = slotOf(drawer);
  if (!slot) return [];
  const { opening, label } = drawer;
  const common = { operation: "bottom slot", pieces: opening.quantity, name: "Bottom", drawers: [label] } as const;
  return [
    { ...common, setting: "slotWidth", value: slot.width },
    { ...common, setting: "slotLength", value: slot.length.value },
    ...slot.places.map((place): Need => ({ ...common, setting: "slotEnd", value: place })),
  ];
}

/** Fronts of which nothing was said of bands, or that have some. */
const milledFront = ({ opening, label }: Hung): Need[] =>
  isMilled(opening.standards) ? [{ ...milling(opening, label), pieces: opening.quantity, name: "Front" }] : [];

function milledBox(drawer: Drawer): Need[] {
  const { opening, label } = drawer;
  if (isZero(opening.standards["pre-mill"]) || isZero(opening.standards["box edge band"])) return [];
  const box = partsOf(drawer).filter(({ name }) => bandsOf(name, opening.standards).length > 0 && name !== "Front");
  return box.map(({ name, quantity }): Need => ({ ...milling(opening, label), pieces: quantity, name }));
}

const milling = ({ standards }: Opening, label: string) =>
  ({ operation: "pre-mill", setting: "cutter", value: standards["pre-mill"], drawers: [label] }) as const;

/** Holes that lie alike from both ends need one stop: the front is turned round against it. */
function pullHoles(drawer: Drawer): Need[] {
  const { opening, front, label } = drawer;
  const holes = pullHolesOf(drawer);
  if (holes.length === 0) return [];
  const common = { operation: "pull hole", pieces: opening.quantity, name: "Front", drawers: [label] } as const;
  const width = front.width.value;
  const mirrored = (hole: Rational): Rational => subtract(width, hole);
  const even = holes.every((hole, i) => equal(mirrored(hole), holes[holes.length - 1 - i]!));
  const half = even ? holes.slice(0, Math.ceil(holes.length / 2)) : holes;
  return [
    { ...common, setting: "top", value: subtract(front.top, pullHeightOf(drawer).value) },
    ...half.map((hole): Need => ({ ...common, setting: even ? "end" : "left", value: hole })),
  ];
}
