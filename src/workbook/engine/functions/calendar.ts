import { fail, type CellError } from "../values";

/** Days between the two calendars that a workbook can count from. */
const SHIFT_1904 = 1462;

const DAY = 86_400_000;
const EPOCH = 25_569;
/** The last day there is, 31 December 9999. */
const LAST = 2_958_465;

export interface Day {
  year: number;
  month: number;
  day: number;
}

/** A number of a workbook as days from 1900 on; #NUM! where no day has it. */
export function dayNumber(serial: number, date1904: boolean): number | CellError {
  const day = Math.floor(serial) + (date1904 ? SHIFT_1904 : 0);
  return serial < 0 || day > LAST ? fail("#NUM!") : day;
}

/** Days from 1900 on as the workbook counts them. */
export function serialOf(day: number, date1904: boolean): number | CellError {
  const serial = day - (date1904 ? SHIFT_1904 : 0);
  return serial < 0 || day > LAST ? fail("#NUM!") : serial;
}

/** The year 1900 has a 29 February here, day 60, and day 0 is the one before 1 January. */
export function dateOf(day: number): Day {
  if (day === 60) return { year: 1900, month: 2, day: 29 };
  if (day === 0) return { year: 1900, month: 1, day: 0 };
  const date = new Date(((day < 60 ? day + 1 : day) - EPOCH) * DAY);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

/** The number of a day; months and days beyond their ends run on. */
export function dayOf(year: number, month: number, day: number): number {
  const first = new Date(0);
  first.setUTCFullYear(year, month - 1, 1);
  const number = first.getTime() / DAY + EPOCH;
  return (number <= 60 ? number - 1 : number) + day - 1;
}

export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** How long a month is; January is 1, and months beyond the year run on. */
export function daysIn(year: number, month: number): number {
  return dayOf(year, month + 1, 1) - dayOf(year, month, 1);
}

/** 0 for Monday to 6 for Sunday. */
export function weekday(day: number): number {
  return (((day - 2) % 7) + 7) % 7;
}
