import { equal, keyOf, safeSizes, type Rational, type Unit } from "../../length";
import { groupsOf } from "../groups";
import { stripsOf, type FrontStrip } from "../plan/front-strip";
import { cutList, type Part } from "../plan/parts";
import type { PlannedOpening } from "../plan/plan";
import { after, minding, together, type Need, type SetUp, type Step } from "./setup";

/**
 * Rips by fence distance and crosscuts by stop, the widest and longest first, for what they leave makes the others.
 * Fronts that match come from one strip or panel in order: it is set aside first, and divided after the rest.
 * @source common practice: batch every piece that shares one saw setting
 */
export function sawing(plans: readonly PlannedOpening[], unit: Unit): Step[] {
  const safe = safeSizes(unit);
  const strips = stripsOf(plans);
  const single = cutList(plans, false).filter(({ grainGroup }) => grainGroup === undefined);
  const cuts = (operation: "rip" | "crosscut"): Need[] => [
    ...single.map((part) => needOf(part, operation)),
    ...strips
      .filter(({ isLong, lines }) => !lines[0] && isLong === (operation === "rip"))
      .map((strip) => across(strip, operation)),
  ];
  const alike = alikeStrips(strips);
  return [
    ...after("strip", [...alike.flatMap(stripItself), ...together(strips.flatMap(betweenFronts))]),
    ...after("rip", minding("narrow", widestFirst(cuts("rip")), safe.width)),
    ...after("crosscut", minding("short", widestFirst(cuts("crosscut")), safe.length)),
    ...[...alike, ...alikeStrips(strips.flatMap(({ lines }) => lines))].flatMap((strips) =>
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
  groupsOf(strips, ({ way, isLong, sizes, between, lines, width }) =>
    [way, isLong, ...[...sizes, ...between, ...(lines[0] ? [width] : [])].map(keyOf)].join("|"),
  );

const copiesOf = (strips: readonly FrontStrip[]): number =>
  strips.reduce((sum, { fronts }) => sum + fronts[0]!.opening.quantity, 0);

const labelsOf = ({ fronts }: Pick<FrontStrip, "fronts">): string[] => fronts.map(({ label }) => label);

const frontsOf = (drawers: readonly string[]) => [{ name: "Front", drawers } as const];

function stripItself(strips: readonly FrontStrip[]): SetUp[] {
  const { isLong, length, width, lines } = strips[0]!;
  const itself = (setting: SetUp["setting"], value: Rational): SetUp => ({
    operation: "strip",
    setting,
    value,
    pieces: copiesOf(strips),
    parts: frontsOf(strips.flatMap(labelsOf)),
  });
  return [...(lines[0] ? [itself("strip", width)] : []), itself(isLong ? "strip" : "stripAcross", length)];
}

/** What is cut away between fronts, so that the grain runs on once they hang. */
function betweenFronts(strip: FrontStrip): Need[] {
  const gaps = [strip, ...strip.lines].flatMap(({ between, places }) =>
    between.map((value, i) => ({ value, fronts: places.slice(i, i + 2).flat() })),
  );
  return groupsOf(gaps, ({ value }) => keyOf(value)).map((alike) => ({
    operation: "strip",
    setting: "between",
    value: alike[0]!.value,
    pieces: copiesOf([strip]),
    name: "Front",
    drawers: [...new Set(alike.flatMap(labelsOf))],
  }));
}

/** The fronts of a strip in their order, or the lines of a panel; neighbors of one size share a setting. */
function inOrder(strips: readonly FrontStrip[]): SetUp[] {
  const { way, isLong, sizes, places } = strips[0]!;
  let run = 0;
  const runs = groupsOf(places.keys(), (place) => (place > 0 && equal(sizes[place]!, sizes[place - 1]!) ? run : ++run));
  return runs.map((alike) => ({
    operation: isLong ? "crosscut" : "rip",
    setting: way === "up" ? "fence up" : `${isLong ? "stop" : "fence"} ${way}`,
    value: sizes[alike[0]!]!,
    pieces: copiesOf(strips) * alike.length,
    parts: frontsOf(alike.flatMap((place) => strips.flatMap(({ places }) => places[place]!.map(({ label }) => label)))),
  }));
}
