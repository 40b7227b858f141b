import { parseLength, type Rational, type Unit } from "../length";
import { airTemperature, type Species } from "../wood";
import type { BottomFit, CornerJoint, FrontJoint, FrontStyle, Runner, Slide } from "./words";

/** A standard of a shop: what holds where nothing else is said. Inches and millimeters have round values of their own. */
interface Standard<T> {
  usual(unit: Unit): T;
  /** The same as it is written. */
  written?: Readonly<Record<Unit, string>>;
}

const length = (inches: string, mm = inches): Standard<Rational> => {
  const written = { in: inches, mm };
  return { written, usual: (unit) => parseLength(written[unit], unit) };
};
const lengths = (inches: string, mm: string): Standard<readonly Rational[]> => {
  const written = { in: inches, mm };
  return { written, usual: (unit) => written[unit].split(";").map((one) => parseLength(one, unit)) };
};
const word = <T>(usual: T): Standard<T> => ({
  written: { in: String(usual), mm: String(usual) },
  usual: () => usual,
});
/** It follows another standard, or must be given where it is needed. */
const open = <T>(): Standard<T | undefined> => ({ usual: () => undefined });

/** A figure that is no length, as it is written and as it is reckoned with. */
const figure = <T>(written: Record<Unit, string>, of: (unit: Unit) => T): Standard<T> => ({ written, usual: of });

/** What one drawer carries, in lb or kg, or how that is estimated. */
export type LoadAsked = number | "even" | "files";

/** Folders that hang from rails. */
export type FileKind = "letter" | "legal";

/** So many at equal distances, or as many as stand at a spacing in the clear. */
export type DividersAsked = { count: number } | { spacing: Rational } | "none";

/** Of sides, or of ends. */
export type BoxGrain = "horizontal" | "vertical" | "any";

/** Of the air indoors. */
export interface Temperature {
  celsius: number;
}

/** Densities in lb/ft³ or kg/m³ of materials by name, or of all that have none of their own. */
export type Densities = readonly { of?: string; density: number }[];

/**
 * What a shop always does, each with what holds where it is left out.
 * @source common practice, where it needs one
 */
const STANDARDS = {
  construction: word<"frameless" | "face frame">("frameless"),
  "frame overlay": length("1/2", "12"),
  "front style": word<FrontStyle>("overlay"),
  "inset gap": length("3/32", "2"),
  "front joint": word<FrontJoint>("half-blind dovetail"),
  "front lap": length("1/4", "6"),
  lip: length("3/8", "10"),
  "lip thickness": length("3/8", "10"),
  slide: word<Slide>("side-mount"),
  "side clearance": open<Rational>(),
  "undermount deduction": open<Rational>(),
  // What data sheets of undermount slides state besides. Zero: that one asks for nothing.
  "undermount thickest side": open<Rational>(),
  "undermount space below": open<Rational>(),
  "undermount space above": open<Rational>(),
  "undermount bottom recess": open<Rational>(),
  "undermount depth difference": open<Rational>(),
  "undermount notch width": open<Rational>(),
  "undermount notch height": open<Rational>(),
  "undermount hook hole": open<Rational>(),
  "undermount hook inset": open<Rational>(),
  "undermount hook height": open<Rational>(),
  "undermount hook depth": open<Rational>(),
  "slide lengths": lengths("10;12;14;16;18;20;22;24;26;28", "250;300;350;400;450;500;550;600;650;700"),
  "rear clearance": length("1/2", "12"),
  "box depth": word<Rational | "slide">("slide"),
  "slide centerline": word<Rational | "center" | "bottom">("center"),
  "slide height": length("1 3/4", "45"),
  "center slide height": length("1/2", "12"),
  runner: word<Runner>("under"),
  "runner thickness": open<Rational>(),
  "runner width": length("1", "25"),
  "runner material": open<string>(),
  "runner groove depth": open<Rational>(),
  "runner play": length("1/32", "0.8"),
  "slide rating": open<number>(),
  load: figure<readonly LoadAsked[]>({ in: "even", mm: "even" }, () => ["even"]),
  // ANSI/KCMA A161.1, clause 7.1: 15 lb/ft² (718 Pa).
  "load rate": figure<number>({ in: "15", mm: "73" }, (unit) => (unit === "in" ? 15 : 73)),
  density: figure<Densities>({ in: "by material", mm: "by material" }, () => []),
  stiffness: word<number | "auto">("auto"),
  // Of floors under their whole load: International Building Code, table 1604.3; for bottoms common practice.
  "sag limit": figure<number>({ in: "1/240", mm: "1/240" }, () => 1 / 240),
  species: open<Species>(),
  // EPA 402-K-02-003: indoors 30 to 50 %, below 60 %.
  "humidity low": figure<number>({ in: "30", mm: "30" }, () => 30),
  "humidity high": figure<number>({ in: "60", mm: "60" }, () => 60),
  temperature: figure<Temperature>({ in: "70 F", mm: "21 C" }, (unit) => ({
    celsius: unit === "in" ? airTemperature(70, "F") : 21,
  })),
  "cabinet weight": open<number>(),
  "balance depth": word<Rational | "center">("center"),
  "toe recess": word<Rational | "auto">("auto"),
  "corner joint": word<CornerJoint>("butt"),
  "joint depth": open<Rational>(),
  "joint pitch": open<Rational>(),
  "pin width": word<Rational | "auto">("auto"),
  "joint cutter": open<Rational>(),
  "dado inset": length("1/4", "6"),
  "side thickness": length("1/2", "12"),
  "end thickness": open<Rational>(),
  "bottom thickness": length("1/4", "6"),
  "bottom fit": word<BottomFit>("grooved"),
  "bottom overhang": length("0"),
  "bottom grain": word<"any" | "side to side" | "front to back">("any"),
  "box grain": word<BoxGrain>("horizontal"),
  "box end grain": open<BoxGrain>(),
  dividers: figure<readonly DividersAsked[]>({ in: "none", mm: "none" }, () => ["none"]),
  "divider run": word<"front to back" | "side to side">("front to back"),
  "divider fit": word<"dado" | "loose">("dado"),
  "divider dado depth": length("1/8", "3"),
  "divider thickness": length("1/4", "6"),
  "divider height": word<Rational | "inside">("inside"),
  "divider play": length("1/32", "0.8"),
  "divider material": open<string>(),
  "hanging files": figure<readonly (FileKind | "none")[]>({ in: "none", mm: "none" }, () => ["none"]),
  "groove depth": length("1/4", "6"),
  "groove offset": length("3/8", "10"),
  "bottom play": length("1/16", "1.5"),
  "space below": length("1/2", "12"),
  "space above": length("1/4", "6"),
  "height step": length("1/8", "1"),
  "match heights": word<"opening" | "none" | "cabinet" | "job">("opening"),
  "front thickness": length("3/4", "19"),
  "false fronts": figure<number>({ in: "none", mm: "none" }, () => 0),
  "front gap": length("1/8", "3"),
  "front step": length("1/16", "1"),
  "cabinet thickness": length("3/4", "18"),
  "partition thickness": open<Rational>(),
  "stile width": open<Rational>(),
  "rail width": length("1 1/2", "38"),
  "floor offset": open<Rational>(),
  "rail above": open<Rational | "none">(),
  "rail below": open<Rational | "none">(),
  "top reveal": length("1/8", "3"),
  "bottom reveal": length("0"),
  "end reveal": length("1/16", "1.5"),
  "end clearance": length("0"),
  "left reveal": open<Rational>(),
  "right reveal": open<Rational>(),
  "front grain": word<"vertical" | "horizontal">("vertical"),
  "front match": word<"none" | "opening">("none"),
  "edge band": length("0"),
  "top edge band": open<Rational>(),
  "bottom edge band": open<Rational>(),
  "left edge band": open<Rational>(),
  "right edge band": open<Rational>(),
  "box edge band": length("0"),
  "edge band allowance": length("0"),
  "pre-mill": length("0"),
  "side material": word<string>("Plywood"),
  "bottom material": word<string>("Plywood"),
  "front material": word<string>("Plywood"),
  "opening tolerance": length("1/32", "0.8"),
  "thickness tolerance": length("1/64", "0.4"),
  "cut tolerance": length("1/64", "0.4"),
  "slide tolerance low": length("0"),
  "slide tolerance high": length("1/32", "0.8"),
  "pulls per front": word<number | "auto">("auto"),
  "two pulls from": length("24", "600"),
  "pull spacing": length("128 mm", "128"),
  "pull height": word<Rational | "center">("center"),
  "pull line": word<readonly Rational[] | "none">("none"),
  "pull kind": word<"bought" | "shop-made">("bought"),
  "pull length": length("6", "150"),
  "pull width": length("1", "25"),
  "pull standoff": length("1/2", "12"),
  "slide pack": open<number>(),
  "fastener pack": open<number>(),
  "screw lengths": lengths(
    "3/8;1/2;5/8;3/4;1;1 1/4;1 1/2;1 3/4;2;2 1/4;2 1/2;3",
    "10;12;16;20;25;30;35;40;45;50;60;70;80",
  ),
  "slide screws": word<number>(3),
  "slide screw length": word<Rational | "auto">("auto"),
  "corner fastening": word<"auto" | "pocket screws" | "screws" | "nails" | "none">("auto"),
  "corner screws": word<number | "auto">("auto"),
  "corner screw length": word<Rational | "auto">("auto"),
  "nail spacing": length("4", "100"),
  "bottom screws": word<number | "auto">("auto"),
  "bottom screw length": word<Rational | "auto">("auto"),
  "front screws": word<number | "auto">("auto"),
  "four screws from": length("24", "600"),
  "front screw length": word<Rational | "auto">("auto"),
  "pull screw length": word<Rational | "auto">("auto"),
  glue: word<"joints" | "none">("joints"),
  kerf: length("1/8", "3.2"),
  "sheet trim": length("0"),
  "sheet effort": word<"quick" | "standard" | "thorough">("quick"),
};

export type StandardName = keyof typeof STANDARDS;

export const STANDARD_NAMES = Object.keys(STANDARDS) as StandardName[];

/** Every standard's value. */
export type Standards = {
  [N in StandardName]: (typeof STANDARDS)[N] extends Standard<infer T> ? T : never;
};

/** What holds where nothing is said. */
export const defaultStandards = (unit: Unit): Readonly<Standards> =>
  (defaults[unit] ??= Object.freeze(
    Object.fromEntries(STANDARD_NAMES.map((name) => [name, STANDARDS[name].usual(unit)])) as unknown as Standards,
  ));

const defaults: Partial<Record<Unit, Readonly<Standards>>> = {};

/** One of them, by the unit. */
export const usual =
  <N extends StandardName>(name: N) =>
  (unit: Unit): Standards[N] =>
    defaultStandards(unit)[name];

/** The same as it is written: 128 mm, in inches as well. */
export const usualWritten = (name: StandardName, unit: Unit): string | undefined =>
  (STANDARDS[name] as Standard<unknown>).written?.[unit];
