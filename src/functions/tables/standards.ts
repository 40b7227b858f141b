import {
  BOTTOM_FITS,
  BOTTOM_FITS_READ,
  CORNER_JOINTS,
  CORNER_JOINTS_READ,
  defaultStandards,
  FRONT_JOINTS,
  FRONT_STYLES,
  MOST_DIVIDERS,
  MOST_FRONTS,
  RUNNERS,
  SLIDES,
  STANDARD_NAMES,
  usualWritten,
  type DividersAsked,
  type StandardName,
  type Standards,
} from "../../core/drawer";
import { Fault, isRational, isZero, naming, orElse, writeLength, type Rational, type Unit } from "../../core/length";
import {
  COUNTED,
  findWord,
  FLOOR_LOAD,
  isBlank,
  isEmpty,
  readMeasure,
  refuseDoubtfulZero,
  sameWord,
  type Typed,
  WEIGHT,
} from "../cells";
import { each, length, lengthOr, lengths, numberCell, orNone, textCell, word, type Kind } from "./kinds";
import {
  cabinetWeight,
  densities,
  humidity,
  loads,
  share,
  slideRating,
  speciesCell,
  stiffnessOrAuto,
  temperature,
} from "./load-kinds";
import { readNamedValues } from "./named-values";

const positive = length("positive");
const notNegative = length("not negative");
const anySign = length("any");

/** A rail: its height, or none where the carcase's own top or bottom is there. */
const rail = lengthOr("positive", "none");

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

/** A lone whole number is a count, as in the list of drawers. */
const dividers: Kind<DividersAsked> = (typed, unit) => {
  if (sameWord(typed.value, "none")) return "none";
  const isCount = Number.isInteger(typed.value) || /^\s*\d+\s*$/.test(String(typed.value));
  return isCount ? { count: dividerCount(typed, unit) } : { spacing: positive(typed, unit) };
};
const dividerCount = numberCell(1, MOST_DIVIDERS, true);

/** So many from the top, or all. */
const falseFronts: Kind<number> = (typed, unit) =>
  sameWord(typed.value, "all") ? MOST_FRONTS : falseCount(typed, unit);
const falseCount = numberCell(0, MOST_FRONTS, true);

/** How many are sold together. */
const pack = numberCell(1, 100_000, true);

/** How the value of each standard is read. */
const KINDS: { [N in StandardName]: Kind<Standards[N]> } = {
  construction: word(["frameless", "face frame"]),
  "frame overlay": notNegative,
  "front style": word(FRONT_STYLES),
  "inset gap": notNegative,
  "front joint": word(FRONT_JOINTS, CORNER_JOINTS_READ),
  "front lap": positive,
  lip: positive,
  "lip thickness": positive,
  slide: word(SLIDES),
  "side clearance": notNegative,
  "undermount deduction": orNone(positive),
  "undermount thickest side": notNegative,
  "undermount space below": notNegative,
  "undermount space above": notNegative,
  "undermount bottom recess": notNegative,
  "undermount depth difference": notNegative,
  "undermount notch width": notNegative,
  "undermount notch height": notNegative,
  "undermount hook hole": notNegative,
  "undermount hook inset": positive,
  "undermount hook height": positive,
  "undermount hook depth": notNegative,
  "slide lengths": lengths(),
  "rear clearance": notNegative,
  "box depth": lengthOr("positive", "slide"),
  "slide centerline": lengthOr("not negative", "center", "bottom"),
  "slide height": positive,
  "center slide height": positive,
  runner: word(RUNNERS),
  "runner thickness": positive,
  "runner width": positive,
  "runner material": textCell,
  "runner groove depth": positive,
  "runner play": notNegative,
  "slide rating": orNone(slideRating),
  load: loads,
  "load rate": (typed, unit) => readMeasure(typed, FLOOR_LOAD, unit).size,
  density: densities,
  stiffness: stiffnessOrAuto,
  "sag limit": share,
  species: orNone(speciesCell),
  "humidity low": humidity,
  "humidity high": humidity,
  temperature,
  "cabinet weight": orNone(cabinetWeight),
  "balance depth": lengthOr("positive", "center"),
  "toe recess": lengthOr("not negative", "auto"),
  "corner joint": word(CORNER_JOINTS, CORNER_JOINTS_READ),
  "joint depth": orNone(positive),
  "joint pitch": orNone(positive),
  "pin width": lengthOrAuto,
  "joint cutter": orNone(positive),
  "dado inset": notNegative,
  "side thickness": positive,
  "end thickness": positive,
  "bottom thickness": positive,
  "bottom fit": word(BOTTOM_FITS, BOTTOM_FITS_READ),
  "bottom overhang": notNegative,
  "bottom grain": word(["any", "side to side", "front to back"]),
  "box grain": word(["horizontal", "vertical", "any"]),
  "box end grain": word(["horizontal", "vertical", "any"]),
  dividers: each(dividers),
  "divider run": word(["front to back", "side to side"]),
  "divider fit": word(["dado", "loose"]),
  "divider dado depth": positive,
  "divider thickness": positive,
  "divider height": lengthOr("positive", "inside"),
  "divider play": notNegative,
  "divider material": textCell,
  "hanging files": each(word(["none", "letter", "legal"])),
  "groove depth": positive,
  "groove offset": notNegative,
  "bottom play": notNegative,
  "space below": notNegative,
  "space above": notNegative,
  "height step": notNegative,
  "match heights": word(["opening", "none", "cabinet", "job"]),
  "front thickness": positive,
  "false fronts": falseFronts,
  "front gap": notNegative,
  "front step": notNegative,
  "cabinet thickness": positive,
  "partition thickness": positive,
  "stile width": positive,
  "rail width": positive,
  "floor offset": orNone(notNegative),
  "rail above": rail,
  "rail below": rail,
  "top reveal": anySign,
  "bottom reveal": anySign,
  "end reveal": anySign,
  "end clearance": notNegative,
  "left reveal": anySign,
  "right reveal": anySign,
  "front grain": word(["vertical", "horizontal"]),
  "front match": word(["none", "opening"]),
  "edge band": notNegative,
  "top edge band": notNegative,
  "bottom edge band": notNegative,
  "left edge band": notNegative,
  "right edge band": notNegative,
  "box edge band": notNegative,
  "edge band allowance": notNegative,
  "pre-mill": notNegative,
  "side material": textCell,
  "bottom material": textCell,
  "front material": textCell,
  "opening tolerance": notNegative,
  "thickness tolerance": notNegative,
  "cut tolerance": notNegative,
  "slide tolerance low": notNegative,
  "slide tolerance high": notNegative,
  "pulls per front": countOrAuto(2),
  "two pulls from": positive,
  "pull spacing": notNegative,
  "pull height": lengthOr("not negative", "center"),
  "pull line": linesOrNone,
  "pull kind": word(["bought", "shop-made"]),
  "pull length": positive,
  "pull width": positive,
  "pull standoff": positive,
  "slide pack": orNone(pack),
  "fastener pack": orNone(pack),
  "screw lengths": lengths(),
  "slide screws": numberCell(0, 20, true),
  "slide screw length": lengthOrAuto,
  "corner fastening": word(["auto", "pocket screws", "screws", "nails", "none"]),
  "corner screws": countOrAuto(20),
  "corner screw length": lengthOrAuto,
  "nail spacing": positive,
  "bottom screws": countOrAuto(20),
  "bottom screw length": lengthOrAuto,
  "front screws": countOrAuto(20),
  "four screws from": positive,
  "front screw length": lengthOrAuto,
  "pull screw length": lengthOrAuto,
  glue: word(["joints", "none"]),
  kerf: notNegative,
  "sheet trim": notNegative,
  "sheet effort": word(["quick", "standard", "thorough"]),
};

/** What the table of standards holds, blanks left out. */
export type StandardValues = ReadonlyMap<StandardName | "unit", Typed>;

export const readStandardValues = (raw: unknown): StandardValues =>
  readNamedValues("standards", raw, ["unit", ...STANDARD_NAMES]);

/** The unit of a job whose standards name one. */
export const readUnit = (typed: Typed | undefined): Unit =>
  typed && !isEmpty(typed.value) ? naming("standards, unit", () => findWord<Unit>(typed.value, ["in", "mm"])) : "in";

/** Every standard of a job. @throws Fault where a value is none */
export function readStandards(typed: StandardValues, unit: Unit): Readonly<Standards> {
  const own: Partial<Record<StandardName, unknown>> = {};
  for (const [name, value] of typed) {
    if (name === "unit") continue;
    if (value.value !== 0) own[name] = naming(`standards, ${name}`, () => readStandard(name, value, unit));
    else refuseDoubtfulZero(`standards, ${name}`, insteadOfZero(name, unit), zeroMark(name, unit));
  }
  return { ...defaultStandards(unit), ...own } as Standards;
}

/** One value as typed; a blank is no value. @throws Fault without its place */
export function readStandard<N extends StandardName>(name: N, typed: Typed, unit: Unit): Standards[N] {
  if (isBlank(typed.value)) throw new Fault("argument.blank", { wanted: "value" });
  return KINDS[name](typed, unit);
}

/** Whether zero, as a length or a count, is a value of that standard. */
export function takesZero(name: StandardName, unit: Unit): boolean {
  const zero = zeroOf(name, unit);
  return isRational(zero) || zero === 0 || (Array.isArray(zero) && zero[0] === 0);
}

/**
 * What holds in place of zero where a standard is left out, where zero could be meant and is something else: a number
 * 0, which an empty cell may give as well, then says nothing certain. Undefined where it means what a blank means.
 * @example insteadOfZero("front gap", "in") // "1/8 in"
 */
function insteadOfZero(name: StandardName, unit: Unit): string | undefined {
  if (!takesZero(name, unit)) return undefined;
  const usual = defaultStandards(unit)[name];
  if (usual === 0) return undefined;
  if (!isRational(usual)) return usual === undefined ? FOLLOWS[name] : String(usual);
  const written = usualWritten(name, unit) ?? "";
  return isZero(usual) ? undefined : /[a-z]/.test(written) ? written : writeLength(usual, unit);
}

/** What a zero of that standard is written with; undefined for lengths, which have the job's unit. */
function zeroMark(name: StandardName, unit: Unit): string | undefined {
  if (name === "load") return WEIGHT.plain[unit];
  return zeroOf(name, unit) === 0 ? COUNTED : undefined;
}

/** What that standard reads a zero as; undefined where it cannot be one. */
const zeroOf = (name: StandardName, unit: Unit): unknown =>
  orElse(
    (): unknown => KINDS[name]({ value: 0 }, unit),
    () => undefined,
  );

/** What holds in place of a default, in words. */
const FOLLOWS: Partial<Record<StandardName, string>> = {
  "side clearance": "that of its slide",
  "left reveal": "the end reveal",
  "right reveal": "the end reveal",
  "top edge band": "the edge band",
  "bottom edge band": "the edge band",
  "left edge band": "the edge band",
  "right edge band": "the edge band",
};
