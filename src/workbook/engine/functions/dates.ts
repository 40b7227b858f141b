import { toNumber, toText } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { CellError, fail, Unsupported, type Scalar, type Value } from "../values";
import { unproven } from "../proven";
import { dateOf, dayNumber, dayOf, daysIn, serialOf, weekday } from "./calendar";
import { scalarOf, strictNumber } from "./reading";
import { thirty } from "./year-parts";

/** The moments of TODAY and NOW, dates from their parts, and the parts of dates. */
export const dates: Record<string, Ordinary> = {
  NOW: { signature: "V", call: (_, { cells }) => serialOf(present(cells.now), cells.date1904) },
  TODAY: { signature: "V", call: (_, { cells }) => serialOf(Math.floor(present(cells.now)), cells.date1904) },

  DATEVALUE: ofText((value, { date1904 }) => serialOf(Math.floor(value), date1904)),
  TIMEVALUE: ofText((value) => value - Math.floor(value)),

  DATE: numeric(([year, month, day], { date1904 }) => {
    const [y, m, d] = [year!, month!, day!].map(Math.trunc) as [number, number, number];
    if (y < 0 || y > 9999 || Math.abs(m) > 120_000 || Math.abs(d) > 4_000_000) return fail("#NUM!");
    const first = serialOf(dayOf(y < 1900 ? y + 1900 : y, m, 1), date1904);
    // Days may lead back from beyond the last year, its months may not lead there.
    return first instanceof CellError && m > 12 ? first : serialOf(dayOf(y < 1900 ? y + 1900 : y, m, d), date1904);
  }),
  TIME: numeric(([hour, minute, second]) => {
    const parts = [hour!, minute!, second!].map(Math.trunc) as [number, number, number];
    if (parts.some((part) => part > 32_767)) return fail("#NUM!");
    const seconds = parts[0] * 3600 + parts[1] * 60 + parts[2];
    return seconds < 0 ? fail("#NUM!") : (seconds % 86_400) / 86_400;
  }),

  YEAR: ofDay((day) => dateOf(day).year),
  MONTH: ofDay((day) => dateOf(day).month),
  DAY: ofDay((day) => dateOf(day).day),
  WEEKDAY: numeric(([serial, kind = 1], { date1904 }) => {
    const day = dayNumber(serial!, date1904);
    if (day instanceof CellError) return day;
    const type = Math.trunc(kind);
    if (type === 3) return weekday(day);
    const first = type === 1 || type === 17 ? 6 : type === 2 ? 0 : type >= 11 && type <= 16 ? type - 11 : -1;
    return first < 0 ? fail("#NUM!") : ((weekday(day) - first + 7) % 7) + 1;
  }),
  WEEKNUM: strict(([serial, kind = 1], { date1904 }) => {
    const day = dayNumber(serial!, date1904);
    if (day instanceof CellError) return day;
    const type = Math.trunc(kind);
    if (type === 21) return isoWeek(day);
    const first = type === 1 || type === 17 ? 6 : type === 2 ? 0 : type >= 11 && type <= 16 ? type - 11 : -1;
    const newYear = dayOf(dateOf(day).year, 1, 1);
    return first < 0 ? fail("#NUM!") : Math.floor((day - newYear + ((weekday(newYear) - first + 7) % 7)) / 7) + 1;
  }),
  ISOWEEKNUM: ofDay(isoWeek),

  EDATE: strict(([serial, months], { date1904 }) => {
    const day = dayNumber(serial!, date1904);
    if (day instanceof CellError) return day;
    const from = dateOf(day);
    const month = from.month + Math.trunc(months!);
    if (Math.abs(month) > 120_000) return fail("#NUM!");
    return serialOf(dayOf(from.year, month, Math.min(from.day, daysIn(from.year, month))), date1904);
  }),
  EOMONTH: strict(([serial, months], { date1904 }) => {
    const day = dayNumber(serial!, date1904);
    if (day instanceof CellError) return day;
    const month = dateOf(day).month + Math.trunc(months!);
    if (Math.abs(month) > 120_000) return fail("#NUM!");
    return serialOf(dayOf(dateOf(day).year, month + 1, 0), date1904);
  }),

  DAYS: numeric(([end, start], { date1904 }) => {
    const [last, first] = [dayNumber(end!, date1904), dayNumber(start!, date1904)];
    if (last instanceof CellError) return last;
    return first instanceof CellError ? first : last - first;
  }),
  DAYS360: numeric(([start, end, european = 0], { date1904 }) => {
    const [first, last] = [dayNumber(start!, date1904), dayNumber(end!, date1904)];
    if (first instanceof CellError) return first;
    if (last instanceof CellError) return last;
    if (Math.min(first, last) <= 60) throw unproven("DAYS360", "days before March 1900");
    return thirty(dateOf(first), dateOf(last), european !== 0 ? "european" : "days360");
  }),
  DATEDIF: {
    signature: "V",
    call([start, end, unit], { cells }) {
      const numbers = [start, end].map((arg) => toNumber(scalarOf(arg)));
      const error = numbers.find((number) => number instanceof CellError);
      if (error) return error as CellError;
      const [first, last] = numbers.map((number) => dayNumber(number as number, cells.date1904));
      const text = toText(scalarOf(unit));
      if (text instanceof CellError) return text;
      if (first instanceof CellError) return first;
      if (last instanceof CellError) return last;
      return first! > last! ? fail("#NUM!") : between(first!, last!, text.toUpperCase());
    },
  },
};

type Calendar = Evaluator["cells"];

function numeric(of: (numbers: (number | undefined)[], cells: Calendar) => Scalar): Ordinary {
  return reading(of, (arg) => toNumber(scalarOf(arg)));
}

/** EDATE and its kin came with an add-in: see `strictNumber`. */
function strict(of: (numbers: (number | undefined)[], cells: Calendar) => Scalar): Ordinary {
  return reading(of, strictNumber);
}

function reading(
  of: (numbers: (number | undefined)[], cells: Calendar) => Scalar,
  read: (arg: Value) => number | CellError,
): Ordinary {
  return {
    signature: "V",
    call(args, { cells }) {
      const numbers = args.map(read);
      const error = numbers.find((number) => number instanceof CellError);
      return error ? (error as CellError) : of(numbers as number[], cells);
    },
  };
}

function ofDay(of: (day: number) => number): Ordinary {
  return numeric(([serial], { date1904 }) => {
    const day = dayNumber(serial!, date1904);
    return day instanceof CellError ? day : of(day);
  });
}

function ofText(of: (value: number, cells: Calendar) => Scalar): Ordinary {
  return {
    signature: "V",
    call([text], { cells }) {
      if (text instanceof CellError) return text;
      if (typeof text === "string" && !/[-:/]/.test(text)) return fail("#VALUE!");
      const value = typeof text === "string" ? toNumber(text) : fail("#VALUE!");
      return value instanceof CellError ? value : of(value, cells);
    },
  };
}

/** Weeks begin on Monday; the first one has the year's first Thursday. */
function isoWeek(day: number): number {
  const thursday = day - weekday(day) + 3;
  return Math.floor((thursday - dayOf(dateOf(thursday).year, 1, 1)) / 7) + 1;
}

function between(first: number, last: number, unit: string): Scalar {
  const [from, to] = [dateOf(first), dateOf(last)];
  const months = (to.year - from.year) * 12 + to.month - from.month - (to.day < from.day ? 1 : 0);
  if (unit === "D") return last - first;
  if (unit === "M") return months;
  if (unit === "Y") return Math.floor(months / 12);
  if (unit === "YM") return months % 12;
  // The program's own answers are known to be wrong for some days.
  if (unit === "MD" || unit === "YD") throw new Unsupported(`calls DATEDIF with “${unit}”, which is not reliable`);
  return fail("#NUM!");
}

function present(moment: Date): number {
  return (moment.getTime() - moment.getTimezoneOffset() * 60_000) / 86_400_000 + 25_569;
}
