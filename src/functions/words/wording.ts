import { isRational, showLength, type Rational, type Unit } from "../../core/length";
import { titled } from "../cells";

/**
 * Words with holes for a fault's or finding's data: `{size}` for a value, lengths in the unit of the call;
 * `{"text"}` as a person typed it; `{Name}` for `name` as a heading. A list becomes its items with commas, up to twelve.
 */
export type Template = string;

/** Words, or how they are chosen by what the data are. */
export type Wording = Template | ((data: Data, unit: Unit) => Template);

export type Data = Readonly<Record<string, unknown>>;

/**
 * The words with their holes filled.
 * @example worded("{side} is {size}.", { side: "width", size: ratio(1, 2) }, "in") // width is 1/2".
 */
export const worded = (wording: Wording, data: Data, unit: Unit): string =>
  (typeof wording === "string" ? wording : wording(data, unit)).replace(
    /\{("?)(\w+)"?\}/g,
    (_, quote, hole: string) => {
      const name = lowered(hole);
      const write = quote
        ? quoted
        : name === hole
          ? (value: unknown) => plain(value, unit)
          : (value: unknown) => titled(String(value));
      const value = data[name];
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
