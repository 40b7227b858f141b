import {
  defaultStandards,
  MOST_DIVIDERS,
  MOST_FRONTS,
  once,
  STANDARD_NAMES,
  takesOf,
  usualWritten,
  type DividersAsked,
  type ReadOtherwise,
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

/** So many, or as many as the rule of the trade says. */
function countOrAuto(most: number): Kind<number | "auto"> {
  const count = numberCell(0, most, true);
  return (typed, unit) => (sameWord(typed.value, "auto") ? "auto" : count(typed, unit));
}

/** Places that something lines up with or stands at, or none. */
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

/** How those are read that take neither a length alone nor words of a list. */
const OWN: { [N in ReadOtherwise]: Kind<Standards[N]> } = {
  "undermount deduction": orNone(positive),
  "slide lengths": lengths(),
  "runner material": textCell,
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
  "joint depth": orNone(positive),
  "joint pitch": orNone(positive),
  "joint cutter": orNone(positive),
  "box end grain": word(["horizontal", "vertical", "any"]),
  dividers: each(dividers),
  "divider material": textCell,
  "cutout width": each(lengthOr("positive", "none")),
  "hanging files": each(word(["none", "letter", "legal"])),
  "false fronts": falseFronts,
  "floor offset": orNone(notNegative),
  "side material": textCell,
  "bottom material": textCell,
  "front material": textCell,
  "door hinges": linesOrNone,
  "pulls per front": countOrAuto(2),
  "pull line": linesOrNone,
  "slide pack": orNone(pack),
  "fastener pack": orNone(pack),
  "screw lengths": lengths(),
  "slide screws": numberCell(0, 20, true),
  "corner screws": countOrAuto(20),
  "bottom screws": countOrAuto(20),
  "front screws": countOrAuto(20),
};

/** How the value of a standard is read. */
function kindOf(name: StandardName): Kind<unknown> {
  const { sign, words = [], synonyms } = takesOf(name) ?? {};
  if (sign) return lengthOr(sign, ...words);
  return name in OWN ? OWN[name as ReadOtherwise] : word(words, synonyms);
}

/** What the table of standards holds, blanks left out. */
export type StandardValues = ReadonlyMap<StandardName | "unit", Typed>;

export const readStandardValues = (raw: unknown): StandardValues => readNamedValues("standards", raw, KNOWN);

const KNOWN = ["unit", ...STANDARD_NAMES] as const;

/** The unit of a job whose standards name one. */
export const readUnit = (typed: Typed | undefined): Unit =>
  typed && !isEmpty(typed.value) ? naming("standards, unit", () => findWord<Unit>(typed.value, ["in", "mm"])) : "in";

/** Every standard of a job. @throws Fault where a value is none */
export const readStandards = once((typed: StandardValues): Readonly<Standards> => {
  const unit = readUnit(typed.get("unit"));
  const own: Partial<Record<StandardName, unknown>> = {};
  for (const [name, value] of typed) {
    if (name === "unit") continue;
    if (value.value !== 0) own[name] = naming(`standards, ${name}`, () => readStandard(name, value, unit));
    else refuseDoubtfulZero(`standards, ${name}`, insteadOfZero(name, unit), zeroMark(name, unit));
  }
  return { ...defaultStandards(unit), ...own } as Standards;
});

/** One value as typed; a blank is no value. @throws Fault without its place */
export function readStandard<N extends StandardName>(name: N, typed: Typed, unit: Unit): Standards[N] {
  if (isBlank(typed.value)) throw new Fault("argument.blank", { wanted: "value" });
  return kindOf(name)(typed, unit) as Standards[N];
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
    () => kindOf(name)({ value: 0 }, unit),
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
