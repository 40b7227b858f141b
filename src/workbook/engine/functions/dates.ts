import { toNumber } from "../coercion";
import type { Ordinary } from "../evaluator";
import { univerFunction } from "../univer/library";
import { CellError, fail, isMatrix, isScalar, type Scalar, type Value } from "../values";

/** Days between the two calendars that a workbook can count from. */
const SHIFT = 1462;

/** Milliseconds of a day, and the number of the first of January 1970. */
const DAY = 86_400_000;
const EPOCH = 25_569;

/** How dates go in and out: `d` an argument that is a date, `-` another; after `>` whether the result is one. */
const SHAPES: Record<string, string> = {
  DATE: "->d",
  YEAR: "d>-",
  MONTH: "d>-",
  DAY: "d>-",
  WEEKDAY: "d->-",
  WEEKNUM: "d->-",
  ISOWEEKNUM: "d>-",
  EOMONTH: "d->d",
  DATEDIF: "dd->-",
  DAYS360: "dd->-",
  YEARFRAC: "dd->-",
  WORKDAY: "d-d>d",
  NETWORKDAYS: "ddd>-",
};

/** A value as it must be for a function that counts from 1900. */
export function from1900(value: number, date1904: boolean): number {
  return date1904 ? value + SHIFT : value;
}

/** TODAY and NOW by the moment given, and every date function for workbooks that count from 1904. */
export const dates: Record<string, Ordinary> = {
  NOW: { signature: "V", call: (_, { cells }) => serial(cells.now) - (cells.date1904 ? SHIFT : 0) },
  TODAY: { signature: "V", call: (_, { cells }) => Math.floor(serial(cells.now)) - (cells.date1904 ? SHIFT : 0) },
  DATEVALUE: ofText((value, { date1904 }) => Math.floor(value) - (date1904 ? SHIFT : 0)),
  TIMEVALUE: ofText((value) => value - Math.floor(value)),
  EDATE: {
    signature: "V",
    call(args, evaluator, scope) {
      const [from, months] = args.map((arg) => toNumber(isScalar(arg) ? arg : null));
      if (from instanceof CellError) return from;
      if (months instanceof CellError) return months;
      const shift = evaluator.cells.date1904 ? SHIFT : 0;
      const moved = inMonths(Math.floor(from!) + shift, Math.trunc(months!));
      return moved < 0 ? fail("#NUM!") : evaluator.single(moved - shift, scope);
    },
  },
  ...Object.fromEntries(Object.entries(SHAPES).map(([name, shape]) => [name, shifted(name, shape)])),
};

function ofText(of: (value: number, cells: { date1904: boolean }) => number): Ordinary {
  return {
    signature: "V",
    call([text], { cells }) {
      if (text instanceof CellError) return text;
      const value = typeof text === "string" ? toNumber(text) : fail("#VALUE!");
      return value instanceof CellError ? value : of(value, cells);
    },
  };
}

/** The same day of a later month, or its last day where it is shorter. */
function inMonths(day: number, months: number): number {
  const date = new Date((day - EPOCH) * DAY);
  const first = Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + months, 1);
  const last = new Date(Date.UTC(new Date(first).getUTCFullYear(), new Date(first).getUTCMonth() + 1, 0)).getUTCDate();
  return first / DAY + EPOCH + Math.min(date.getUTCDate(), last) - 1;
}

function serial(moment: Date): number {
  const local = moment.getTime() - moment.getTimezoneOffset() * 60_000;
  return local / DAY + EPOCH;
}

function shifted(name: string, shape: string): Ordinary {
  const base = univerFunction(name)!;
  const [inputs, output] = shape.split(">") as [string, string];
  return {
    signature: base.signature,
    call(args, evaluator, scope) {
      const shift = evaluator.cells.date1904 ? SHIFT : 0;
      const moved = args.map((arg, i) => (inputs[i] === "d" ? move(evaluator.contents(arg), shift) : arg));
      const result = base.call(moved, evaluator, scope);
      return output === "d" && shift ? move(result, -shift) : result;
    },
  };
}

function move(value: Value, days: number): Value {
  if (isMatrix(value)) return value.map((row) => row.map((item) => moveOne(item, days)));
  return isScalar(value) ? moveOne(value, days) : value;
}

function moveOne(value: Scalar, days: number): Scalar {
  if (value === null) return days === 0 ? null : days;
  const number = toNumber(value);
  return number instanceof CellError ? number : number + days;
}
