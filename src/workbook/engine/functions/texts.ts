import { toBoolean, toNumber, toText } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { univerFunction } from "../univer/library";
import { CellError, fail, isScalar, type Scalar, type Value } from "../values";
import { LONGEST_TEXT, spend } from "../budget";
import { Wildcard } from "../wildcards";
import { isMoment, requireProven } from "./patterns";
import { scalarOf } from "./reading";

/** Functions that put the texts of ranges together. */
export const texts: Record<string, Ordinary> = {
  CONCAT: { signature: "R", call: (args, evaluator) => joined(args, evaluator, () => "", false) },

  TEXTJOIN: {
    signature: "RVR",
    call([between, skips, ...rest], evaluator) {
      const separators = items([between], evaluator).map(toText);
      const skip = toBoolean(isScalar(skips) ? skips : true);
      const error = [...separators, skip].find((value) => value instanceof CellError);
      if (error) return error as CellError;
      return joined(rest, evaluator, (i) => separators[i % separators.length] as string, skip as boolean);
    },
  },

  SEARCH: {
    signature: "V",
    call(args) {
      const [wanted, text] = args.slice(0, 2).map((arg) => toText(isScalar(arg) ? arg : null));
      const start = args[2] === undefined ? 1 : toNumber(isScalar(args[2]) ? args[2] : null);
      if (wanted instanceof CellError) return wanted;
      if (text instanceof CellError) return text;
      if (start instanceof CellError) return start;
      if (start < 1 || start > text!.length + 1) return fail("#VALUE!");
      const at = new Wildcard(wanted!).search(text!, Math.floor(start) - 1);
      return at < 0 ? fail("#VALUE!") : at + 1;
    },
  },

  TEXT: {
    signature: "V",
    call([value, format], evaluator, scope) {
      if (value instanceof CellError) return value;
      const pattern = toText(isScalar(format) ? format : null);
      if (pattern instanceof CellError || pattern === "") return pattern;
      if (typeof value === "boolean") return toText(value);
      const found = toNumber(scalarOf(value));
      const shift = evaluator.cells.date1904 && isMoment(pattern) ? 1462 : 0;
      const number = found instanceof CellError ? value : found + shift;
      if (typeof number === "number") requireProven(pattern, number, evaluator.cells.date1904);
      const formatted = univerFunction("TEXT")!.call([number, pattern], evaluator, scope);
      return typeof formatted === "string" && typeof number === "number" ? wholeFraction(formatted, number) : formatted;
    },
  },
};

/** The library writes a fraction that rounds up to a whole as `16/16`; it is the next whole and as many spaces. */
function wholeFraction(text: string, number: number): string {
  return text.replace(/^(-?)\d*( +)(\d+)\/\3( *)$/, (_, sign: string, gap: string, top: string, rest: string) => {
    const blank = " ".repeat(gap.length + 2 * top.length + 1 + rest.length);
    return `${sign}${Math.round(Math.abs(number))}${blank}`;
  });
}

function joined(args: Value[], evaluator: Evaluator, separator: (i: number) => string, skip: boolean): Scalar {
  let whole = "";
  let pieces = 0;
  for (const item of items(args, evaluator)) {
    const text = toText(item);
    if (text instanceof CellError) return text;
    if (text === "" && skip) continue;
    whole += (pieces === 0 ? "" : separator(pieces - 1)) + text;
    pieces++;
    if (whole.length > LONGEST_TEXT) return fail("#VALUE!");
  }
  return whole;
}

function items(args: Value[], evaluator: Evaluator): Scalar[] {
  return args.flatMap((arg) => {
    const all = evaluator.matrix(arg).flat();
    spend(all.length);
    return all;
  });
}
