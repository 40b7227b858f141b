import type { Ordinary } from "../kinds";
import { CellError, fail } from "../values";
import { dateOf, dayNumber, dayOf, daysIn, isLeapYear, type Day } from "./calendar";
import { unproven } from "../proven";
import { strictNumber } from "./reading";

/** The part of a year that lies between two days, by the bases that interest is counted on. */
export const yearParts: Record<string, Ordinary> = {
  YEARFRAC: {
    signature: "V",
    call(args, { cells }) {
      const numbers: number[] = [];
      for (const arg of args) {
        const number = strictNumber(arg);
        if (number instanceof CellError) return number;
        numbers.push(number);
      }
      const [a, b] = [dayNumber(numbers[0]!, cells.date1904), dayNumber(numbers[1]!, cells.date1904)];
      if (a instanceof CellError) return a;
      if (b instanceof CellError) return b;
      if (Math.min(a, b) <= 60) throw unproven("YEARFRAC", "days before March 1900");
      const basis = Math.trunc(numbers[2] ?? 0);
      const [first, last] = [Math.min(a, b), Math.max(a, b)];
      if (basis === 0) return thirty(dateOf(first), dateOf(last), "us") / 360;
      if (basis === 1) return (last - first) / averageYear(first, last);
      if (basis === 2) return (last - first) / 360;
      if (basis === 3) return (last - first) / 365;
      return basis === 4 ? thirty(dateOf(first), dateOf(last), "european") / 360 : fail("#NUM!");
    },
  },
};

/** Days of months that all have thirty. */
export function thirty(from: Day, to: Day, rule: "us" | "european" | "days360"): number {
  let [first, last] = [from.day, to.day];
  const fromEnd = from.month === 2 && first === daysIn(from.year, 2);
  const toEnd = to.month === 2 && last === daysIn(to.year, 2);
  if (rule === "european") {
    first = Math.min(first, 30);
    last = Math.min(last, 30);
  } else {
    if (rule === "us" && fromEnd && toEnd) last = 30;
    if (fromEnd) first = 30;
    if (last === 31 && first >= 30) last = 30;
    if (first === 31) first = 30;
  }
  return (to.year - from.year) * 360 + (to.month - from.month) * 30 + last - first;
}

/** Up to a year apart: 366 days where a 29 February lies between. Beyond: the mean of the years touched. */
function averageYear(first: number, last: number): number {
  const [from, to] = [dateOf(first), dateOf(last)];
  const within =
    to.year === from.year + 1 && (to.month < from.month || (to.month === from.month && to.day <= from.day));
  if (from.year === to.year) return isLeapYear(from.year) ? 366 : 365;
  if (within) {
    const leapDays = [from.year, to.year].filter(isLeapYear).map((year) => dayOf(year, 2, 29));
    return leapDays.some((day) => day >= first && day <= last) ? 366 : 365;
  }
  let days = 0;
  for (let year = from.year; year <= to.year; year++) days += isLeapYear(year) ? 366 : 365;
  return days / (to.year - from.year + 1);
}
