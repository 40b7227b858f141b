import { toBoolean, toNumber } from "../coercion";
import type { Ordinary } from "../evaluator";
import { finite } from "../operators";
import { CellError, fail, isMatrix, isScalar, Lambda, Reference, type Scalar } from "../values";

/** Functions of single values that must be exactly the spreadsheet program's. */
export const scalars: Record<string, Ordinary> = {
  ROUND: numeric((value, places = 0) => finite(roundTo(value, places, (size) => Math.floor(size + 0.5)))),
  ROUNDUP: numeric((value, places = 0) => finite(roundTo(value, places, Math.ceil))),
  ROUNDDOWN: numeric((value, places = 0) => finite(roundTo(value, places, Math.floor))),
  TRUNC: numeric((value, places = 0) => finite(roundTo(value, places, Math.floor))),
  INT: numeric((value) => Math.floor(value) + 0),
  ABS: numeric((value) => Math.abs(value)),
  SIGN: numeric((value) => Math.sign(value) + 0),
  SQRT: numeric((value) => (value < 0 ? fail("#NUM!") : Math.sqrt(value))),
  PI: { signature: "V", call: () => Math.PI },
  MOD: numeric((value, divisor = 0) => (divisor === 0 ? fail("#DIV/0!") : finite(remainder(value, divisor)))),
  MROUND: numeric((value, multiple = 0) => {
    if (multiple === 0) return 0;
    return value * multiple < 0 ? fail("#NUM!") : finite(multiple * Math.round(value / multiple));
  }),
  HOUR: numeric((value) => clock(value, (seconds) => Math.floor(seconds / 3600) % 24)),
  MINUTE: numeric((value) => clock(value, (seconds) => Math.floor(seconds / 60) % 60)),
  SECOND: numeric((value) => clock(value, (seconds) => seconds % 60)),
  NOT: {
    signature: "V",
    call([value]) {
      const truth = toBoolean(isScalar(value) ? value : null);
      return truth instanceof CellError ? truth : !truth;
    },
  },
  VALUE: numeric((value) => value),
  NA: { signature: "V", call: () => fail("#N/A") },
  TRUE: { signature: "V", call: () => true },
  FALSE: { signature: "V", call: () => false },
  N: {
    signature: "V",
    call: ([value]) => (value instanceof CellError || typeof value === "number" ? value : value === true ? 1 : 0),
  },
  T: { signature: "V", call: ([value]) => (value instanceof CellError || typeof value === "string" ? value : "") },
  ISBLANK: test((value) => value === null),
  ISNUMBER: test((value) => typeof value === "number"),
  ISTEXT: test((value) => typeof value === "string"),
  ISNONTEXT: test((value) => typeof value !== "string"),
  ISLOGICAL: test((value) => typeof value === "boolean"),
  ISERROR: test((value) => value instanceof CellError),
  ISERR: test((value) => value instanceof CellError && value.code !== "#N/A"),
  ISNA: test((value) => value instanceof CellError && value.code === "#N/A"),
  TYPE: {
    signature: "R",
    call([value], evaluator) {
      const found = value instanceof Lambda ? value : evaluator.contents(value);
      if (found instanceof Lambda) return 128;
      if (isMatrix(found)) return 64;
      return found instanceof CellError ? 16 : typeof found === "string" ? 2 : typeof found === "boolean" ? 4 : 1;
    },
  },
  HYPERLINK: { signature: "V", call: ([target, label]) => label ?? target ?? null },
};

function numeric(of: (...numbers: number[]) => Scalar): Ordinary {
  return {
    signature: "V",
    call(args) {
      const numbers = args.map((arg) => toNumber(isScalar(arg) ? arg : null));
      return (numbers.find((number) => number instanceof CellError) as CellError) ?? of(...(numbers as number[]));
    },
  };
}

/** The time of day, to the nearest second. */
function clock(value: number, of: (seconds: number) => number): Scalar {
  return value < 0 ? fail("#NUM!") : of(Math.round((value - Math.floor(value)) * 86_400));
}

function test(of: (value: Scalar) => boolean): Ordinary {
  return { signature: "V", call: ([value]) => (value instanceof Reference ? false : of((value ?? null) as Scalar)) };
}

/** Rounds the size as it reads with fifteen digits: 2.675 to two places is 2.68, although the double is a little less. */
function roundTo(value: number, places: number, round: (size: number) => number): number {
  const digits = Math.trunc(places);
  if (digits > 300 || value === 0) return value;
  const size = shift(tidy(Math.abs(value)), digits);
  return Math.sign(value) * shift(round(tidy(size)), -digits) + 0;
}

function remainder(value: number, divisor: number): number {
  const rest = value - divisor * Math.floor(tidy(value / divisor));
  return Math.abs(rest) < Math.abs(value) * 2 ** -49 ? 0 : rest;
}

function tidy(value: number): number {
  return Number(value.toPrecision(15));
}

/** Moves the decimal point in the text, which is exact where a product would not be. */
function shift(value: number, places: number): number {
  const [digits, exponent = "0"] = String(value).split("e");
  return Number(`${digits}e${Number(exponent) + places}`);
}
