import { equal, keyOf, safeSizes, type Unit } from "../../length";
import { groupsOf } from "../groups";
import { stripsOf, type FrontStrip } from "../plan/front-strip";
import { cutList, type Part } from "../plan/parts";
import type { PlannedOpening } from "../plan/plan";
import { after, minding, together, type Need, type SetUp, type Step } from "./setup";

/**
 * Rips by fence distance and crosscuts by stop, the widest and longest first, for what they leave makes the others.
 * Fronts that match come from one strip in order: it is set aside first, and divided after the rest.
 * @source common practice: batch every piece that shares one saw setting
 */
export function sawing(plans: readonly PlannedOpening[], unit: Unit): Step[] {
  const safe = safeSizes(unit);
  const strips = stripsOf(plans);
  const single = cutList(plans, false).filter(({ grainGroup }) => grainGroup === undefined);
  const cuts = (operation: "rip" | "crosscut"): Need[] => [
    ...single.map((part) => needOf(part, operation)),
    ...strips.filter(({ isLong }) => isLong === (operation === "rip")).map((strip) => across(strip, operation)),
  ];
  const alike = alikeStrips(strips);
  return [
    ...after("strip", [...alike.map(stripItself), ...together(strips.flatMap(betweenFronts))]),
    ...after("rip", minding("narrow", widestFirst(cuts("rip")), safe.width)),
    ...after("crosscut", minding("short", widestFirst(cuts("crosscut")), safe.length)),
    ...alike.flatMap((strips) =>
      strips[0]!.isLong
        ? minding("short", inOrder(strips), safe.length)
        : minding("narrow", inOrder(strips), safe.width),
    ),
  ];
}

const needOf = ({ name, drawers, quantity, width, length }: Part, operation: "rip" | "crosscut"): Need => ({
  operation,
  setting: operation === "rip" ? "fence" : "stop",
  value: operation === "rip" ? width : length,
  pieces: quantity,
  name,
  drawers,
});

/** A strip before it is divided: one piece, whatever fronts come of it; cut along its grain, or across it. */
const across = (strip: FrontStrip, operation: "rip" | "crosscut"): Need => ({
  operation,
  setting: operation === "rip" ? "fence" : "stop",
  value: strip.width,
  pieces: copiesOf([strip]),
  name: "Front",
  drawers: labelsOf(strip),
});

const widestFirst = (needs: readonly Need[]): SetUp[] => together(needs).reverse();

/** Strips that are cut alike, and so together. */
const alikeStrips = (strips: readonly FrontStrip[]): FrontStrip[][] =>
  groupsOf(strips, ({ way, isLong, sizes, between }) => [way, isLong, ...[...sizes, ...between].map(keyOf)].join("|"));

const copiesOf = (strips: readonly FrontStrip[]): number =>
  strips.reduce((sum, { fronts }) => sum + fronts[0]!.opening.quantity, 0);

const labelsOf = ({ fronts }: FrontStrip): string[] => fronts.map(({ label }) => label);

const frontsOf = (drawers: readonly string[]) => [{ name: "Front", drawers } as const];

const stripItself = (strips: readonly FrontStrip[]): SetUp => ({
  operation: "strip",
  setting: strips[0]!.isLong ? "strip" : "stripAcross",
  value: strips[0]!.length,
  pieces: copiesOf(strips),
  parts: frontsOf(strips.flatMap(labelsOf)),
});

/** What is cut away between fronts, so that the grain runs on once they hang. */
const betweenFronts = (strip: FrontStrip): Need[] =>
  groupsOf(strip.between, keyOf).map((alike) => ({
    operation: "strip",
    setting: "between",
    value: alike[0]!,
    pieces: copiesOf([strip]),
    name: "Front",
    drawers: strip.fronts.flatMap(({ label }, i) =>
      [strip.between[i - 1], strip.between[i]].some((gap) => gap && equal(gap, alike[0]!)) ? [label] : [],
    ),
  }));

const SETTINGS = {
  down: { crosscut: "stopInOrder", rip: "fenceInOrder" },
  across: { crosscut: "stopFromLeft", rip: "fenceFromLeft" },
} as const;

/** The fronts of a strip in their order; neighbors of one size share a setting. */
function inOrder(strips: readonly FrontStrip[]): SetUp[] {
  const { way, isLong, sizes } = strips[0]!;
  const copies = copiesOf(strips);
  const operation = isLong ? "crosscut" : "rip";
  const cuts: SetUp[] = [];
  sizes.forEach((value, place) => {
    const labels = strips.map(({ fronts }) => fronts[place]!.label);
    const last = cuts[cuts.length - 1];
    if (!last || !equal(last.value, value)) {
      cuts.push({ operation, setting: SETTINGS[way][operation], value, pieces: copies, parts: frontsOf(labels) });
      return;
    }
    const parts = frontsOf([...last.parts[0]!.drawers, ...labels]);
    cuts[cuts.length - 1] = { ...last, pieces: last.pieces + copies, parts };
  });
  return cuts;
}
