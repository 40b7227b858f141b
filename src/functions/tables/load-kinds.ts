import { splitList, type Densities, type LoadAsked, type Temperature } from "../../core/drawer";
import { Fault, naming, orElse, parseLength, toDouble } from "../../core/length";
import { airTemperature, findSpecies, type Scale, type Species } from "../../core/wood";
import {
  DENSITY,
  isDateFormat,
  readMarked,
  readMeasure,
  readPercent,
  readStiffness,
  sameWord,
  STIFFNESS,
  WEIGHT,
  type Measure,
} from "../cells";
import { each, numberCell, type Kind } from "./kinds";

/** More than a ton is no drawer's. */
const DRAWER_WEIGHT: Measure = { ...WEIGHT, most: { in: 10_000, mm: 5_000 } };

/** A load of each drawer, or a list from top to bottom: weights, or how they are estimated. */
export const loads: Kind<LoadAsked[]> = each(
  (typed, unit) =>
    (["even", "files"] as const).find((one) => sameWord(typed.value, one)) ??
    orElse(
      () => readMeasure(typed, DRAWER_WEIGHT, unit).size,
      (fault) => {
        if (fault.code !== "measure.unreadable") throw fault;
        throw new Fault("load.unreadable", { received: typed.value, plain: WEIGHT.plain[unit] });
      },
    ),
);

const rating = numberCell(1, 10_000);

/** What a pair of slides carries: a plain number, or one with its unit. */
export const slideRating: Kind<number> = (typed, unit) =>
  typeof typed.value === "string" && /[a-z]/i.test(typed.value)
    ? readMeasure(typed, { ...DRAWER_WEIGHT, least: { in: 1, mm: 1 } }, unit).size
    : rating(typed, unit);

/** `by material`, one density for all, or a list such as `Plywood 38; Maple 44 lb/ft³`. */
export const densities: Kind<Densities> = (typed, unit) => {
  if (sameWord(typed.value, "by material")) return [];
  if (typeof typed.value !== "string") return [{ density: readMeasure(typed, DENSITY, unit).size }];
  return splitList(typed.value).map((item, i) =>
    naming(`item ${i + 1}`, () => {
      const [, of = "", value = item] = NAMED.exec(item.slice(0, LONGEST)) ?? [];
      const density = readMeasure({ value }, DENSITY, unit).size;
      return of === "" ? { density } : { of, density };
    }),
  );
};

const LONGEST = 100;
const NAMED = /^(.*?)\s*(\d[\d.,/]*(?:\s*(?:lb|kg|pcf)\S*)?)$/i;

export const stiffnessOrAuto: Kind<number | "auto"> = (typed, unit) =>
  sameWord(typed.value, "auto")
    ? "auto"
    : orElse(
        () => readStiffness(typed, unit),
        (fault) => {
          if (fault.code !== "word.unknown") throw fault;
          throw new Fault("stiffness.unreadable", { received: typed.value, plain: STIFFNESS.plain[unit] });
        },
      );

/** A wood whose movement is published. */
export const speciesCell: Kind<Species> = ({ value }) => {
  if (typeof value !== "string") throw new Fault("text.wrongType", { received: value });
  return findSpecies(value);
};

/** Air without any water is nobody's shop. */
export const humidity: Kind<number> = (typed) => {
  const percent = toDouble(readPercent(typed, 100));
  if (percent < 1) throw new Fault("number.outOfRange", { received: typed.value, least: 1, most: 100 });
  return percent;
};

/** A plain number is in °F where lengths are in inches, in °C else. */
export const temperature: Kind<Temperature> = (typed, unit) => {
  const usual = unit === "in" ? "F" : "C";
  const { number, mark } = readMarked(typed, `°${usual}`);
  const named = /^°?([fc])$/.exec(mark)?.[1]?.toUpperCase() as Scale | undefined;
  if (mark !== "" && !named) throw new Fault("measure.unreadable", { received: typed.value, plain: `°${usual}` });
  return { celsius: airTemperature(number, named ?? usual) };
};

/** Of the cabinet without its drawers. */
export const cabinetWeight: Kind<number> = (typed, unit) =>
  readMeasure(typed, { ...WEIGHT, least: { in: 1, mm: 1 } }, unit).size;

/** A share of the span: `1/240`, or 240 alone, as the trade says it. */
export const share: Kind<number> = ({ value, format }) => {
  if (typeof value === "number" && format && isDateFormat(format)) throw new Fault("argument.date", {});
  const typed =
    typeof value === "string"
      ? orElse(
          () => toDouble(parseLength(value, "in")),
          () => NaN,
        )
      : typeof value === "number"
        ? value
        : NaN;
  const part = typed >= 1 ? 1 / typed : typed;
  if (!(part >= 1 / 2000 && part <= 1 / 20)) throw new Fault("share.outOfRange", { received: value });
  return part;
};
