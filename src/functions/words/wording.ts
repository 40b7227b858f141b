import { isRational, showLength, type Rational, type Unit } from "../../core/length";
import { titled } from "../cells";

/**
 * Words with holes for a fault's or finding's data: `{size}` for a value, lengths in the unit of the call;
 * `{"text"}` as a person typed it; `{Name}` for `name` as a heading. A list becomes its items with commas, up to twelve.
 */
export type Template = string;

/** Words, or how they are chosen by what the data are. */
export type Wording<D = Data, T extends Template = Template> = T | ((data: D, unit: Unit) => T);

type Data = Readonly<Record<string, unknown>>;

export type Catalog<Codes> = { readonly [C in keyof Codes]: Wording<Codes[C]> };
export type CatalogOfTwo<Codes> = { readonly [C in keyof Codes]: readonly [Wording<Codes[C]>, Wording<Codes[C]>] };

/**
 * Words for every code that `Codes` maps to its data. The compiler finds them complete, and each hole among the data of
 * its code; only then it takes no second argument.
 */
export const catalog =
  <Codes>() =>
  <Texts extends Record<keyof Codes, Template>>(
    words: { readonly [C in keyof Texts]: Wording<DataOf<Codes, C>, Texts[C]> },
    ..._unfilled: Unfilled<Codes, Texts>
  ) =>
    words;

/** The same with two wordings a code. */
export const catalogOfTwo =
  <Codes>() =>
  <Texts extends Record<keyof Codes, Template>>(
    words: {
      readonly [C in keyof Texts]: readonly [Wording<DataOf<Codes, C>, Texts[C]>, Wording<DataOf<Codes, C>, Texts[C]>];
    },
    ..._unfilled: Unfilled<Codes, Texts>
  ) =>
    words;

type DataOf<Codes, C> = C extends keyof Codes ? Codes[C] : never;

/** Codes that are none, and holes that no data fill, if any, as an argument that nobody gives. */
type Unfilled<Codes, Texts> = [Surplus<Codes, Texts>] extends [never] ? [] : [unfilled: Surplus<Codes, Texts>];
type Surplus<Codes, Texts> =
  | Exclude<keyof Texts, keyof Codes>
  | { [C in keyof Texts]: Exclude<Holes<Texts[C]>, NamesIn<DataOf<Codes, C>>> }[keyof Texts];

/** The names of the data that words have holes for. */
type Holes<Text> = Text extends `${string}{${infer Hole}}${infer Rest}` ? NameOf<Hole> | Holes<Rest> : never;
type NameOf<Hole extends string> = Uncapitalize<Hole extends `"${infer Name}"` ? Name : Hole>;
type NamesIn<D> = D extends unknown ? keyof D : never;

/**
 * The words with their holes filled.
 * @example worded("{side} is {size}.", { side: "width", size: ratio(1, 2) }, "in") // width is 1/2".
 */
export const worded = <D extends object>(wording: Wording<D>, data: D, unit: Unit): string =>
  (typeof wording === "string" ? wording : wording(data, unit)).replace(
    /\{("?)(\w+)"?\}/g,
    (_, quote, hole: string) => {
      const name = lowered(hole);
      const write = quote
        ? quoted
        : name === hole
          ? (value: unknown) => plain(value, unit)
          : (value: unknown) => titled(String(value));
      const value: unknown = Reflect.get(data, name);
      if (!Array.isArray(value)) return write(value);
      return value.slice(0, MOST).map(write).join(", ") + (value.length > MOST ? " …" : "");
    },
  );

const MOST = 12;

export const len = (value: unknown, unit: Unit): string => showLength(value as Rational, unit);
const plain = (value: unknown, unit: Unit): string => (isRational(value) ? len(value, unit) : String(value));

/** What a person typed, quoted where it is a text, cut where it is long. */
function quoted(value: unknown): string {
  if (typeof value === "string") return `"${seen(value.length > 40 ? `${value.slice(0, 40)}…` : value)}"`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === null || value === undefined) return "a blank";
  if (typeof value === "number" && !Number.isFinite(value)) return "no finite number";
  return typeof value === "object" ? "no plain value" : String(value);
}

/** Signs that take no room, or look like a space, as their code: what was refused for them is seen to hold them. */
const seen = (text: string): string =>
  text.replace(/[^\P{Cc}\n]|\p{Cf}|\p{Zl}|\p{Zp}|(?! )\p{Zs}/gu, (sign) => `\\u{${sign.codePointAt(0)!.toString(16)}}`);

const lowered = (name: string): string => name[0]!.toLowerCase() + name.slice(1);
