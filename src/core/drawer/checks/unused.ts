import { equal, isRational } from "../../length";
import { isSolidWood } from "../material";
import { isUnread, type Job, type Opening } from "../opening";
import { hasBand } from "../bands";
import { hasDividers } from "../dividers";
import { hasLayout } from "../joint-layout";
import { isJoined, isLipped, isWithin } from "../joined-front";
import { runnerOf } from "../runner";
import { defaultStandards, STANDARD_NAMES, type StandardName, type Standards } from "../standards";
import { doubtful, type Finding } from "./finding";

/**
 * Standards that were given and that no opening has a use for: what they say is meant for something, and holds nowhere.
 * Those that are left at what holds anyway are passed over, and so is a job of which something cannot be read.
 */
export function checkUnused({ openings, unit }: Job): Finding[] {
  if (openings.some(isUnread)) return [];
  const read = openings as readonly Opening[];
  const usual = defaultStandards(unit);
  return USES.flatMap(({ lacks, names, by }): Finding[] => {
    if (read.some(({ standards }) => by(standards))) return [];
    const given = names.flatMap((name) => {
      const where = read.filter(({ standards }) => !same(standards[name], usual[name]));
      return where.length > 0 ? [{ name, where: placesOf(name, where) }] : [];
    });
    return [...new Set(given.map(({ where }) => where))].map((where) => ({
      where,
      ...doubtful("standard.unused", {
        names: given.filter((one) => one.where === where).map(({ name }) => name),
        lacks,
      }),
    }));
  });
}

/** The table that it stands in, or the openings whose own it is. */
const placesOf = (name: StandardName, openings: readonly Opening[]): string =>
  openings.every(({ own }) => own.has(name)) ? openings.map(({ label }) => label).join(", ") : "standards";

const same = (a: unknown, b: unknown): boolean => a === b || (isRational(a) && isRational(b) && equal(a, b));

interface Use {
  /** What an opening must have for them to count. */
  lacks: string;
  names: readonly StandardName[];
  by: (s: Readonly<Standards>) => boolean;
}

const USES: readonly Use[] = [
  {
    lacks: "undermount slides",
    names: STANDARD_NAMES.filter((name) => name.startsWith("undermount ")),
    by: ({ slide }) => slide === "undermount",
  },
  {
    lacks: "slides other than undermount slides",
    names: ["side clearance"],
    by: ({ slide }) => slide !== "undermount",
  },
  {
    lacks: "side-mount slides or runners in side grooves",
    names: ["slide centerline"],
    by: (s) => s.slide === "side-mount" || runnerOf(s) === "side groove",
  },
  { lacks: "slides that are bought", names: ["slide rating"], by: ({ slide }) => slide !== "wood runner" },
  { lacks: "center-mount slides", names: ["center slide height"], by: ({ slide }) => slide === "center-mount" },
  {
    lacks: "wood runners",
    names: ["runner", "runner thickness", "runner width", "runner material"],
    by: ({ slide }) => slide === "wood runner",
  },
  {
    lacks: "wood runners in side grooves",
    names: ["runner groove depth", "runner play"],
    by: (s) => runnerOf(s) === "side groove",
  },
  {
    lacks: "a face frame",
    names: ["stile width", "rail width", "floor offset"],
    by: ({ construction }) => construction === "face frame",
  },
  {
    lacks: "overlay fronts on a face frame",
    names: ["frame overlay"],
    by: (s) => s.construction === "face frame" && s["front style"] === "overlay",
  },
  {
    lacks: "overlay fronts without a face frame",
    names: ["top reveal", "bottom reveal", "end reveal"],
    by: (s) => s.construction === "frameless" && s["front style"] === "overlay",
  },
  { lacks: "inset fronts", names: ["inset gap"], by: isWithin },
  { lacks: "hinges of a door", names: ["hinge room"], by: (s) => s["door hinges"] !== "none" },
  { lacks: "integral or lipped fronts", names: ["front joint"], by: isJoined },
  { lacks: "integral fronts", names: ["front lap"], by: (s) => s["front style"] === "integral" },
  { lacks: "lipped fronts", names: ["lip", "lip thickness"], by: isLipped },
  {
    lacks: "a rabbet, a dado or half-blind dovetails",
    names: ["joint depth"],
    by: (s) => ["rabbet", "dado", "half-blind dovetail"].includes(s["corner joint"]),
  },
  { lacks: "dovetails or box joints", names: ["joint pitch", "pin width", "joint cutter"], by: hasLayout },
  { lacks: "an edge band", names: ["edge band allowance"], by: hasBand },
  {
    lacks: "dividers",
    names: STANDARD_NAMES.filter((name) => /^divider (?!dado)/.test(name)),
    by: hasDividers,
  },
  {
    lacks: "dividers in dadoes",
    names: ["divider dado depth"],
    by: (s) => hasDividers(s) && s["divider fit"] === "dado",
  },
  {
    lacks: "a cutout",
    names: ["cutout depth", "cutout left"],
    by: (s) => s["cutout width"].some((width) => width !== "none"),
  },
  { lacks: "a dado", names: ["dado inset"], by: (s) => s["corner joint"] === "dado" },
  {
    lacks: "an applied bottom",
    names: ["bottom overhang", "nail spacing"],
    by: (s) => s["bottom fit"] === "applied",
  },
  {
    lacks: "a bottom in grooves",
    names: ["groove depth", "groove offset", "bottom play"],
    by: (s) => s["bottom fit"] !== "applied",
  },
  {
    lacks: "a bottom that runs under the back",
    names: ["bottom screws"],
    by: (s) => s["bottom fit"] === "under back",
  },
  {
    lacks: "shop-made pulls",
    names: ["pull length", "pull width", "pull standoff"],
    by: (s) => s["pull kind"] === "shop-made",
  },
  {
    lacks: "fronts or bottoms of solid wood",
    names: ["species"],
    by: (s) => isSolidWood(s["front material"]) || isSolidWood(s["bottom material"]),
  },
  {
    lacks: "a cabinet weight",
    names: ["balance depth", "toe recess"],
    by: (s) => s["cabinet weight"] !== undefined,
  },
];
