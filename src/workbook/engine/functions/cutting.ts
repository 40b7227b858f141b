import { toNumber, toText } from "../coercion";
import type { Ordinary } from "../kinds";
import { CellError, fail, type Scalar, type Value } from "../values";
import { scalarOf } from "./reading";

/** TEXTBEFORE and TEXTAFTER: what stands on one side of a delimiter. */
export const cutting: Record<string, Ordinary> = {
  TEXTBEFORE: { signature: "V", call: (args) => cut(args, (text, { start }) => text.slice(0, start)) },
  TEXTAFTER: { signature: "V", call: (args) => cut(args, (text, { end }) => text.slice(end)) },
};

interface Place {
  start: number;
  end: number;
}

function cut(args: Value[], of: (text: string, place: Place) => string): Scalar {
  const text = toText(scalarOf(args[0]));
  if (text instanceof CellError) return text;
  const delimiter = toText(scalarOf(args[1]));
  if (delimiter instanceof CellError) return delimiter;
  const numbers = [args[2] ?? 1, args[3] ?? 0, args[4] ?? 0].map((arg) => toNumber(scalarOf(arg)));
  const error = numbers.find((number) => number instanceof CellError);
  if (error) return error as CellError;
  const [which, mode, atEnd] = numbers.map((number) => Math.floor(number as number)) as [number, number, number];
  if (which === 0 || Math.abs(which) > Math.max(1, text.length)) return fail("#VALUE!");
  if ((mode !== 0 && mode !== 1) || (atEnd !== 0 && atEnd !== 1)) return fail("#VALUE!");
  // As the program has it: only where a place is asked for, a delimiter longer than the text is an error.
  if (args[2] !== undefined && delimiter.length > text.length) return fail("#VALUE!");
  const places = placesOf(text, delimiter, mode === 1);
  if (atEnd && which > 0) places.push({ start: text.length, end: text.length });
  if (atEnd && which < 0) places.unshift({ start: 0, end: 0 });
  const place = places[which > 0 ? which - 1 : places.length + which];
  if (place) return of(text, place);
  return args[5] === undefined ? fail("#N/A") : (scalarOf(args[5]) ?? "");
}

function placesOf(text: string, delimiter: string, anyCase: boolean): Place[] {
  const [whole, wanted] = anyCase ? [text.toLowerCase(), delimiter.toLowerCase()] : [text, delimiter];
  const places: Place[] = [];
  for (let at = whole.indexOf(wanted); at >= 0; at = whole.indexOf(wanted, at + wanted.length)) {
    places.push({ start: at, end: at + wanted.length });
  }
  return places;
}
