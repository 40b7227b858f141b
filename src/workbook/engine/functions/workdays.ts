import { toNumber } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { CellError, fail, type Scalar, type Value } from "../values";
import { dayNumber, serialOf, weekday } from "./calendar";
import { scalarOf, strictNumber } from "./reading";

/** Days that are worked on: neither weekends nor holidays. */
export const workdays: Record<string, Ordinary> = {
  NETWORKDAYS: {
    signature: "VVR",
    call: ([a, b, holidays], evaluator) => count(a, b, SATURDAY_SUNDAY, holidays, evaluator),
  },
  "NETWORKDAYS.INTL": {
    signature: "VVVR",
    call: ([a, b, kind, holidays], evaluator) => inWeek(kind, (free) => count(a, b, free, holidays, evaluator)),
  },
  WORKDAY: {
    signature: "VVR",
    call: ([a, days, holidays], evaluator) => after(a, days, SATURDAY_SUNDAY, holidays, evaluator),
  },
  "WORKDAY.INTL": {
    signature: "VVVR",
    call: ([a, days, kind, holidays], evaluator) =>
      inWeek(kind, (free) => (free.every(Boolean) ? fail("#VALUE!") : after(a, days, free, holidays, evaluator))),
  },
};

/** From Monday on, whether the day is free. */
type Week = readonly boolean[];

const SATURDAY_SUNDAY: Week = [false, false, false, false, false, true, true];

function inWeek(kind: Value, work: (free: Week) => Scalar): Scalar {
  const free = weekend(kind);
  return free instanceof CellError ? free : work(free);
}

/** 1 to 7 are pairs of days from Saturday and Sunday on, 11 to 17 single ones from Sunday on; or seven digits from Monday on. */
function weekend(kind: Value): Week | CellError {
  if (kind === undefined) return SATURDAY_SUNDAY;
  if (typeof kind === "string")
    return /^[01]{7}$/.test(kind) ? Array.from(kind, (digit) => digit === "1") : fail("#VALUE!");
  const number = toNumber(scalarOf(kind));
  if (number instanceof CellError) return number;
  const at = Math.trunc(number);
  if (at >= 1 && at <= 7) return week([(at + 4) % 7, (at + 5) % 7]);
  return at >= 11 && at <= 17 ? week([(at - 5) % 7]) : fail("#NUM!");
}

function week(free: number[]): Week {
  return Array.from({ length: 7 }, (_, day) => free.includes(day));
}

function count(a: Value, b: Value, free: Week, holidays: Value, evaluator: Evaluator): Scalar {
  const [from, to] = [dayAt(a, evaluator), dayAt(b, evaluator)];
  if (from instanceof CellError) return from;
  if (to instanceof CellError) return to;
  const off = holidaysOf(holidays, free, evaluator);
  if (off instanceof CellError) return off;
  const [first, last] = [Math.min(from, to), Math.max(from, to)];
  const found = worked(first, last, free) - [...off].filter((day) => day >= first && day <= last).length;
  return from > to ? -found + 0 : found;
}

/** Whole weeks at once, and what is left day by day. */
function worked(first: number, last: number, free: Week): number {
  const weeks = Math.floor((last - first + 1) / 7);
  let found = weeks * free.filter((isFree) => !isFree).length;
  for (let day = first + weeks * 7; day <= last; day++) if (!free[weekday(day)]) found++;
  return found;
}

function after(start: Value, days: Value, free: Week, holidays: Value, evaluator: Evaluator): Scalar {
  const from = dayAt(start, evaluator);
  const wanted = strictNumber(days);
  if (from instanceof CellError) return from;
  if (wanted instanceof CellError) return wanted;
  const off = holidaysOf(holidays, free, evaluator);
  if (off instanceof CellError) return off;
  let left = Math.abs(Math.trunc(wanted));
  const step = wanted < 0 ? -1 : 1;
  if (left > 3_000_000) return fail("#NUM!");
  let day = from;
  while (left > 0) {
    day += step;
    if (day < 0 || day > 2_958_465) return fail("#NUM!");
    if (!free[weekday(day)] && !off.has(day)) left--;
  }
  return serialOf(day, evaluator.cells.date1904);
}

function dayAt(value: Value, { cells }: Evaluator): number | CellError {
  const number = strictNumber(value);
  return number instanceof CellError ? number : dayNumber(number, cells.date1904);
}

/** Those that fall on days that would be worked on. */
function holidaysOf(value: Value, free: Week, evaluator: Evaluator): Set<number> | CellError {
  const found = new Set<number>();
  if (value === undefined) return found;
  for (const item of evaluator.matrix(value).flat()) {
    if (item === null) continue;
    const day = typeof item === "boolean" ? fail("#VALUE!") : dayAt(item, evaluator);
    if (day instanceof CellError) return day;
    if (!free[weekday(day)]) found.add(day);
  }
  return found;
}
