import { Fault, orElse, parseLength, toDouble, type Unit } from "../../core/length";
import { MPA_PER_PSI } from "../../core/wood";
import type { Cell } from "./cell";
import { sameWord } from "./find-word";
import { isDateFormat } from "./typed";

/** A quantity that is no length: the units that its texts may carry, and the one that plain numbers have. */
export interface Measure {
  /** How many of one base unit each is, by its name in small letters. */
  units: Readonly<Record<string, number>>;
  plain: Readonly<Record<Unit, string>>;
  least: Readonly<Record<Unit, number>>;
  most: Readonly<Record<Unit, number>>;
  /** Whether a call leaves open what unit its plain numbers are in. */
  unsaid?: boolean;
}

/** Pound, inch, foot and standard gravity are exact by definition (NIST SP 811, SP 330). */
const KG = 0.45359237;
const POUND_FORCE = KG * 9.80665;

export const WEIGHT: Measure = {
  units: { lb: KG, lbs: KG, kg: 1 },
  plain: { in: "lb", mm: "kg" },
  least: { in: 0, mm: 0 },
  most: { in: 1e6, mm: 1e6 },
};

/** Bounds lie so that a number in the other unit, or in millions of psi, is seen to be one. */
export const STIFFNESS: Measure = {
  units: { psi: MPA_PER_PSI, mpa: 1, "n/mm2": 1, gpa: 1000 },
  plain: { in: "psi", mm: "MPa" },
  least: { in: 50_000, mm: 300 },
  most: { in: 30_000_000, mm: 210_000 },
};

/** Kilograms to the square meter, which stand near by, are seen by being less than any rate in pascals. */
export const RATE: Measure = {
  units: { "lb/ft2": POUND_FORCE / 0.3048 ** 2, psf: POUND_FORCE / 0.3048 ** 2, pa: 1, kpa: 1000, "kg/m2": 9.80665 },
  plain: { in: "lb/ft²", mm: "Pa" },
  least: { in: 1, mm: 250 },
  most: { in: 200, mm: 10_000 },
};

/** What lies on a square foot or meter: as a weight in a table of standards, where kilograms are the plain unit. */
export const FLOOR_LOAD: Measure = {
  units: RATE.units,
  plain: { in: "lb/ft²", mm: "kg/m²" },
  least: { in: 1, mm: 5 },
  most: { in: 200, mm: 1000 },
};

/** Bounds lie so that a number in the other unit is seen to be one, or nearly so. */
export const DENSITY: Measure = {
  units: { "lb/ft3": KG / 0.3048 ** 3, pcf: KG / 0.3048 ** 3, "kg/m3": 1 },
  plain: { in: "lb/ft³", mm: "kg/m³" },
  least: { in: 3, mm: 80 },
  most: { in: 700, mm: 12_000 },
};

/** A quantity in the plain unit of the call, and whether its text named one. */
export interface Measured {
  size: number;
  marked: boolean;
}

/** @throws Fault `measure.unreadable`, `measure.outOfRange`, `argument.date` */
export function readMeasure(cell: Cell, measure: Measure, unit: Unit): Measured {
  const plain = measure.unsaid ? "" : measure.plain[unit];
  const { number, mark } = readMarked(cell, plain);
  const size =
    mark === "" ? number : (number * (measure.units[mark] ?? NaN)) / measure.units[folded(measure.plain[unit])]!;
  const received = cell.value;
  if (Number.isNaN(size)) throw new Fault("measure.unreadable", { received, plain });
  const [least, most] = [measure.least[unit], measure.most[unit]];
  if (size < least || size > most) throw new Fault("measure.outOfRange", { received, least, most, plain });
  return { size, marked: mark !== "" };
}

/**
 * A number and the unit behind it, in small letters and without spaces; `none` is zero.
 * @param plain what a number without a unit is in, for the message
 * @throws Fault `measure.unreadable`, `argument.date`
 */
export function readMarked({ value, format }: Cell, plain: string): { number: number; mark: string } {
  const unreadable = new Fault("measure.unreadable", { received: value, plain });
  if (typeof value === "number") {
    if (format && isDateFormat(format)) throw new Fault("argument.date", {});
    if (!Number.isFinite(value)) throw unreadable;
    return { number: value, mark: "" };
  }
  if (sameWord(value, "none")) return { number: 0, mark: "" };
  const text = typeof value === "string" && value.length <= LONGEST ? PATTERN.exec(value.trim()) : null;
  if (!text) throw unreadable;
  return orElse(
    () => ({ number: toDouble(parseLength(text[1]!, "in")), mark: folded(text[2] ?? "") }),
    (fault) => {
      throw fault.code === "length.unreadable" ? unreadable : fault;
    },
  );
}

const LONGEST = 60;
const PATTERN = /^([-\d\s.,/]*\d)\s*([^-\d\s.,/].*)?$/;

/** `kg / m²` is `kg/m2`. */
const folded = (mark: string): string =>
  mark
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s.^]/g, "");
