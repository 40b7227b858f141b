import { failed, planJob } from "../../core/drawer";
import { crossSection, elevation, section, type Drawing } from "../../drawing/index";
import { begun, openings, readAll, standards } from "../../functions/calls/index";
import type { StandardName } from "../search/entries";

type View = "front" | "across" | "along";
/** A small cabinet of one opening, drawn with some standards so that one of them is seen. */
interface Sample {
  view: View;
  /** Larger than is usual, where the usual is too small to be seen. */
  seen?: string;
  with?: readonly (readonly [StandardName, string])[];
}

/** What a standard is about, as a drawing; undefined where none would help. */
export function sampleOf(name: StandardName): { drawing: Drawing; note: string } | undefined {
  const sample = SAMPLES[name];
  if (!sample) return undefined;
  const { view, seen, with: others = [] } = sample;
  const given = seen === undefined ? others : [...others, [name, seen] as const];
  const values = [OPENING, given.length > 0 ? given : undefined];
  const args = [openings, standards] as const;
  const [planned] = planJob(readAll(args, begun(args, values))[1].job);
  if (!planned || failed(planned)) return undefined;
  const drawer = planned.drawers[planned.drawers.length - 1]!;
  const drawing = {
    front: () => elevation([planned]),
    across: () => crossSection(drawer, planned),
    along: () => section(drawer, planned),
  };
  return { drawing: drawing[view](), note: given.map(([one, value]) => `${one}: ${value}`).join("; ") };
}

const OPENING = [
  ["Opening", "Width", "Height", "Depth", "Drawers"],
  ["A", 12, 12, 14, 2],
];

const across: Sample = { view: "across" };
const along: Sample = { view: "along" };
const reveal: Sample = { view: "front", seen: "1/2" };
const frame: Sample = { view: "front", with: [["construction", "face frame"]] };
const UNDERMOUNT = [
  ["slide", "undermount"],
  ["undermount deduction", "1 5/8"],
] as const;
const runner: Sample = { view: "across", with: [["slide", "wood runner"]] };

const SAMPLES: { readonly [N in StandardName]?: Sample } = {
  construction: { view: "front", seen: "face frame" },
  "frame overlay": frame,
  "stile width": frame,
  "rail width": frame,
  slide: across,
  "side clearance": across,
  "slide lengths": along,
  "rear clearance": along,
  "slide centerline": across,
  "slide height": across,
  "undermount deduction": { view: "across", with: UNDERMOUNT },
  runner,
  "runner width": runner,
  "runner groove depth": { view: "across", with: [...runner.with!, ["runner", "side groove"]] },
  "side thickness": across,
  "end thickness": along,
  "bottom thickness": across,
  "bottom fit": { view: "along", seen: "under back" },
  "groove depth": across,
  "groove offset": across,
  "box depth": along,
  "space below": across,
  "space above": across,
  "front thickness": along,
  "front style": { view: "front", seen: "inset" },
  "inset gap": { view: "front", seen: "1/2", with: [["front style", "inset"]] },
  "front gap": reveal,
  "top reveal": reveal,
  "bottom reveal": reveal,
  "end reveal": reveal,
  "left reveal": reveal,
  "right reveal": reveal,
  "pulls per front": { view: "front", seen: "2" },
  "pull spacing": { view: "front" },
  "pull height": { view: "front", seen: "1 1/2" },
  "pull line": { view: "front", seen: "4; 9" },
};

/** Words of the guide that are about the same. */
export const STANDARD_OF: Readonly<Record<string, StandardName>> = {
  reveal: "end reveal",
  gap: "front gap",
  overlay: "front style",
  "face frame": "construction",
  "groove offset": "groove offset",
  "side clearance": "side clearance",
  setback: "rear clearance",
  "rear clearance": "rear clearance",
  centerline: "slide centerline",
  deduction: "undermount deduction",
  runner: "runner",
  pull: "pulls per front",
  "space below": "space below",
  box: "side thickness",
  grooved: "groove depth",
};
