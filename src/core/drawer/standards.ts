import { parseLength, type Rational, type Sign, type Unit } from "../length";
import { airTemperature, type Species } from "../wood";
import {
  BOTTOM_FITS,
  BOTTOM_FITS_READ,
  CORNER_JOINTS,
  CORNER_JOINTS_READ,
  FRONT_JOINTS,
  FRONT_STYLES,
  RUNNERS,
  SLIDES,
} from "./words";

/** A standard of a shop: what holds where nothing else is said. Inches and millimeters have round values of their own. */
interface Standard<T> {
  usual(unit: Unit): T;
  /** The same as it is written. */
  written?: Readonly<Record<Unit, string>>;
}

/** What is read for a standard: a length, one of a few words, or either; and what else people call those words. */
export interface Takes {
  sign?: Sign;
  words?: readonly string[];
  synonyms?: Readonly<Record<string, string>>;
}
type Told<T> = Standard<T> & { takes: Takes };

const length =
  (sign: Sign) =>
  (inches: string, mm = inches): Told<Rational> => {
    const written = { in: inches, mm };
    return { written, usual: (unit) => parseLength(written[unit], unit), takes: { sign } };
  };
const positive = length("positive");
const notNegative = length("not negative");
const anySign = length("any");
/** It follows another standard, or must be given where it is needed. */
const openLength = (sign: Sign): Told<Rational | undefined> => ({ ...open(), takes: { sign } });
const lengths = (inches: string, mm: string): Standard<readonly Rational[]> => {
  const written = { in: inches, mm };
  return { written, usual: (unit) => written[unit].split(";").map((one) => parseLength(one, unit)) };
};
const word = <T>(usual: T): Standard<T> => ({
  written: { in: String(usual), mm: String(usual) },
  usual: () => usual,
});
/** One of a few words; the first holds where nothing is said. */
const choice = <const W extends string>(words: readonly [W, ...W[]], synonyms = {}): Told<W> => ({
  ...word(words[0]),
  takes: { words, synonyms },
});
/** A length, or what a word stands for; the first of these holds where nothing is said. */
const lengthOr = <const W extends string>(sign: Sign, ...words: [W, ...W[]]): Told<Rational | W> => ({
  ...word(words[0]),
  takes: { sign, words },
});
/** The same for what is neither. */
const open = <T>(): Standard<T | undefined> => ({ usual: () => undefined });

/** A figure that is no length, as it is written and as it is reckoned with. */
const figure = <T>(of: (unit: Unit) => T, inches: string, mm = inches): Standard<T> => ({
  written: { in: inches, mm },
  usual: of,
});

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
  construction: choice(["frameless", "face frame"]),
  "frame overlay": notNegative("1/2", "12"),
  "front style": choice(FRONT_STYLES),
  "inset gap": notNegative("3/32", "2"),
  "front joint": choice(FRONT_JOINTS, CORNER_JOINTS_READ),
  "front lap": positive("1/4", "6"),
  lip: positive("3/8", "10"),
  "lip thickness": positive("3/8", "10"),
  slide: choice(SLIDES),
  "side clearance": openLength("not negative"),
  "undermount deduction": open<Rational>(),
  // What data sheets of undermount slides state besides. Zero: that one asks for nothing.
  "undermount thickest side": openLength("not negative"),
  "undermount space below": openLength("not negative"),
  "undermount space above": openLength("not negative"),
  "undermount bottom recess": openLength("not negative"),
  "undermount depth difference": openLength("not negative"),
  "undermount notch width": openLength("not negative"),
  "undermount notch height": openLength("not negative"),
  "undermount hook hole": openLength("not negative"),
  "undermount hook inset": openLength("positive"),
  "undermount hook height": openLength("positive"),
  "undermount hook depth": openLength("not negative"),
  "slide lengths": lengths("10;12;14;16;18;20;22;24;26;28", "250;300;350;400;450;500;550;600;650;700"),
  "rear clearance": notNegative("1/2", "12"),
  "box depth": lengthOr("positive", "slide"),
  "slide centerline": lengthOr("not negative", "center", "bottom"),
  "slide height": positive("1 3/4", "45"),
  "center slide height": positive("1/2", "12"),
  runner: choice(RUNNERS),
  "runner thickness": openLength("positive"),
  "runner width": positive("1", "25"),
  "runner material": open<string>(),
  "runner groove depth": openLength("positive"),
  "runner play": notNegative("1/32", "0.8"),
  "slide rating": open<number>(),
  load: figure<readonly LoadAsked[]>(() => ["even"], "even"),
  // ANSI/KCMA A161.1, clause 7.1: 15 lb/ft² (718 Pa).
  "load rate": figure<number>((unit) => (unit === "in" ? 15 : 73), "15", "73"),
  density: figure<Densities>(() => [], "by material"),
  stiffness: word<number | "auto">("auto"),
  // Of floors under their whole load: International Building Code, table 1604.3; for bottoms common practice.
  "sag limit": figure<number>(() => 1 / 240, "1/240"),
  species: open<Species>(),
  // EPA 402-K-02-003: indoors 30 to 50 %, below 60 %.
  "humidity low": word<number>(30),
  "humidity high": word<number>(60),
  temperature: figure<Temperature>(
    (unit) => ({ celsius: unit === "in" ? airTemperature(70, "F") : 21 }),
    "70 F",
    "21 C",
  ),
  "cabinet weight": open<number>(),
  "balance depth": lengthOr("positive", "center"),
  "toe recess": lengthOr("not negative", "auto"),
  "corner joint": choice(CORNER_JOINTS, CORNER_JOINTS_READ),
  "joint depth": open<Rational>(),
  "joint pitch": open<Rational>(),
  "pin width": lengthOr("positive", "auto"),
  "joint cutter": open<Rational>(),
  "dado inset": notNegative("1/4", "6"),
  "side thickness": positive("1/2", "12"),
  "end thickness": openLength("positive"),
  "bottom thickness": positive("1/4", "6"),
  "bottom fit": choice(BOTTOM_FITS, BOTTOM_FITS_READ),
  "bottom overhang": notNegative("0"),
  "bottom grain": choice(["any", "side to side", "front to back"]),
  "box grain": choice(["horizontal", "vertical", "any"]),
  "box end grain": open<BoxGrain>(),
  dividers: figure<readonly DividersAsked[]>(() => ["none"], "none"),
  "divider run": choice(["front to back", "side to side"]),
  "divider fit": choice(["dado", "loose"]),
  "divider dado depth": positive("1/8", "3"),
  "divider thickness": positive("1/4", "6"),
  "divider height": lengthOr("positive", "inside"),
  "divider play": notNegative("1/32", "0.8"),
  "divider material": open<string>(),
  "cutout width": figure<readonly (Rational | "none")[]>(() => ["none"], "none"),
  "cutout depth": positive("12", "300"),
  "cutout left": lengthOr("not negative", "center"),
  "hanging files": figure<readonly (FileKind | "none")[]>(() => ["none"], "none"),
  "groove depth": positive("1/4", "6"),
  "groove offset": notNegative("3/8", "10"),
  "bottom play": notNegative("1/16", "1.5"),
  "space below": notNegative("1/2", "12"),
  "space above": notNegative("1/4", "6"),
  "height step": notNegative("1/8", "1"),
  "match heights": choice(["opening", "none", "cabinet", "job"]),
  "front thickness": positive("3/4", "19"),
  "false fronts": figure<number>(() => 0, "none"),
  "front gap": notNegative("1/8", "3"),
  "front step": notNegative("1/16", "1"),
  "cabinet thickness": positive("3/4", "18"),
  "partition thickness": openLength("positive"),
  "stile width": openLength("positive"),
  "rail width": positive("1 1/2", "38"),
  "floor offset": open<Rational>(),
  "rail above": lengthOr("positive", "none"),
  "rail below": lengthOr("positive", "none"),
  "top reveal": anySign("1/8", "3"),
  "bottom reveal": anySign("0"),
  "end reveal": anySign("1/16", "1.5"),
  "end clearance": notNegative("0"),
  "door hinges": word<readonly Rational[] | "none">("none"),
  "hinge room": positive("3/4", "20"),
  "left reveal": openLength("any"),
  "right reveal": openLength("any"),
  "front grain": choice(["vertical", "horizontal"]),
  "front match": choice(["none", "opening", "cabinet", "panel"]),
  "edge band": notNegative("0"),
  "top edge band": openLength("not negative"),
  "bottom edge band": openLength("not negative"),
  "left edge band": openLength("not negative"),
  "right edge band": openLength("not negative"),
  "box edge band": notNegative("0"),
  "edge band allowance": notNegative("0"),
  "pre-mill": notNegative("0"),
  "side material": word<string>("Plywood"),
  "bottom material": word<string>("Plywood"),
  "front material": word<string>("Plywood"),
  "opening tolerance": notNegative("1/32", "0.8"),
  "thickness tolerance": notNegative("1/64", "0.4"),
  "cut tolerance": notNegative("1/64", "0.4"),
  "slide tolerance low": notNegative("0"),
  "slide tolerance high": notNegative("1/32", "0.8"),
  "pulls per front": word<number | "auto">("auto"),
  "two pulls from": positive("24", "600"),
  "pull spacing": notNegative("128 mm", "128"),
  "pull height": lengthOr("not negative", "center"),
  "pull line": word<readonly Rational[] | "none">("none"),
  "pull kind": choice(["bought", "shop-made"]),
  "pull length": positive("6", "150"),
  "pull width": positive("1", "25"),
  "pull standoff": positive("1/2", "12"),
  "slide pack": open<number>(),
  "fastener pack": open<number>(),
  "screw lengths": lengths(
    "3/8;1/2;5/8;3/4;1;1 1/4;1 1/2;1 3/4;2;2 1/4;2 1/2;3",
    "10;12;16;20;25;30;35;40;45;50;60;70;80",
  ),
  "slide screws": word<number>(3),
  "slide screw length": lengthOr("positive", "auto"),
  "corner fastening": choice(["auto", "pocket screws", "screws", "nails", "none"]),
  "corner screws": word<number | "auto">("auto"),
  "corner screw length": lengthOr("positive", "auto"),
  "nail spacing": positive("4", "100"),
  "bottom screws": word<number | "auto">("auto"),
  "bottom screw length": lengthOr("positive", "auto"),
  "front screws": word<number | "auto">("auto"),
  "four screws from": positive("24", "600"),
  "front screw length": lengthOr("positive", "auto"),
  "pull screw length": lengthOr("positive", "auto"),
  glue: choice(["joints", "none"]),
  kerf: notNegative("1/8", "3.2"),
  "sheet trim": notNegative("0"),
  "sheet effort": choice(["quick", "standard", "thorough"]),
};

export type StandardName = keyof typeof STANDARDS;

export const STANDARD_NAMES = Object.keys(STANDARDS) as StandardName[];

/** Those that take something else than `Takes` can say. */
export type ReadOtherwise = {
  [N in StandardName]: (typeof STANDARDS)[N] extends { takes: Takes } ? never : N;
}[StandardName];

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

/** What is read for one of them, where that can be said. */
export const takesOf = (name: StandardName): Takes | undefined => (STANDARDS[name] as Partial<Told<unknown>>).takes;
