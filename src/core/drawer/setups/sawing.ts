import { equal, keyOf, safeSizes, type Unit } from "../../length";
import { groupsOf } from "../groups";
import { cutList, stripOf, type Part } from "../plan/parts";
import { frontsIn, type PlannedOpening } from "../plan/plan";
import type { Opening } from "../opening";
import { after, minding, together, type Need, type SetUp, type Step } from "./setup";

/**
 * Rips by fence distance and crosscuts by stop, the widest and longest first, for what they leave makes the others.
 * Fronts that match come from one strip in order: it is set aside first, and divided after the rest.
 * @source common practice: batch every piece that shares one saw setting
 */
export function sawing(plans: readonly PlannedOpening[], unit: Unit): Step[] {
  const safe = safeSizes(unit);
  const parts = cutList(plans, false);
  const matched = plans.filter(({ opening }) => opening.standards["front match"] === "opening");
  // Where the grain of matched fronts runs up, their strip is ripped once, and crosscut in order; else crosscut once.
  const upright = matched.filter(({ opening }) => isUpright(opening));
  const single = parts.filter(({ grainGroup }) => grainGroup === undefined);
  const rips = [...single.map((part) => needOf(part, "rip")), ...upright.map((one) => across(one, "rip"))];
  const crosscuts = [
    ...single.map((part) => needOf(part, "crosscut")),
    ...matched.filter((one) => !upright.includes(one)).map((one) => across(one, "crosscut")),
  ];
  const strips = alikeStrips(matched);
  return [
    ...after("strip", [...strips.map(stripItself), ...together(strips.flatMap(betweenFronts))]),
    ...after("rip", minding("narrow", widestFirst(rips), safe.width)),
    ...after("crosscut", minding("short", widestFirst(crosscuts), safe.length)),
    ...strips.flatMap((strip) => {
      const upright = isUpright(strip[0]!.opening);
      return minding(upright ? "short" : "narrow", inOrder(strip), upright ? safe.length : safe.width);
    }),
  ];
}

const isUpright = ({ standards }: Opening): boolean => standards["front grain"] === "vertical";

const needOf = ({ name, drawers, quantity, width, length }: Part, operation: "rip" | "crosscut"): Need => ({
  operation,
  setting: operation === "rip" ? "fence" : "stop",
  value: operation === "rip" ? width : length,
  pieces: quantity,
  name,
  drawers,
});

/** A strip before it is divided: one piece, whatever fronts come of it. */
const across = (planned: PlannedOpening, operation: "rip" | "crosscut"): Need => ({
  operation,
  setting: operation === "rip" ? "fence" : "stop",
  value: planned.fronts.fronts[0]!.cut.width.value,
  pieces: planned.opening.quantity,
  name: "Front",
  drawers: labelsOf(planned),
});

const widestFirst = (needs: readonly Need[]): SetUp[] => together(needs).reverse();

/** Openings whose strips are cut alike, and so together. */
const alikeStrips = (matched: readonly PlannedOpening[]): PlannedOpening[][] =>
  groupsOf(matched, (planned) => {
    const sizes = [stripOf(planned).between, ...planned.fronts.fronts.map(({ cut }) => cut.height.value)];
    return [planned.opening.standards["front grain"], ...sizes.map(keyOf)].join("|");
  });

const copiesOf = (openings: readonly PlannedOpening[]): number =>
  openings.reduce((sum, { opening }) => sum + opening.quantity, 0);

const labelsOf = (planned: PlannedOpening): string[] => frontsIn(planned).map(({ label }) => label);

const frontsOf = (drawers: readonly string[]) => [{ name: "Front", drawers } as const];

const stripItself = (openings: readonly PlannedOpening[]): SetUp => ({
  operation: "strip",
  setting: isUpright(openings[0]!.opening) ? "strip" : "stripAcross",
  value: stripOf(openings[0]!).length,
  pieces: copiesOf(openings),
  parts: frontsOf(openings.flatMap(labelsOf)),
});

/** What is cut away between two fronts, so that the grain runs on once they hang. */
const betweenFronts = (openings: readonly PlannedOpening[]): Need[] =>
  openings
    .filter(({ fronts }) => fronts.fronts.length > 1)
    .map((planned) => ({
      operation: "strip",
      setting: "between",
      value: stripOf(planned).between,
      pieces: planned.opening.quantity,
      name: "Front",
      drawers: labelsOf(planned),
    }));

/** The fronts of a strip from the top down; neighbors of one height share a setting. */
function inOrder(openings: readonly PlannedOpening[]): SetUp[] {
  const first = openings[0]!;
  const copies = copiesOf(openings);
  const [operation, setting] = isUpright(first.opening)
    ? (["crosscut", "stopInOrder"] as const)
    : (["rip", "fenceInOrder"] as const);
  const cuts: SetUp[] = [];
  first.fronts.fronts.forEach(({ cut }, place) => {
    const labels = openings.map((planned) => labelsOf(planned)[place]!);
    const last = cuts[cuts.length - 1];
    if (!last || !equal(last.value, cut.height.value)) {
      cuts.push({ operation, setting, value: cut.height.value, pieces: copies, parts: frontsOf(labels) });
      return;
    }
    const parts = frontsOf([...last.parts[0]!.drawers, ...labels]);
    cuts[cuts.length - 1] = { ...last, pieces: last.pieces + copies, parts };
  });
  return cuts;
}
