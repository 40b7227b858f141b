import { groupsOf } from "../groups";
import { compare, keyOf, type Rational } from "../../length";
import type { PartName } from "../plan/parts";

/** Ways to work a piece, each with its own tool or direction. */
export type Operation =
  | "rip"
  | "crosscut"
  | "strip"
  | "groove"
  | "runner groove"
  | "front rabbet"
  | "rabbet"
  | "dado"
  | "divider dado"
  | "dovetail"
  | "half-blind dovetail"
  | "box joint"
  | "pocket hole"
  | "back notch"
  | "hook hole"
  | "pre-mill"
  | "trim"
  | "bottom slot"
  | "pull hole";

/** What is set, in words that whoever shows it has. */
export type Setting =
  | "fence"
  | "stop"
  | "stop down"
  | "fence down"
  | "stop across"
  | "fence across"
  | "fence up"
  | "strip"
  | "stripAcross"
  | "between"
  | "blade"
  | "pass"
  | "passSides"
  | "passEdges"
  | "passEither"
  | "passLeft"
  | "passFront"
  | "baseline"
  | "baselineFront"
  | "baselineSide"
  | "baselineRear"
  | "socket"
  | "markTail"
  | "markFinger"
  | "jig"
  | "notchEnd"
  | "notchUp"
  | "bit"
  | "depth"
  | "hookUp"
  | "hookEnd"
  | "cutter"
  | "overhang"
  | "slotWidth"
  | "slotLength"
  | "slotEnd"
  | "end"
  | "left"
  | "top";

/** What a careful person says before a kind of work begins. */
export type Caution =
  | "general"
  | "rip"
  | "narrow"
  | "crosscut"
  | "short"
  | "strip"
  | "groove"
  | "runnerGroove"
  | "stopped"
  | "shortGroove"
  | "across"
  | "acrossRear"
  | "frontRabbet"
  | "joint"
  | "dividers"
  | "router"
  | "pocket"
  | "unstated"
  | "notch"
  | "hook"
  | "nailing"
  | "trim"
  | "slot"
  | "mill"
  | "band"
  | "drill";

/** One setting, and every piece that is worked with it. */
export interface SetUp {
  operation: Operation;
  setting: Setting;
  value: Rational;
  pieces: number;
  parts: readonly { name: PartName; drawers: readonly string[] }[];
}

/** A caution may name the standards that it asks for. */
export type Step = SetUp | { caution: Caution; names?: readonly string[] };

/** What some pieces of one drawer need: a set-up of their own, before equal ones are put together. */
export interface Need {
  operation: Operation;
  setting: Setting;
  value: Rational;
  pieces: number;
  name: PartName;
  drawers: readonly string[];
}

/** One set-up for all needs of equal value, the least first. The needs are of one operation and setting. */
export function together(needs: readonly Need[]): SetUp[] {
  const found = groupsOf(needs, ({ value }) => keyOf(value)).map((equal): SetUp => {
    const { operation, setting, value } = equal[0]!;
    const parts = groupsOf(equal, ({ name }) => name).map((alike) => ({
      name: alike[0]!.name,
      drawers: alike.flatMap(({ drawers }) => drawers),
    }));
    return { operation, setting, value, pieces: equal.reduce((sum, { pieces }) => sum + pieces, 0), parts };
  });
  return found.sort((a, b) => compare(a.value, b.value));
}

/** A caution before set-ups, where there are any. */
export const after = (caution: Caution, steps: readonly Step[]): Step[] =>
  steps.length > 0 ? [{ caution }, ...steps] : [];

/** The caution stands before the first of them that is too small to be held or guided by hand. */
export function minding(caution: Caution, setUps: readonly SetUp[], least: Rational): Step[] {
  const first = setUps.findIndex(({ value }) => compare(value, least) < 0);
  return first < 0 ? [...setUps] : [...setUps.slice(0, first), { caution }, ...setUps.slice(first)];
}
