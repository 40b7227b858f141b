import { columnLetters, MAX_COLUMNS, MAX_ROWS } from "../../address";
import { toBoolean, toNumber, toText } from "../coercion";
import type { Ordinary } from "../kinds";
import { CellError, fail, type Value } from "../values";
import { rounded } from "./rounding";
import { unproven } from "../proven";
import { ofStrictNumbers, scalarOf } from "./reading";

/** Numbers and addresses written as texts. */
export const written: Record<string, Ordinary> = {
  FIXED: {
    signature: "V",
    call([value, decimals, plain]) {
      const number = toNumber(scalarOf(value));
      const places = decimals === undefined ? 2 : toNumber(scalarOf(decimals));
      const noCommas = toBoolean(scalarOf(plain));
      if (number instanceof CellError) return number;
      if (places instanceof CellError) return places;
      if (noCommas instanceof CellError) return noCommas;
      if (Math.abs(number) >= 1e15 || places > 14 || places < -15) throw unproven("FIXED", "so many digits");
      const text = rounded(number, places).toFixed(Math.max(0, Math.trunc(places)));
      return noCommas ? text : text.replace(/^-?\d+/, (whole) => whole.replace(/\B(?=(\d{3})+$)/g, ","));
    },
  },

  ADDRESS: {
    signature: "V",
    call([row, column, kind, a1, sheet]) {
      const numbers = [row, column, kind ?? 1].map((arg) => toNumber(scalarOf(arg)));
      const error = numbers.find((number) => number instanceof CellError);
      if (error) return error as CellError;
      const style = toBoolean(scalarOf(a1 ?? true));
      const name = sheet === undefined ? undefined : toText(scalarOf(sheet));
      if (style instanceof CellError) return style;
      if (name instanceof CellError) return name;
      if (!style) throw unproven("ADDRESS", "R1C1 addresses");
      const [y, x, marks] = numbers.map((number) => Math.trunc(number as number)) as [number, number, number];
      if (y < 1 || y > MAX_ROWS || x < 1 || x > MAX_COLUMNS || marks < 1 || marks > 4) return fail("#VALUE!");
      const column$ = marks === 1 || marks === 3 ? "$" : "";
      const row$ = marks === 1 || marks === 2 ? "$" : "";
      return `${name === undefined ? "" : prefix(name)}${column$}${columnLetters(x - 1)}${row$}${y}`;
    },
  },

  DEC2BIN: toBase(2, 512),
  DEC2OCT: toBase(8, 2 ** 29),
  DEC2HEX: toBase(16, 2 ** 39),
};

function prefix(sheet: string): string {
  if (!/^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet) && sheet !== "") return `'${sheet.replaceAll("'", "''")}'!`;
  if (/^([a-z]{1,3}\d+|rc?|c|r\d*c\d*|true|false)$/i.test(sheet)) throw unproven("ADDRESS", "such a sheet's name");
  return `${sheet}!`;
}

/** Numbers below zero are written as what they lack to a number of eleven digits. */
function toBase(base: number, limit: number): Ordinary {
  const write = ofStrictNumbers((value, places) => {
    if (value! < 0 && !Number.isInteger(value)) throw unproven("DEC2BIN and its like", "a part of a number below zero");
    const whole = Math.trunc(value!);
    if (whole < -limit || whole >= limit) return fail("#NUM!");
    if (whole < 0) return (whole + 2 * limit).toString(base).toUpperCase();
    const digits = whole.toString(base).toUpperCase();
    const width = places === undefined ? digits.length : Math.trunc(places);
    return width < digits.length || width > 10 || width < 1 ? fail("#NUM!") : digits.padStart(width, "0");
  });
  return { ...write, call: (args, evaluator, scope) => write.call(withoutMissing(args), evaluator, scope) };
}

function withoutMissing(args: Value[]): Value[] {
  return args.length === 2 && args[1] === undefined ? args.slice(0, 1) : args;
}
