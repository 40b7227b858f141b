import {
  Fault,
  isBlank,
  isRational,
  isZero,
  orElse,
  writeLength,
  type Rational,
  type Typed,
  type Unit,
} from "../../length";
import { sameWord } from "../words";
import { length, lengthOr, lengths, numberCell, orNone, textCell, word, type Kind } from "./kinds";

const JOINTS = ["butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"] as const;

/** A standard: how its value is read, and what holds where nothing is typed, in inches and millimetres. */
interface Standard<T> {
  read: Kind<T>;
  in?: string;
  mm?: string;
  /** What holds in place of a default, in words. */
  follows?: string;
}

const standard = <T>(read: Kind<T>, inches: string, mm = inches): Standard<T> => ({ read, in: inches, mm });
/** A standard without a default of its own: it follows another, or must be given where it is needed. */
const open = <T>(read: Kind<T>, follows?: string): Standard<T | undefined> => ({ read, follows });

const positive = length("positive");
const notNegative = length("not negative");
const anySign = length("any");

/** A rail: its height, or none where the carcase's own top or bottom is there. */
const rail = open(lengthOr("positive", "none"));

/** So many, or as many as the rule of the trade says. */
function countOrAuto(most: number): Kind<number | "auto"> {
  const count = numberCell(0, most, true);
  return (typed, unit) => (sameWord(typed.value, "auto") ? "auto" : count(typed, unit));
}

/** A length, or what the rule of the trade gives for the stock. */
const lengthOrAuto = lengthOr("positive", "auto");

/** Places to line up with, or none. */
const lines = lengths();
const linesOrNone: Kind<Rational[] | "none"> = (typed, unit) =>
  sameWord(typed.value, "none") ? "none" : lines(typed, unit);

/**
 * What a shop always does: the names of the standards table, and of the columns that hold for one opening alone.
 * @source common practice, where a default needs one
 */
export const STANDARDS = {
  construction: standard(word(["frameless", "face frame"]), "frameless"),
  "frame overlay": standard(notNegative, "1/2", "12"),
  "front style": standard(word(["overlay", "inset"]), "overlay"),
  "inset gap": standard(notNegative, "3/32", "2"),
  slide: standard(word(["side-mount", "center-mount", "wood runner", "undermount"]), "side-mount"),
  "side clearance": open(notNegative, "that of its slide"),
  "undermount deduction": open(orNone(positive)),
  "slide lengths": standard(lengths(), "10;12;14;16;18;20;22;24;26;28", "250;300;350;400;450;500;550;600;650;700"),
  "rear clearance": standard(notNegative, "1/2", "12"),
  "box depth": standard(lengthOr("positive", "slide"), "slide"),
  "slide centerline": standard(lengthOr("not negative", "center", "bottom"), "center"),
  "slide height": standard(positive, "1 3/4", "45"),
  "slide rating": open(orNone(numberCell(1, 10_000))),
  "corner joint": standard(word(JOINTS, { "finger joint": "box joint" }), "butt"),
  "joint depth": open(orNone(positive)),
  "side thickness": standard(positive, "1/2", "12"),
  "end thickness": open(positive),
  "bottom thickness": standard(positive, "1/4", "6"),
  "bottom fit": standard(word(["grooved", "open back", "applied"]), "grooved"),
  "bottom overhang": standard(notNegative, "0"),
  "groove depth": standard(positive, "1/4", "6"),
  "groove offset": standard(notNegative, "3/8", "10"),
  "bottom play": standard(notNegative, "1/16", "1.5"),
  "space below": standard(notNegative, "1/2", "12"),
  "space above": standard(notNegative, "1/4", "6"),
  "height step": standard(notNegative, "1/8", "1"),
  "match heights": standard(word(["opening", "none", "cabinet", "job"]), "opening"),
  "front thickness": standard(positive, "3/4", "19"),
  "front gap": standard(notNegative, "1/8", "3"),
  "front step": standard(notNegative, "1/16", "1"),
  "cabinet thickness": standard(positive, "3/4", "18"),
  "partition thickness": open(positive),
  "rail above": rail,
  "rail below": rail,
  "top reveal": standard(anySign, "1/8", "3"),
  "bottom reveal": standard(anySign, "0"),
  "end reveal": standard(anySign, "1/16", "1.5"),
  "left reveal": open(anySign, "the end reveal"),
  "right reveal": open(anySign, "the end reveal"),
  "front grain": standard(word(["vertical", "horizontal"]), "vertical"),
  "front match": standard(word(["none", "opening"]), "none"),
  "edge band": standard(notNegative, "0"),
  "pre-mill": standard(notNegative, "0"),
  "side material": standard(textCell, "Plywood"),
  "bottom material": standard(textCell, "Plywood"),
  "front material": standard(textCell, "Plywood"),
  "opening tolerance": standard(notNegative, "1/32", "0.8"),
  "thickness tolerance": standard(notNegative, "1/64", "0.4"),
  "cut tolerance": standard(notNegative, "1/64", "0.4"),
  "slide tolerance low": standard(notNegative, "0"),
  "slide tolerance high": standard(notNegative, "1/32", "0.8"),
  "pulls per front": standard(countOrAuto(2), "auto"),
  "two pulls from": standard(positive, "24", "600"),
  "pull spacing": standard(notNegative, "128 mm", "128"),
  "pull height": standard(lengthOr("not negative", "center"), "center"),
  "pull line": standard(linesOrNone, "none"),
  "pull kind": standard(word(["bought", "shop-made"]), "bought"),
  "pull length": standard(positive, "6", "150"),
  "pull width": standard(positive, "1", "25"),
  "pull standoff": standard(positive, "1/2", "12"),
  "screw lengths": standard(
    lengths(),
    "3/8;1/2;5/8;3/4;1;1 1/4;1 1/2;1 3/4;2;2 1/4;2 1/2;3",
    "10;12;16;20;25;30;35;40;45;50;60;70;80",
  ),
  "slide screws": standard(numberCell(0, 20, true), "3"),
  "slide screw length": standard(lengthOrAuto, "auto"),
  "corner fastening": standard(word(["auto", "pocket screws", "screws", "nails", "none"]), "auto"),
  "corner screws": standard(countOrAuto(20), "auto"),
  "corner screw length": standard(lengthOrAuto, "auto"),
  "nail spacing": standard(positive, "4", "100"),
  "bottom screws": standard(countOrAuto(20), "auto"),
  "bottom screw length": standard(lengthOrAuto, "auto"),
  "front screws": standard(countOrAuto(20), "auto"),
  "four screws from": standard(positive, "24", "600"),
  "front screw length": standard(lengthOrAuto, "auto"),
  "pull screw length": standard(lengthOrAuto, "auto"),
  glue: standard(word(["joints", "none"]), "joints"),
  kerf: standard(notNegative, "1/8", "3.2"),
  "sheet trim": standard(notNegative, "0"),
  "sheet effort": standard(word(["quick", "standard", "thorough"]), "quick"),
} as const;

export type StandardName = keyof typeof STANDARDS;

export const STANDARD_NAMES = Object.keys(STANDARDS) as StandardName[];

/** Every standard's value. */
export type Standards = {
  [N in StandardName]: (typeof STANDARDS)[N] extends Standard<infer T> ? T : never;
};

/** What holds where nothing is typed. */
export function defaultStandards(unit: Unit): Readonly<Standards> {
  return (defaults[unit] ??= Object.freeze(
    Object.fromEntries(
      STANDARD_NAMES.map((name) => {
        const value = STANDARDS[name][unit];
        return [name, value === undefined ? undefined : readStandard(name, { value }, unit)];
      }),
    ),
  ) as unknown as Standards);
}

const defaults: Partial<Record<Unit, Standards>> = {};

/**
 * What holds in place of zero where a standard is left out, where zero could be meant and is something else: a number
 * 0, which an empty cell may give as well, then says nothing certain. Undefined where it means what a blank means.
 * @example insteadOfZero("front gap", "in") // "1/8 in"
 */
export function insteadOfZero(name: StandardName, unit: Unit): string | undefined {
  if (!takesZero(name, unit)) return undefined;
  const usual = defaultStandards(unit)[name];
  if (!isRational(usual)) return usual === undefined ? STANDARDS[name].follows : String(usual);
  const { [unit]: written = "" }: Standard<unknown> = STANDARDS[name];
  return isZero(usual) ? undefined : /[a-z]/.test(written) ? written : writeLength(usual, unit);
}

/** Whether zero, as a length or a count, is a value of that standard. */
export function takesZero(name: StandardName, unit: Unit): boolean {
  const zero: unknown = orElse(
    () => STANDARDS[name].read({ value: 0 }, unit),
    () => undefined,
  );
  return isRational(zero) || zero === 0;
}

/** One value as typed; a blank is no value. @throws Fault without its place */
export function readStandard<N extends StandardName>(name: N, typed: Typed, unit: Unit): Standards[N] {
  if (isBlank(typed.value)) throw new Fault("argument.blank", { wanted: "value" });
  return STANDARDS[name].read(typed, unit) as Standards[N];
}
